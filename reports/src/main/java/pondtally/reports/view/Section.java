package pondtally.reports.view;

import java.util.List;

/**
 * Sentences about one subject.
 *
 * @param heading what they are about
 */
public record Section(String heading, List<Sentence> sentences) {}
