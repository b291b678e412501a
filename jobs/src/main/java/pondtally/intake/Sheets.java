package pondtally.intake;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The sheets of an open file. */
interface Sheets extends Closeable {

  /** All sheets, hidden ones included, in their order. */
  List<SheetSource> all();

  /**
   * Opens a text file or a workbook.
   *
   * @throws IOException if it is broken, protected or something else than its name says; the
   *     message continues the sentence "The file cannot be read: "
   */
  static Sheets open(InputFile file) throws IOException {
    Path path = Path.of(file.location());
    Sheets sheets =
        FileKind.of(file.path()) == FileKind.WORKBOOK
            ? XlsxBook.open(path)
            : ofText(CsvSource.of(path, file.columns().textOf(file.path())));
    return MendedSheets.of(sheets, file.fixes());
  }

  private static Sheets ofText(SheetSource source) {
    return new Sheets() {
      @Override
      public List<SheetSource> all() {
        return List.of(source);
      }

      @Override
      public void close() {}
    };
  }
}
