package pondtally.analysis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;
import pondtally.history.Histories;
import pondtally.history.HistoryRules;
import pondtally.record.Action;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.DeviceKind;
import pondtally.record.Evidence;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.PipeWall;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.RequestOutcome;
import pondtally.record.Setting;
import pondtally.record.Site;
import pondtally.record.Visit;
import pondtally.stats.PriceIndex;

/**
 * A small invented cluster for tests of money: rows are added one by one, each on a row of its own.
 * Prices are level, paid hours cost $30 and volunteer hours $20; the data cut is 2024-12-31.
 */
final class MoneyProgram {

  private final List<Site> sites = new ArrayList<>();
  private final List<Install> installs = new ArrayList<>();
  private final List<MaterialLine> materials = new ArrayList<>();
  private final List<Visit> visits = new ArrayList<>();
  private final List<Property> properties = new ArrayList<>();
  private final List<Removal> removals = new ArrayList<>();
  private final List<Request> requests = new ArrayList<>();
  private int row = 1;

  static int day(String date) {
    return (int) LocalDate.parse(date).toEpochDay();
  }

  static AnalysisSettings settings() {
    return settings(20.0);
  }

  static AnalysisSettings settings(Double volunteerRateUsd) {
    HistoryRules rules =
        new HistoryRules(FailureDefinition.FAILED, FailureDating.MIDPOINT, day("2024-12-31"), 180);
    return new AnalysisSettings(
        rules,
        day("2024-01-01"),
        day("2024-12-31"),
        12,
        2024,
        0.03,
        10,
        30,
        volunteerRateUsd,
        5,
        7,
        200);
  }

  private static Prices prices() {
    Map<Integer, Double> level = new TreeMap<>();
    for (int year = 2010; year <= 2024; year++) {
      level.put(year, 100.0);
    }
    return new Prices(PriceIndex.of(new TreeMap<>(level)), 2024);
  }

  private Origin next() {
    return new Origin(0, 0, row++, false);
  }

  MoneyProgram site(String id, Double damageUsd) {
    sites.add(
        new Site(
            next(),
            "p",
            id,
            "990102030405",
            Setting.ROAD_CROSSING,
            null,
            null,
            null,
            null,
            null,
            damageUsd,
            2020,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null));
    return this;
  }

  /** A leveler with 20 ft of double 12 in pipe in sections of 10 ft and a fence 5 ft across. */
  MoneyProgram device(String id, String site, String on, Double lumpUsd) {
    return device(id, site, on, null, lumpUsd, "fund-a");
  }

  MoneyProgram device(
      String id, String site, String on, Double laborHours, Double lumpUsd, String funder) {
    installs.add(
        new Install(
            next(),
            "p",
            id,
            site,
            day(on),
            DeviceKind.POND_LEVELER,
            PipeWall.DUAL,
            12.0,
            20.0,
            10.0,
            5.0,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            funder,
            laborHours,
            null,
            lumpUsd,
            null,
            null,
            null,
            null));
    return this;
  }

  MoneyProgram material(
      String device, MaterialItem item, double quantity, double usd, String paidBy, String match) {
    materials.add(
        new MaterialLine(
            next(), "p", device, item, quantity, null, null, usd, null, paidBy, match));
    return this;
  }

  MoneyProgram visit(String device, String on, Condition condition, Action action, Double usd) {
    return visit(device, on, condition, action, usd, null, null, null);
  }

  MoneyProgram visit(
      String device,
      String on,
      Condition condition,
      Action action,
      Double usd,
      Double volunteerHours,
      String paidBy,
      String match) {
    visits.add(
        new Visit(
            next(),
            "p",
            device,
            day(on),
            condition,
            null,
            action,
            null,
            null,
            volunteerHours,
            usd,
            paidBy,
            match,
            null,
            null,
            null));
    return this;
  }

  MoneyProgram property(String id, String site, Double damageUsd) {
    properties.add(new Property(next(), "p", id, site, null, null, null, damageUsd, 2020, null));
    return this;
  }

  MoneyProgram request(String site, String on, RequestOutcome outcome) {
    requests.add(new Request(next(), "p", site, day(on), outcome));
    return this;
  }

  MoneyProgram removed(String site, int year, double animals) {
    removals.add(new Removal(next(), "p", site, year, animals, null, Evidence.LOG));
    return this;
  }

  /** A site whose agreement and permit hold until given days; null: not recorded. */
  MoneyProgram agreed(String id, String agreementUntil, String permitUntil) {
    sites.add(
        new Site(
            next(),
            "p",
            id,
            "990102030405",
            Setting.FARMLAND,
            null,
            null,
            null,
            null,
            3.0,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            agreementUntil == null ? null : (Integer) day(agreementUntil),
            permitUntil == null ? null : (Integer) day(permitUntil)));
    return this;
  }

  /** Something bought for a device on a day of its own. */
  MoneyProgram bought(String device, MaterialItem item, double quantity, String unit, String on) {
    materials.add(
        new MaterialLine(
            next(), "p", device, item, quantity, unit, null, 10.0, day(on), null, null));
    return this;
  }

  ClusterView view() {
    return view(settings());
  }

  ClusterView view(AnalysisSettings settings) {
    ClusterRecords records =
        new ClusterRecords(
            sites.get(0).siteId(),
            sites,
            installs,
            materials,
            visits,
            removals,
            properties,
            List.of(),
            requests);
    return new ClusterView(
        Histories.of(records, settings.rules()),
        new Groups(settings.watershedDigits()),
        new CostRules(prices(), settings.laborRateUsd(), settings.volunteerRateUsd()));
  }
}
