package pondtally.intake;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** A text file of cells with separators between them. */
final class CsvSource implements SheetSource {

  private static final int SAMPLE_LINES = 30;

  private final Path path;
  private final TextEncoding encoding;
  private final char separator;

  private CsvSource(Path path, TextEncoding encoding, char separator) {
    this.path = path;
    this.encoding = encoding;
    this.separator = separator;
  }

  /** Opens the file and decides encoding and separator, where they are not stated. */
  static CsvSource of(Path path, TextForm form) throws IOException {
    TextEncoding encoding =
        form.encoding() == null
            ? TextEncoding.of(path)
            : TextEncoding.stated(path, Charset.forName(form.encoding()));
    if (form.delimiter() != null) {
      return new CsvSource(path, encoding, form.delimiter());
    }
    List<String> sample = new ArrayList<>();
    try (LineReader lines = new LineReader(encoding.open(path))) {
      String line = lines.next();
      while (line != null && sample.size() < SAMPLE_LINES) {
        sample.add(line.length() > 10_000 ? line.substring(0, 10_000) : line);
        line = lines.next();
      }
    }
    return new CsvSource(path, encoding, Separator.of(sample));
  }

  @Override
  public int index() {
    return 0;
  }

  @Override
  public String name() {
    return "";
  }

  @Override
  public boolean isText() {
    return true;
  }

  @Override
  public SheetNotes read(Consumer<RawRow> rows) throws IOException {
    try (LineReader lines = new LineReader(encoding.open(path))) {
      CsvRows records = new CsvRows(lines, separator);
      RawRow row = new RawRow();
      while (records.next(row)) {
        rows.accept(row);
      }
    }
    return SheetNotes.ofText(encoding.isGuessed());
  }
}
