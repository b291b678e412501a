package pondtally.reports.text;

import java.util.Map;

/** Groups and codes of the tables in words. */
public final class GroupText {

  private GroupText() {}

  /** What the groups are made by: {@code pipe type}. An unknown grouping stays as it is. */
  public static String grouping(String grouping) {
    return Messages.or("grouping." + grouping, grouping);
  }

  /** The name of a group: {@code dual-wall 12 in}; codes become words, watersheds stay. */
  public static String label(String grouping, String group) {
    return switch (grouping) {
      case "all" -> Messages.of("common.all-devices");
      case "pipe" -> pipe(group);
      case "pipe-in-watershed" -> pipeInWatershed(group);
      case "watershed" -> watershed(group);
      case "build" -> build(group);
      case "kind", "setting" -> words(group);
      case "cohort" ->
          group.isEmpty()
              ? Messages.of("common.not-recorded")
              : Messages.of("text.GroupText.installed-in", Map.of("group", group));
      default -> group.isEmpty() ? Messages.of("common.not-recorded") : group;
    };
  }

  /** A code in words: {@code fence-dammed} becomes {@code fence dammed}. */
  public static String words(String code) {
    if (code.isEmpty() || code.equals("unknown")) {
      return Messages.of("common.not-recorded");
    }
    return Messages.or("code." + code.replace(' ', '_'), code.replace('-', ' '));
  }

  private static String pipe(String group) {
    if (group.isEmpty() || group.equals("unknown")) {
      return Messages.of("text.GroupText.pipe-not-recorded");
    }
    if (group.equals("none")) {
      return Messages.of("text.GroupText.no-pipe");
    }
    int space = group.indexOf(' ');
    String wall = space < 0 ? group : group.substring(0, space);
    String rest = space < 0 ? "" : group.substring(space);
    return Messages.or("wall." + wall, wall) + rest.replace(' ', NumberText.NBSP);
  }

  private static String pipeInWatershed(String group) {
    int slash = group.lastIndexOf(" / ");
    return slash < 0
        ? group
        : watershed(group.substring(0, slash)) + ", " + pipe(group.substring(slash + 3));
  }

  private static String watershed(String group) {
    if (group.isEmpty() || group.equals("unknown")) {
      return Messages.of("text.GroupText.watershed-not-recorded");
    }
    return group.equals("coarser") ? Messages.of("text.GroupText.code-too-short-to-place") : group;
  }

  private static String build(String group) {
    return switch (group) {
      case "met" -> Messages.of("text.GroupText.built-to-specification");
      case "not-met" -> Messages.of("text.GroupText.not-built-to-specification");
      case "not-judged" -> Messages.of("text.GroupText.too-little-recorded-to-judge");
      default -> words(group);
    };
  }
}
