/** A file system that fails at the write call of the test's choice; all else is the real one. */
package pondtally.reports.fault;
