package pondtally.reports.chart;

/**
 * A chart that was written as {@code name.svg} and {@code name.png}.
 *
 * @param name file name without its ending
 * @param title what is seen, in one sentence
 * @param description alternative text: what is drawn and its main figures
 */
public record ChartFile(String name, String title, String description) {}
