package pondtally.reports.edition;

/** A group of a grouping, for example {@code kind} / {@code pond-leveler}. */
record GroupName(String grouping, String group) implements Comparable<GroupName> {

  @Override
  public int compareTo(GroupName other) {
    int order = grouping.compareTo(other.grouping);
    return order != 0 ? order : group.compareTo(other.group);
  }
}
