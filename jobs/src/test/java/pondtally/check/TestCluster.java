package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import pondtally.record.Area;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** A cluster of a few rows, checked as of the end of 2025 on a day in March 2026. */
final class TestCluster {

  static final String AS_OF = "2025-12-31";
  static final String TODAY = "2026-03-10";

  private final List<Sourced> rows = new ArrayList<>();
  private CheckedCluster checked;

  static TestCluster of(Sourced... rows) {
    TestCluster cluster = new TestCluster();
    cluster.rows.addAll(List.of(rows));
    return cluster;
  }

  /** One site and one device that nothing is wrong with, in rows 2 and 3 of files 1 and 2. */
  static TestCluster sound(Sourced... more) {
    TestCluster cluster = of(soundSite(), soundInstall(), soundVisit());
    cluster.rows.addAll(List.of(more));
    return cluster;
  }

  static Site soundSite() {
    return TestRow.at(
        Site.class,
        new Origin(1, 0, 2, false),
        "siteId",
        "S1",
        "watershed",
        "99010203",
        "wetlandAcresBefore",
        2.0);
  }

  static Install soundInstall() {
    return TestRow.at(
        Install.class,
        new Origin(2, 0, 3, false),
        "deviceId",
        "D1",
        "siteId",
        "S1",
        "installedOn",
        "2020-05-01",
        "laborHours",
        8.0);
  }

  static Visit soundVisit() {
    return TestRow.at(
        Visit.class,
        new Origin(3, 0, 4, false),
        "deviceId",
        "D1",
        "visitedOn",
        "2020-11-01",
        "condition",
        Condition.WORKING);
  }

  void add(Sourced... more) {
    rows.addAll(List.of(more));
  }

  ClusterRecords raw() {
    return raw(rows);
  }

  static ClusterRecords raw(List<Sourced> rows) {
    return new ClusterRecords(
        "S1",
        only(rows, Site.class),
        only(rows, Install.class),
        only(rows, MaterialLine.class),
        only(rows, Visit.class),
        only(rows, Removal.class),
        only(rows, Property.class),
        only(rows, Area.class),
        only(rows, Request.class));
  }

  private static <T> List<T> only(List<Sourced> rows, Class<T> type) {
    return rows.stream().filter(type::isInstance).map(type::cast).toList();
  }

  CheckedCluster checked() {
    if (checked == null) {
      checked =
          ClusterChecks.check(raw(), new CheckSettings(TestRow.day(AS_OF), TestRow.day(TODAY)));
    }
    return checked;
  }

  /** The findings as {@code table row field=value severity rule: message}, exactly these. */
  TestCluster finds(String... expected) {
    List<String> found =
        checked().findings().stream()
            .map(
                f ->
                    "%s %s %s %s %s: %s"
                        .formatted(
                            f.table(),
                            f.origin().row(),
                            f.field() == null ? "-" : f.field() + "=" + f.value(),
                            f.severity().code(),
                            f.rule(),
                            f.message()))
            .toList();
    assertEquals(String.join("\n", expected), String.join("\n", found));
    return this;
  }

  /** The verdicts as {@code row FATE}, exactly these. */
  TestCluster judges(String... expected) {
    List<String> found =
        checked().verdicts().stream().map(v -> v.origin().row() + " " + v.fate()).toList();
    assertEquals(List.of(expected), found);
    return this;
  }
}
