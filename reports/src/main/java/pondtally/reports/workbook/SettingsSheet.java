package pondtally.reports.workbook;

import java.util.List;
import java.util.Map;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;
import pondtally.reports.view.Setting;

/** The settings and assumptions of the run, each in a cell that formulas call by name. */
final class SettingsSheet {

  private static final String NAME = Messages.of("common.Settings");
  private static final int NARROWEST = 24;
  private static final int WIDEST = 60;

  private SettingsSheet() {}

  static void addTo(Book book, TablePackage tables) {
    List<Setting> settings = Setting.all(tables);
    Columns columns =
        Columns.of(tables, "")
            .add("label", Messages.of("common.Setting"), Format.TEXT)
            .add("value", Messages.of("common.Value"), Format.GENERAL)
            .width(longest(settings))
            .add("unit", Messages.of("common.Unit"), Format.TEXT)
            .add("meaning", Messages.of("workbook.SettingsSheet.what-it-does"), Format.WRAPPED)
            .width(90);
    book.add(
        TableSheet.of(
            NAME,
            Messages.of("workbook.SettingsSheet.settings-and-assumptions-of-this-run"),
            List.of(Messages.of("workbook.SettingsSheet.formulas-in-this-workbook-call-these")),
            columns,
            settings.stream().map(SettingsSheet::line).toList()));
    for (int i = 0; i < settings.size(); i++) {
      book.add(new Book.NamedCell(settings.get(i).cellName(), NAME, "value", i));
    }
  }

  /** A name or a source may be long: it is never cut. */
  private static int longest(List<Setting> settings) {
    int longest = settings.stream().mapToInt(setting -> setting.value().length()).max().orElse(0);
    return Math.max(NARROWEST, Math.min(WIDEST, longest + 2));
  }

  private static Line line(Setting setting) {
    return Line.of(
        Map.of(
            "label", setting.label(),
            "value", setting.value(),
            "unit", setting.unit(),
            "meaning", setting.meaning()));
  }
}
