package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The materials table: what each device was built of; one partner keeps lump sums and none of this.
 */
final class MaterialRows {

  /** One kind of material that a device takes, at its base-year price. */
  private record Need(String item, int quantity, String unit, double usd) {}

  private MaterialRows() {}

  static List<Row> of(List<History> histories) {
    List<Row> rows = new ArrayList<>();
    for (History history : histories) {
      Device device = history.device();
      if (device.site().partner() == Partner.BRACKWEN || device.costless()) {
        continue;
      }
      rows.addAll(lines(device, device.pipe(), device.installedOn(), false));
      SampleTruth.Pipe pipe = device.pipe();
      for (Visit visit : history.visits()) {
        pipe = visit.design() == null ? pipe : visit.design();
        if (visit.action().equals("replaced")) {
          rows.addAll(lines(device, pipe, visit.on(), true));
        }
      }
    }
    return rows;
  }

  /** What the materials of such a device cost in base-year dollars, without rental. */
  static double expectedUsd(Build build) {
    return needs(build).stream().mapToDouble(need -> need.quantity() * need.usd()).sum();
  }

  private static List<Need> needs(Build build) {
    SampleTruth.Pipe pipe = build.pipe();
    List<Need> needs = new ArrayList<>();
    if (build.hasPipe()) {
      needs.add(new Need("pipe", build.lengthFt(), "ft", pipe.usdPerFoot));
      needs.add(new Need("coupler", build.sections() - 1, "each", 14 + 1.4 * pipe.diameterIn));
      needs.add(new Need("weight", build.weights(), "each", 6.50));
    }
    int panels = !build.hasPipe() ? 6 : pipe.diameterIn >= 15 ? 5 : 4;
    needs.add(new Need("fence-panel", panels, "each", 58.0));
    needs.add(new Need("fastener", 2, "box", 17.50));
    needs.add(new Need("wire", 1, "coil", 26.0));
    needs.add(new Need("post", build.hasPipe() ? 4 : 8, "each", 9.25));
    needs.removeIf(need -> need.quantity() == 0);
    return needs;
  }

  private static List<Row> lines(
      Device device, SampleTruth.Pipe pipe, LocalDate on, boolean replacement) {
    Draw draw = Draw.of("materials", device.id(), on.toString());
    Partner partner = device.site().partner();
    boolean dated = replacement || partner == Partner.ORRENBY;
    LocalDate bought = replacement || draw.chance(0.6) ? on : on.minusDays(draw.between(2, 40));
    List<Row> rows = new ArrayList<>();
    for (Need need : needs(Build.of(device, pipe))) {
      rows.add(line(device, need, on.getYear(), draw).with("purchased_on", dated ? bought : null));
    }
    if (draw.chance(0.12)) {
      Need rental = new Need("rental", 1, "day", 185.0);
      rows.add(line(device, rental, on.getYear(), draw).with("purchased_on", dated ? on : null));
    }
    return rows;
  }

  private static Row line(Device device, Need need, int year, Draw draw) {
    Partner partner = device.site().partner();
    double unitUsd = need.usd() * SampleTruth.inflation(year) * draw.lognormal(1.0, 0.08);
    Row row = new Row().with("device_id", device.id()).with("item", need.item());
    row.with("quantity", need.quantity()).with("unit", need.unit());
    if (partner == Partner.ORRENBY || partner == Partner.QUARRINDALE) {
      row.with("unit_cost_usd", unitUsd, 2);
    } else {
      row.with("total_cost_usd", unitUsd * need.quantity(), 2);
    }
    boolean given =
        partner == Partner.QUARRINDALE && draw.chance(need.item().equals("pipe") ? 0.1 : 0.3);
    if (given) {
      return row.with("paid_by", "in-kind")
          .with("match_for", draw.chance(0.8) ? "Ninefold Habitat Award" : "");
    }
    return row.with("paid_by", draw.chance(0.5) ? partner.funder(year) : "");
  }
}
