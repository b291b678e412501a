package pondtally.reports.compare;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import pondtally.reports.table.RunFolder;
import pondtally.reports.table.Table;

/**
 * What differs between two runs.
 *
 * @param compared number of figures that both runs have
 */
public record Comparison(
    List<FigureChange> figures,
    List<SettingChange> settings,
    List<FileChange> files,
    List<RowChange> rows,
    List<RecordChange> records,
    int compared) {

  /** Compares an earlier run with a later one. */
  public static Comparison of(RunFolder before, RunFolder after) {
    Reach reach = Reach.read();
    List<SettingChange> settings = SettingChange.of(before.tables(), after.tables(), reach);
    List<FileChange> files = FileChange.of(before.inputs(), after.inputs());
    List<RowChange> rows = RowChange.of(before.tables(), after.tables(), files);
    List<RecordChange> records = RecordChange.of(before.tables(), after.tables());
    Predicate<RecordChange> byRecords =
        record -> isByRecords(record, settings, reach, after.tables().table("devices"));
    GroupRecords groups = new GroupRecords(before.tables(), after.tables(), records, byRecords);
    FigureChanges figures = new FigureChanges(new Causes(reach, settings, rows, groups));
    List<FigureChange> changes = figures.of(before.tables(), after.tables());
    return new Comparison(changes, settings, files, rows, records, figures.compared());
  }

  /** Whether a column differs that none of the settings can have moved. */
  private static boolean isByRecords(
      RecordChange record, List<SettingChange> settings, Reach reach, Optional<Table> devices) {
    List<String> columns = List.of(record.columns().split(", "));
    return devices.stream()
        .flatMap(table -> table.fields().stream())
        .filter(field -> columns.contains(field.name()))
        .anyMatch(
            field ->
                settings.stream().noneMatch(s -> reach.reaches(s.setting(), "devices", "", field)));
  }
}
