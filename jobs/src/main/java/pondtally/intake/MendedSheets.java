package pondtally.intake;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The sheets of a file with corrections of their rows. */
final class MendedSheets implements Sheets {

  private final Sheets sheets;
  private final List<FixRow> rows;

  private MendedSheets(Sheets sheets, List<FixRow> rows) {
    this.sheets = sheets;
    this.rows = rows;
  }

  static Sheets of(Sheets sheets, FixShare share) {
    return share.rows().isEmpty() ? sheets : new MendedSheets(sheets, share.rows());
  }

  @Override
  public List<SheetSource> all() {
    List<SheetSource> mended = new ArrayList<>();
    for (SheetSource source : sheets.all()) {
      List<FixRow> own =
          rows.stream().filter(row -> row.key().sheet().equals(source.name())).toList();
      mended.add(own.isEmpty() ? source : new MendedSheet(source, own));
    }
    return mended;
  }

  @Override
  public void close() throws IOException {
    sheets.close();
  }
}
