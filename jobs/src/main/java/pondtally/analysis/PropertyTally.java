package pondtally.analysis;

import java.io.Serializable;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.history.DeviceHistory;
import pondtally.history.PropertyHistory;
import pondtally.history.Stretches;

/** Distinct properties protected and for how long, by group, fiscal year and type. */
public final class PropertyTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** Label of all types together. */
  public static final String ALL_TYPES = "all";

  private final AnalysisSettings settings;
  private final SortedMap<GroupKey, SortedMap<String, SortedMap<String, Sums>>> sums =
      new TreeMap<>();

  public PropertyTally(AnalysisSettings settings) {
    this.settings = settings;
  }

  private static final class Sums implements Serializable {
    private static final long serialVersionUID = 1;
    private long recorded;
    private long protectedCount;
    private long halfDays;

    private void merge(Sums other) {
      recorded += other.recorded;
      protectedCount += other.protectedCount;
      halfDays += other.halfDays;
    }
  }

  /** Adds the properties of a cluster. */
  public void add(ClusterView cluster) {
    for (PropertyHistory property : cluster.history().properties()) {
      for (ClusterView.Subset subset : cluster.subsets()) {
        List<DeviceHistory> here = ClusterView.at(subset.devices(), property.siteIds());
        if (!here.isEmpty()) {
          addProperty(subset.keys(), property, here);
        }
      }
    }
  }

  private void addProperty(
      List<GroupKey> keys, PropertyHistory property, List<DeviceHistory> devices) {
    int start = ClusterView.firstEntry(devices);
    Stretches time = protectedBy(property, devices);
    String type = type(property);
    for (Years.Span span : Years.spans(settings.fiscalYears(), start, settings.endHalfDay())) {
      if (start >= span.to()) {
        continue;
      }
      long halfDays = time.within(span.from(), span.to()).halfDays();
      for (GroupKey key : keys) {
        for (String label : List.of(ALL_TYPES, type)) {
          Sums s = sums(key, span.label(), label);
          s.recorded++;
          s.protectedCount += halfDays >= 2 ? 1 : 0;
          s.halfDays += halfDays;
        }
      }
    }
  }

  /** The type of a property as tables name it. */
  static String type(PropertyHistory property) {
    return property.property().propertyType() == null
        ? GroupKey.UNKNOWN
        : property.property().propertyType().code();
  }

  /** The time during which {@code devices} protected a property. */
  static Stretches protectedBy(PropertyHistory property, List<DeviceHistory> devices) {
    return property.protectedTime().intersect(ClusterView.functional(devices));
  }

  private Sums sums(GroupKey key, String year, String type) {
    return sums.computeIfAbsent(key, k -> new TreeMap<>())
        .computeIfAbsent(year, y -> new TreeMap<>())
        .computeIfAbsent(type, t -> new Sums());
  }

  /** Adds what another tally counted. */
  public void merge(PropertyTally other) {
    other.sums.forEach(
        (key, byYear) ->
            byYear.forEach(
                (year, byType) ->
                    byType.forEach((type, more) -> sums(key, year, type).merge(more))));
  }

  /** One row of the result table {@code properties}. */
  public record Row(
      String grouping,
      String group,
      String year,
      String propertyType,
      Long propertiesRecorded,
      Long propertiesProtected,
      Double propertyYears) {}

  /** The rows of the result table. */
  public List<Row> rows() {
    return sums.entrySet().stream()
        .flatMap(
            group ->
                group.getValue().entrySet().stream()
                    .flatMap(
                        year ->
                            year.getValue().entrySet().stream()
                                .map(
                                    type ->
                                        row(
                                            group.getKey(),
                                            year.getKey(),
                                            type.getKey(),
                                            type.getValue()))))
        .toList();
  }

  private static Row row(GroupKey key, String year, String type, Sums s) {
    return new Row(
        key.grouping().code(),
        key.group(),
        year,
        type,
        s.recorded,
        s.protectedCount,
        s.halfDays / (2 * 365.25));
  }
}
