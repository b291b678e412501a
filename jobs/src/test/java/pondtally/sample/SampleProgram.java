package pondtally.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The whole sample: what happened, the sheets partners send, and the faults planted in them. */
final class SampleProgram {
  private final World world = new World();
  private final List<Sheet> sheets = new ArrayList<>();
  private final List<Planted> planted;

  SampleProgram() {
    sheets.addAll(BrackwenFiles.of(world));
    sheets.addAll(LowmarrowFiles.of(world));
    sheets.addAll(OrrenbyFiles.of(world));
    sheets.addAll(QuarrindaleFiles.of(world));
    sheets.addAll(TessarbyFiles.of(world));
    FaultBook book = new FaultBook(sheets);
    new RowFaults(book).plant();
    new CrossFaults(book, world).plant();
    new ClaimFaults(book, world).plant();
    new TwoIdFaults(book, world).plant();
    Habits habits = new Habits(book);
    habits.apply();
    new WholeFaults(book).find(sheets);
    habits.blankLines();
    for (Sheet stray : StraySheets.sheets()) {
      sheets.add(stray);
      book.noteWhole(stray, null, "", FaultKind.UNRECOGNISED, Outcome.NOTICE);
    }
    planted = List.copyOf(book.planted());
  }

  World world() {
    return world;
  }

  List<Sheet> sheets() {
    return sheets;
  }

  List<Planted> planted() {
    return planted;
  }

  /** The device's own id by each id that a second partner gave it. */
  Map<String, String> secondIds() {
    return planted.stream()
        .filter(fault -> fault.kind() == FaultKind.LIKELY_DUPLICATE)
        .collect(
            Collectors.toMap(
                fault -> fault.row().text("device_id"), fault -> fault.twin().text("device_id")));
  }
}
