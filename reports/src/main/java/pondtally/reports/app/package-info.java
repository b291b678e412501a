/** The {@code pondtally} command. The only package here that starts a job. */
package pondtally.reports.app;
