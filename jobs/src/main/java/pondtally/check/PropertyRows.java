package pondtally.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.record.Property;

/** A property counts once, however many rows, partners or sites name it. */
final class PropertyRows {

  private PropertyRows() {}

  static void apply(OpenCluster cluster) {
    cluster.properties.list().forEach(row -> checkSpan(cluster, row));
    cluster
        .properties
        .by(Property::siteId)
        .values()
        .forEach(ofSite -> keepOneASite(cluster, ofSite));
    cluster
        .properties
        .by(Property::propertyId)
        .values()
        .forEach(same -> noticeSites(cluster, same));
  }

  private static void checkSpan(OpenCluster cluster, Property row) {
    Integer from = row.protectedFrom();
    Integer until = row.protectedUntil();
    if (from != null && until != null && until < from) {
      String message =
          """
              %s is before the first protected day, %s. The date was dropped: the \
              property counts as still protected. Correct whichever date is wrong."""
              .formatted(Words.date(until), Words.date(from));
      cluster.properties.drop(
          row,
          Remark.cell(
              CheckRule.PROTECTED_UNTIL_BEFORE_FROM,
              "protected_until",
              Words.date(until),
              message));
    }
  }

  private static void keepOneASite(OpenCluster cluster, List<Property> ofSite) {
    Map<String, Property> first = new HashMap<>();
    for (Property row : ofSite) {
      Property earlier = first.putIfAbsent(row.propertyId(), row);
      if (earlier != null) {
        cluster.properties.duplicate(
            row, remark(CheckRule.PROPERTY_REPEATED, row, repeatedMessage(earlier, row)));
      }
    }
  }

  private static void noticeSites(OpenCluster cluster, List<Property> same) {
    Property first = same.get(0);
    for (Property row : same.subList(1, same.size())) {
      cluster.properties.notice(
          row, remark(CheckRule.PROPERTY_AT_TWO_SITES, row, twoSitesMessage(first, row)));
    }
  }

  private static Remark remark(CheckRule rule, Property row, String message) {
    return Remark.cell(rule, "property_id", row.propertyId(), message);
  }

  private static String repeatedMessage(Property first, Property row) {
    return """
        Property %s at site %s already stands in %s, with other values: %s. It \
        is counted once, as that row says. Delete one row; if these are two \
        properties, give each an id of its own."""
        .formatted(
            Words.quote(row.propertyId()),
            Words.quote(row.siteId()),
            Words.row(first.origin()),
            Differences.between(first, row));
  }

  private static String twoSitesMessage(Property first, Property row) {
    return """
        Property %s also stands under site %s (%s). It is counted once, as \
        protected while a device at either site works. If these are two \
        properties, give each an id of its own."""
        .formatted(
            Words.quote(row.propertyId()), Words.quote(first.siteId()), Words.row(first.origin()));
  }
}
