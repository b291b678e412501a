package pondtally.reports.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A result table that is read row by row, because it may be too long for memory. */
public final class LongTable {

  private final Path file;
  private final Table heading;

  private LongTable(Path file, Table heading) {
    this.file = file;
    this.heading = heading;
  }

  /**
   * The table of that name in a folder of tables; empty where the run did not write it.
   *
   * @throws BrokenTables when the descriptor is missing or the file is not what the run wrote
   */
  public static Optional<LongTable> open(Path folder, String name) {
    return TablePackage.descriptor(folder, name)
        .map(
            resource -> {
              Path file = folder.resolve(resource.get("path").asText());
              String title = resource.path("title").asText(name);
              Table heading =
                  new Table(name, title, "", TablePackage.fields(resource), List.of(), List.of());
              LongTable table = new LongTable(file, heading);
              table.verify(resource.path("hash").asText());
              return table;
            });
  }

  private void verify(String expected) {
    MessageDigest digest = TablePackage.sha256();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(java.io.OutputStream.nullOutputStream());
    } catch (IOException e) {
      throw unreadable(e);
    }
    if (!("sha256:" + HexFormat.of().formatHex(digest.digest())).equals(expected)) {
      throw new BrokenTables(
          file.getFileName()
              + " is not the file that its run wrote (SHA-256 differs). Run the report again.");
    }
  }

  /** Hands over every row, in file order. */
  public void forEach(Consumer<Row> into) {
    try (CSVParser csv = CSVParser.parse(file, StandardCharsets.UTF_8, CSVFormat.RFC4180)) {
      boolean first = true;
      for (CSVRecord record : csv) {
        if (!first) {
          into.accept(new Row(heading, record.values()));
        }
        first = false;
      }
    } catch (IOException e) {
      throw unreadable(e);
    }
  }

  private BrokenTables unreadable(IOException e) {
    return new BrokenTables(file + " cannot be read: " + e.getMessage());
  }
}
