package pondtally.sample;

import java.time.LocalDate;

/**
 * A visit: its codes are those of the revisits table; cause empty where nothing was wrong.
 *
 * @param design pipe put in at a replacement by another design, else null
 */
record Visit(
    LocalDate on, String condition, String cause, String action, SampleTruth.Pipe design) {}
