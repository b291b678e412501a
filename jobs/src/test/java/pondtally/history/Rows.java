package pondtally.history;

import java.util.ArrayList;
import java.util.List;
import pondtally.record.Action;
import pondtally.record.Area;
import pondtally.record.AreaMethod;
import pondtally.record.Cause;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.RetiredReason;
import pondtally.record.Site;
import pondtally.record.Visit;

/** Rows of one small cluster, said in few words; each row stands below the one before. */
final class Rows {

  /** Data cut on day 1000, a visit planned every 180 days. */
  static final HistoryRules RULES =
      new HistoryRules(FailureDefinition.FAILED, FailureDating.INTERVAL, 1000, 180);

  /** The same, and reduced counts as failure. */
  static final HistoryRules STRICT =
      new HistoryRules(FailureDefinition.FAILED_OR_REDUCED, FailureDating.INTERVAL, 1000, 180);

  final List<Site> sites = new ArrayList<>();
  final List<Install> installs = new ArrayList<>();
  final List<Visit> visits = new ArrayList<>();
  final List<Property> properties = new ArrayList<>();
  final List<Area> areas = new ArrayList<>();
  private int row = 1;

  /** The only device, d1, put in on a day at the only site. */
  static Rows installed(int day) {
    return new Rows().site("s1").install("d1", "s1", day);
  }

  /** The same, followed from a later day. */
  static Rows tracked(int day, int from) {
    return new Rows().site("s1").install("d1", "s1", day, from, null, null);
  }

  /** The same, with the end that its install row states. */
  static Rows retired(int day, int retiredOn, RetiredReason reason) {
    return new Rows().site("s1").install("d1", "s1", day, null, retiredOn, reason);
  }

  /** From the start of one day to the start of another. */
  static Stretches days(int from, int to) {
    return Stretches.between(2 * from, 2 * to);
  }

  private Origin next() {
    return new Origin(0, 0, ++row, false);
  }

  /** A site that drains {@code pondId}; areas null where not measured. */
  Rows site(String siteId, String pondId, Double acresBefore, Double floodedAcresBefore) {
    sites.add(
        new Site(
            next(),
            "north",
            siteId,
            null,
            null,
            null,
            null,
            null,
            pondId,
            null,
            null,
            null,
            acresBefore,
            AreaMethod.SURVEY,
            floodedAcresBefore,
            null,
            null,
            null,
            null,
            null));
    return this;
  }

  Rows site(String siteId) {
    return site(siteId, null, null, null);
  }

  Rows install(String deviceId, String siteId, int day) {
    return install(deviceId, siteId, day, null, null, null);
  }

  Rows install(
      String deviceId,
      String siteId,
      int day,
      Integer trackedFrom,
      Integer retiredOn,
      RetiredReason reason) {
    installs.add(Designs.device(next(), deviceId, siteId, day, trackedFrom, retiredOn, reason));
    return this;
  }

  Rows visit(String deviceId, int day, Condition condition) {
    return visit(deviceId, day, condition, null, null, null);
  }

  Rows visit(String deviceId, int day, Condition condition, Action action) {
    return visit(deviceId, day, condition, action, null, null);
  }

  Rows visit(
      String deviceId, int day, Condition condition, Action action, Cause cause, Double acres) {
    visits.add(
        new Visit(
            next(), "north", deviceId, day, condition, cause, action, null, null, null, null, null,
            null, acres, null, null));
    return this;
  }

  Rows property(String propertyId, String siteId, Integer from, Integer until) {
    properties.add(
        new Property(next(), "north", propertyId, siteId, null, from, until, null, null, null));
    return this;
  }

  Rows area(String siteId, String pondId, int day, double acres, AreaMethod method) {
    areas.add(new Area(next(), "north", siteId, pondId, day, acres, method));
    return this;
  }

  ClusterRecords records() {
    return new ClusterRecords(
        sites.get(0).siteId(),
        List.copyOf(sites),
        List.copyOf(installs),
        List.of(),
        List.copyOf(visits),
        List.of(),
        List.copyOf(properties),
        List.copyOf(areas),
        List.of());
  }

  ClusterHistory history() {
    return history(RULES);
  }

  ClusterHistory history(HistoryRules rules) {
    return Histories.of(records(), rules);
  }

  /** The history of the only device. */
  DeviceHistory device() {
    return device(RULES);
  }

  DeviceHistory device(HistoryRules rules) {
    return history(rules).sites().get(0).devices().get(0);
  }
}
