package pondtally.intake;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/** Fuzz target: units in headings and in cells. */
public final class FuzzUnits {

  private static final TableSchema INSTALLS = TableSchema.named("installs");

  private FuzzUnits() {}

  /** Loads what the first input would be timed for. */
  public static void fuzzerInitialize() {
    fuzzerTestOneInput("12 ft".getBytes(StandardCharsets.UTF_8));
  }

  public static void fuzzerTestOneInput(byte[] data) {
    String text = Blank.clean(new String(data, StandardCharsets.UTF_8));
    Optional<Unit> unit = Unit.find(text);
    unit.ifPresent(found -> roundTrips(found, text));
    double[] pair = FeetAndInches.of(text);
    require(pair == null || (pair[0] >= 0 && pair[1] >= 0), text);
    heading(text);
    if (!text.isEmpty()) {
      cell(text);
    }
  }

  private static void roundTrips(Unit unit, String text) {
    for (Unit other : Unit.values()) {
      if (other.dimension() == unit.dimension()) {
        double back = other.convert(unit.convert(123.456, other), unit);
        require(Math.abs(back - 123.456) < 1e-9, text);
      }
    }
  }

  private static void heading(String text) {
    RawRow row = new RawRow();
    row.start(1);
    row.add("device_id");
    row.add(text);
    Headings.of(INSTALLS, row, SheetMap.NONE);
  }

  /** What a column of feet makes of it: a number in the possible range, or a reason why not. */
  private static void cell(String text) {
    FieldSchema field = INSTALLS.field("pipe_length_ft");
    RowJudge judge = new RowJudge(0, 0, "installs");
    judge.start(2);
    NumberForm form = new NumberForm(field.unit(), "the heading", null, null, false);
    Object value =
        new NumberConverter(field, 0, form, SheetClues.none(), judge).convert(text, false);
    require(value != null || !judge.findings().isEmpty(), text);
    if (value instanceof Double feet) {
      require(feet >= field.minimum() && feet <= field.maximum(), text);
      // White space, and points in a unit, say nothing: "7 ft." is "7ft". Nobody sees a control.
      String said = text.replaceAll("[\\p{Z}.]", "");
      boolean isPlain = said.matches("[+]?[0-9]+([\\D&&\\P{Cntrl}]{1,5})?");
      require(isPlain || !judge.findings().isEmpty(), text);
    }
  }

  private static void require(boolean holds, String text) {
    if (!holds) {
      throw new AssertionError(text);
    }
  }
}
