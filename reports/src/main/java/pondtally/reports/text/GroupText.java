package pondtally.reports.text;

import java.util.Map;

/** Groups and codes of the tables in words. */
public final class GroupText {

  private static final Map<String, String> WALLS =
      Map.of("dual", "dual-wall", "single", "single-wall", "smooth", "smooth-wall");

  private static final Map<String, String> GROUPINGS =
      Map.of(
          "all", "whole program",
          "pipe", "pipe type",
          "kind", "kind of device",
          "watershed", "watershed",
          "pipe-in-watershed", "pipe type within watershed",
          "crew", "crew",
          "cohort", "install year",
          "build", "built to specification",
          "setting", "setting");

  private GroupText() {}

  /** What the groups are made by: {@code pipe type}. An unknown grouping stays as it is. */
  public static String grouping(String grouping) {
    return GROUPINGS.getOrDefault(grouping, grouping);
  }

  /** The name of a group: {@code dual-wall 12 in}; codes become words, watersheds stay. */
  public static String label(String grouping, String group) {
    return switch (grouping) {
      case "all" -> "all devices";
      case "pipe" -> pipe(group);
      case "pipe-in-watershed" -> pipeInWatershed(group);
      case "watershed" -> watershed(group);
      case "build" -> build(group);
      case "kind", "setting" -> words(group);
      case "cohort" -> group.isEmpty() ? "not recorded" : "installed in" + NumberText.NBSP + group;
      default -> group.isEmpty() ? "not recorded" : group;
    };
  }

  /** A code in words: {@code fence-dammed} becomes {@code fence dammed}. */
  public static String words(String code) {
    if (code.isEmpty() || code.equals("unknown")) {
      return "not recorded";
    }
    return code.replace('-', ' ');
  }

  private static String pipe(String group) {
    if (group.isEmpty() || group.equals("unknown")) {
      return "pipe not recorded";
    }
    if (group.equals("none")) {
      return "no pipe";
    }
    int space = group.indexOf(' ');
    String wall = space < 0 ? group : group.substring(0, space);
    String rest = space < 0 ? "" : group.substring(space);
    return WALLS.getOrDefault(wall, wall) + rest.replace(' ', NumberText.NBSP);
  }

  private static String pipeInWatershed(String group) {
    int slash = group.lastIndexOf(" / ");
    return slash < 0
        ? group
        : watershed(group.substring(0, slash)) + ", " + pipe(group.substring(slash + 3));
  }

  private static String watershed(String group) {
    if (group.isEmpty() || group.equals("unknown")) {
      return "watershed not recorded";
    }
    return group.equals("coarser") ? "code too short to place" : group;
  }

  private static String build(String group) {
    return switch (group) {
      case "met" -> "built to specification";
      case "not-met" -> "not built to specification";
      case "not-judged" -> "too little recorded to judge";
      default -> words(group);
    };
  }
}
