package pondtally.reports.view;

import java.util.List;
import java.util.Map;

/**
 * A part of the grant document: a heading, then its sentences, tables and charts.
 *
 * @param level 1 for a heading of its own, 2 for one below it
 * @param charts caption of each chart that belongs here, by the chart's name, in reading order
 */
public record GrantSection(
    int level,
    String heading,
    List<Sentence> sentences,
    List<GrantTable> tables,
    Map<String, String> charts) {}
