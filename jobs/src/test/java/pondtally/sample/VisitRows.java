package pondtally.sample;

import java.util.ArrayList;
import java.util.List;

/** The revisits table: what each visit found, did and cost. */
final class VisitRows {
  private static final List<String> NOTES =
      List.of(
          "Water level good",
          "Some debris at the inlet, left as it was",
          "Owner asks for a call before the next visit",
          "Fresh cuttings upstream",
          "Gate locked; went in from the road",
          "High water, outlet not seen",
          "Photographs taken");

  private VisitRows() {}

  static List<Row> of(List<History> histories) {
    List<Row> rows = new ArrayList<>();
    for (History history : histories) {
      for (Visit visit : history.visits()) {
        rows.add(row(history.device(), visit));
      }
    }
    return rows;
  }

  private static Row row(Device device, Visit visit) {
    Partner partner = device.site().partner();
    Draw draw = Draw.of("visit-row", device.id(), visit.on().toString());
    Row row = new Row().with("device_id", device.id()).with("visited_on", visit.on());
    row.with("condition", visit.condition()).with("cause", visit.cause());
    row.with("action", visit.action().equals("none") && draw.chance(0.4) ? "" : visit.action());
    row.with("reason", reason(visit, draw));
    if (!device.costless()) {
      cost(partner, visit, draw, row);
    }
    boolean walks = partner == Partner.TESSARBY || partner == Partner.LOWMARROW;
    if (walks && !visit.condition().equals("retired") && draw.chance(0.18)) {
      row.with("wetland_acres", AreaRows.measured(device.site().acres(), "walked", draw), 1);
    }
    row.with("beaver_present", draw.chance(0.7) ? (draw.chance(0.8) ? "yes" : "no") : "");
    return row.with("notes", draw.chance(0.08) ? draw.pick(NOTES) : "");
  }

  private static String reason(Visit visit, Draw draw) {
    boolean complaint = visit.condition().equals("failed") && draw.chance(0.4);
    return complaint ? "complaint" : draw.chance(0.9) ? "scheduled" : "other";
  }

  private static void cost(Partner partner, Visit visit, Draw draw, Row row) {
    double hours = hours(visit.action()) * draw.lognormal(1.0, 0.35);
    String field = partner == Partner.QUARRINDALE ? "volunteer_hours" : "hours";
    row.with(field, Math.max(1, Math.round(hours * 4)) / 4.0, 2);
    if (partner == Partner.QUARRINDALE) {
      row.with("match_for", draw.chance(0.5) ? "Ninefold Habitat Award" : "");
    }
    double parts = partsUsd(partner, visit.action()) * SampleTruth.inflation(visit.on().getYear());
    if (parts > 0) {
      row.with("cost_usd", parts * draw.lognormal(1.0, 0.4), 2);
      row.with("paid_by", draw.chance(0.6) ? partner.funder(visit.on().getYear()) : "");
    }
  }

  private static double hours(String action) {
    return switch (action) {
      case "cleaned" -> 2.2;
      case "repaired" -> 4.5;
      case "replaced" -> 18;
      case "removed" -> 5;
      default -> 0.9;
    };
  }

  /**
   * Parts only: hours stand in their own column, and a replacement's materials in their own lines
   * where kept.
   */
  private static double partsUsd(Partner partner, String action) {
    return switch (action) {
      case "repaired" -> 140;
      case "replaced" -> partner == Partner.BRACKWEN ? 1150 : 0;
      case "removed" -> 60;
      default -> 0;
    };
  }
}
