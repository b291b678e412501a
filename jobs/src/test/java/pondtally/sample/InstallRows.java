package pondtally.sample;

import java.util.ArrayList;
import java.util.List;

/**
 * The installs table: each device as built, and again where a replacement was of another design.
 */
final class InstallRows {
  private InstallRows() {}

  static List<Row> of(List<History> histories) {
    List<Row> rows = new ArrayList<>();
    for (History history : histories) {
      rows.add(first(history));
      for (Visit visit : history.visits()) {
        if (visit.design() != null) {
          rows.add(redesigned(history.device(), visit));
        }
      }
    }
    return rows;
  }

  private static Row first(History history) {
    Device device = history.device();
    Draw draw = Draw.of("install-row", device.id());
    Row row = new Row().with("device_id", device.id()).with("site_id", device.site().id());
    row.with("installed_on", device.installedOn());
    build(device, device.pipe(), draw, row);
    effort(device, draw, row);
    row.with("tracked_from", device.trackedFrom());
    return row.with("retired_on", history.retiredOn())
        .with("retired_reason", history.retiredReason());
  }

  /** A rebuilt device has the flaws of the first; its labor is the replacement visit's. */
  private static Row redesigned(Device device, Visit visit) {
    Draw draw = Draw.of("redesign-row", device.id(), visit.on().toString());
    Row row = new Row().with("device_id", device.id()).with("site_id", device.site().id());
    row.with("installed_on", visit.on());
    build(device, visit.design(), draw, row);
    return row.with("crew", device.crew())
        .with("funder", device.site().partner().funder(visit.on().getYear()));
  }

  private static void build(Device device, SampleTruth.Pipe pipe, Draw draw, Row row) {
    Build build = Build.of(device, pipe);
    row.with("device_kind", device.kind()).with("pipe_wall", pipe.wall);
    boolean recorded = draw.chance(0.85);
    fence(build, recorded, draw, row);
    if (build.hasPipe()) {
      row.with("pipe_diameter_in", pipe.diameterIn).with("pipe_length_ft", build.lengthFt());
      row.with("section_length_ft", build.sectionFt());
      if (recorded) {
        details(build, row);
      }
    }
  }

  private static void fence(Build build, boolean recorded, Draw draw, Row row) {
    double across = build.pipe().diameterIn >= 15 ? 6.0 : 5.0;
    int flaw = build.flaw();
    row.with("fence_diameter_ft", flaw == 0 ? across - 1 : across, 1);
    row.with("fence_wire_gauge", flaw == 1 ? 10 : draw.between(4, 6));
    row.with("fence_form", flaw == 1 || flaw == 2 ? "roll" : "panel");
    if (recorded) {
      row.with("fence_mesh_in", 6);
    }
  }

  private static void details(Build build, Row row) {
    int flaw = build.flaw();
    if (!build.pipe().wall.equals("smooth")) {
      boolean dual = build.pipe().wall.equals("dual");
      row.with("top_slits", flaw == 3 ? 0 : 1);
      row.with("bottom_slits", dual ? (flaw == 3 ? 2 : 4) : 0);
      row.with("gas_holes", dual && flaw != 3 ? "yes" : "no");
    }
    row.with("weights", build.weights());
    row.with("inlet_tied", flaw == 0 || flaw == 4 ? "no" : "yes");
    row.with("outlet_highest", flaw == 3 ? "no" : "yes");
    row.with("pipe_covered", flaw == 4 ? "no" : "yes");
  }

  private static void effort(Device device, Draw draw, Row row) {
    Partner partner = device.site().partner();
    int year = device.installedOn().getYear();
    row.with("crew", device.crew()).with("funder", partner.funder(year));
    double hours = draw.lognormal(SampleTruth.INSTALL_HOURS, 0.3);
    if (device.costless()) {
      return;
    }
    if (partner == Partner.BRACKWEN) {
      double materials =
          MaterialRows.expectedUsd(Build.of(device, device.pipe())) * SampleTruth.inflation(year);
      double labor = hours * SampleTruth.LABOR_RATE_USD * SampleTruth.inflation(year);
      row.with(
          "install_cost_usd", Math.round((materials * draw.lognormal(1.0, 0.1) + labor) / 5) * 5);
    } else if (partner == Partner.QUARRINDALE) {
      row.with("labor_hours", hours * 0.25, 1).with("volunteer_hours", hours * 1.1, 1);
      row.with("match_for", draw.chance(0.7) ? "Ninefold Habitat Award" : "");
    } else {
      row.with("labor_hours", Math.round(hours * 2) / 2.0, 1);
      boolean both = partner == Partner.LOWMARROW && draw.chance(0.15);
      row.with(
          "install_cost_usd",
          both ? Cell.of(Math.round(draw.uniform(1400, 2600) / 10) * 10) : Cell.blank());
    }
  }
}
