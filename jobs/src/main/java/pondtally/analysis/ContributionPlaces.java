package pondtally.analysis;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.history.DeviceHistory;
import pondtally.history.PondHistory;
import pondtally.history.PropertyHistory;
import pondtally.history.SiteHistory;
import pondtally.history.Stretches;
import pondtally.record.Area;
import pondtally.record.Origin;
import pondtally.record.Removal;
import pondtally.record.Visit;

/**
 * Contributions to wetland, properties and removals. A pond and a property count once however many
 * devices they have, so that they are not divided by pipe, kind, crew, cohort or build.
 */
final class ContributionPlaces {

  private final ClusterView cluster;
  private final AnalysisSettings settings;
  private final WetlandTally wetland;
  private final List<DeviceHistory> devices;
  private final ContributionSink sink;

  ContributionPlaces(ClusterView cluster, AnalysisSettings settings, ContributionSink sink) {
    this.cluster = cluster;
    this.settings = settings;
    this.wetland = new WetlandTally(settings);
    this.devices = cluster.devicesByGroup().getOrDefault(GroupKey.ALL, List.of());
    this.sink = sink;
  }

  void add() {
    for (PondHistory pond : cluster.history().ponds()) {
      List<DeviceHistory> here = ClusterView.at(devices, pond.siteIds());
      if (!here.isEmpty() && pond.area() != null) {
        pond(pond, here);
      }
    }
    for (PropertyHistory property : cluster.history().properties()) {
      List<DeviceHistory> here = ClusterView.at(devices, property.siteIds());
      if (!here.isEmpty()) {
        property(property, here);
      }
    }
    Map<String, Map<Integer, Removal>> reports = RemovalTally.reports(cluster);
    for (SiteHistory site : cluster.history().sites()) {
      List<DeviceHistory> here = ClusterView.at(devices, List.of(site.site().siteId()));
      if (!here.isEmpty()) {
        removals(site, here, reports.getOrDefault(site.site().siteId(), Map.of()));
      }
    }
  }

  private ContributionGroups place(String siteId) {
    SiteHistory site = cluster.site(siteId);
    return ContributionGroups.ofPlace(
        cluster.groups().watershed(site.site()), Groups.setting(site.site()));
  }

  private void pond(PondHistory pond, List<DeviceHistory> here) {
    SortedMap<Integer, Origin> measured = measured(pond);
    ByYear<WetlandTally.Sums> own = wetland.sums(pond, here);
    for (Years.Span span :
        Years.spans(settings.fiscalYears(), ClusterView.firstEntry(here), settings.endHalfDay())) {
      WetlandTally.Sums sums = own.get(span.year());
      if (sums != null) {
        SortedMap<Integer, Origin> before = measured.headMap(span.to());
        Origin origin =
            before.isEmpty() ? site(pond).site().origin() : before.get(before.lastKey());
        pond(pond, sums, origin, span.label());
      }
    }
  }

  private void pond(PondHistory pond, WetlandTally.Sums sums, Origin origin, String year) {
    String site = pond.siteIds().get(0);
    ContributionGroups groups = place(site);
    Origin own = site(pond).site().origin();
    if (!year.equals(Years.ALL)) {
      sink.site(ContributionSubject.ACRE_YEARS, site, groups, sums.acreYears(), origin, year, null);
      sink.site(
          ContributionSubject.ACRE_YEARS_EXTRAPOLATED,
          site,
          groups,
          sums.extrapolated(),
          origin,
          year,
          null);
    }
    sink.site(
        ContributionSubject.ACRES_RETAINED_VERIFIED,
        site,
        groups,
        sums.verified(),
        origin,
        year,
        null);
    sink.site(
        ContributionSubject.ACRES_RETAINED_UNVERIFIED,
        site,
        groups,
        sums.unverified(),
        origin,
        year,
        null);
    sink.site(ContributionSubject.ACRES_BEFORE, site, groups, pond.acresBefore(), own, year, null);
    sink.site(
        ContributionSubject.ACRES_LOST_TO_LOWERING,
        site,
        groups,
        pond.acresLostToLowering(),
        own,
        year,
        null);
  }

  private SiteHistory site(PondHistory pond) {
    return cluster.site(pond.siteIds().get(0));
  }

  /** The rows that measured a pond, by half day. */
  private SortedMap<Integer, Origin> measured(PondHistory pond) {
    SortedMap<Integer, Origin> rows = new TreeMap<>();
    for (Area area : cluster.history().records().areas()) {
      if (pond.pondId().equals(area.pondId()) || pond.siteIds().contains(area.siteId())) {
        rows.putIfAbsent(2 * area.measuredOn(), area.origin());
      }
    }
    for (Visit visit : cluster.history().records().visits()) {
      if (visit.wetlandAcres() != null
          && devices.stream()
              .anyMatch(
                  device ->
                      device.deviceId().equals(visit.deviceId())
                          && pond.siteIds().contains(device.siteId()))) {
        rows.putIfAbsent(2 * visit.visitedOn(), visit.origin());
      }
    }
    return rows;
  }

  private void property(PropertyHistory property, List<DeviceHistory> here) {
    int start = ClusterView.firstEntry(here);
    Stretches time = PropertyTally.protectedBy(property, here);
    Origin origin = property.property().origin();
    String type = PropertyTally.type(property);
    String site = property.siteIds().get(0);
    for (Years.Span span : Years.spans(settings.fiscalYears(), start, settings.endHalfDay())) {
      long halfDays = start < span.to() ? time.within(span.from(), span.to()).halfDays() : 0;
      double protectedCount = halfDays >= 2 ? 1 : 0;
      sink.site(
          ContributionSubject.PROPERTIES_PROTECTED,
          site,
          ContributionGroups.NONE,
          protectedCount,
          origin,
          span.label(),
          type);
      if (!span.label().equals(Years.ALL)) {
        sink.site(
            ContributionSubject.PROPERTY_YEARS,
            site,
            ContributionGroups.NONE,
            halfDays / (2 * Years.DAYS),
            origin,
            span.label(),
            type);
      }
    }
  }

  private void removals(SiteHistory site, List<DeviceHistory> here, Map<Integer, Removal> reports) {
    int entry = ClusterView.firstEntry(here);
    int first = LocalDate.ofEpochDay(Math.floorDiv(entry, 2)).getYear();
    int last = LocalDate.ofEpochDay(Math.floorDiv(settings.endHalfDay() - 1, 2)).getYear();
    if (last < first) {
      return;
    }
    String id = site.site().siteId();
    ContributionGroups groups = place(id);
    new TreeMap<>(reports)
        .subMap(first, last + 1)
        .forEach(
            (year, report) -> {
              Double avoided = RemovalTally.avoided(site, here, entry, year, report, settings);
              String label = Integer.toString(year);
              Origin row = report.origin();
              sink.site(
                  ContributionSubject.REMOVALS_AVOIDED, id, groups, avoided, row, label, null);
              sink.site(
                  ContributionSubject.REMOVALS_REPORTED,
                  id,
                  groups,
                  avoided == null ? null : report.removals(),
                  row,
                  label,
                  null);
              sink.site(
                  ContributionSubject.REMOVALS_CLAIMED,
                  id,
                  groups,
                  report.avoided(),
                  row,
                  label,
                  RemovalTally.evidence(report));
            });
  }
}
