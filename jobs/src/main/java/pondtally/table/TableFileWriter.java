package pondtally.table;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.stream.Collectors;

/**
 * Writes the file of a result table from rows that are text already, in the order given, and sums
 * it up while it is written.
 */
public final class TableFileWriter implements AutoCloseable {

  private static final int BUFFER_BYTES = 1 << 18;

  private final TableSpec spec;
  private final OutputStream out;
  private final MessageDigest digest = Sha256.digest();
  private long rows;

  private TableFileWriter(TableSpec spec, OutputStream file) {
    this.spec = spec;
    out = new BufferedOutputStream(new DigestOutputStream(file, digest), BUFFER_BYTES);
  }

  /** Starts the file of the table declared as {@code name} in an existing folder. */
  public static TableFileWriter open(Path folder, String name) throws IOException {
    TableSpec spec = TableSpec.named(name);
    TableFileWriter writer =
        new TableFileWriter(spec, Files.newOutputStream(folder.resolve(name + ".csv")));
    String names = spec.columns().stream().map(Column::name).collect(Collectors.joining(","));
    writer.out.write((names + "\r\n").getBytes(StandardCharsets.UTF_8));
    return writer;
  }

  /**
   * Writes rows: a cell for each declared column, made by {@link CsvText}, and a line end (CR LF)
   * behind each row.
   *
   * @param count how many they are
   */
  public void rows(byte[] lines, int count) throws IOException {
    out.write(lines);
    rows += count;
  }

  /** Ends the file; the table as it stands. */
  public TableFile written() throws IOException {
    close();
    return new TableFile(spec, rows, HexFormat.of().formatHex(digest.digest()));
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
