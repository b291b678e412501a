package pondtally.reports.page;

import java.util.List;

/**
 * How a site of a state is drawn: by shape and by color, so that a gray print can be read. The
 * colors are those of the charts.
 */
enum SiteMark {
  FAILED("failed", "M-4.4-4.4H4.4V4.4H-4.4Z", "#D55E00", "#8a3d00"),
  UNVERIFIED("unverified", "M0-5.6L5.6 0L0 5.6L-5.6 0Z", "#ffffff", "#8e3f74"),
  FUNCTIONAL(
      "functional", "M-4.2 0A4.2 4.2 0 1 0 4.2 0A4.2 4.2 0 1 0-4.2 0Z", "#0072B2", "#004d78"),
  NO_DEVICE("no-device", "M0-5L5 4H-5Z", "#ffffff", "#006b4e"),
  RETIRED("retired", "M-4-4L4 4M-4 4L4-4", "none", "#444444"),
  OTHER("", "M-4.5 0H4.5M0-4.5V4.5", "none", "#222222");

  private final String state;
  private final String path;
  private final String fill;
  private final String line;

  SiteMark(String state, String path, String fill, String line) {
    this.state = state;
    this.path = path;
    this.fill = fill;
    this.line = line;
  }

  /** The mark of a state; states that are not known here share one. */
  static SiteMark of(String state) {
    return List.of(values()).stream()
        .filter(mark -> mark.state.equals(state))
        .findFirst()
        .orElse(OTHER);
  }

  /** The code in table {@code sites}; empty for every other. */
  String state() {
    return state;
  }

  void draw(Html html, String... more) {
    String[] own = {"d", path, "fill", fill, "stroke", line, "stroke-width", "1.4"};
    String[] all = java.util.Arrays.copyOf(own, own.length + more.length);
    System.arraycopy(more, 0, all, own.length, more.length);
    html.open("path", all);
  }
}
