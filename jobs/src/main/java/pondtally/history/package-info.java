/**
 * What happened to each device, site and pond: lives, failures, restarts, ends, functional time,
 * wetland area. Rules only; dollars and estimates come later.
 */
package pondtally.history;
