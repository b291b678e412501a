package pondtally.reports.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import pondtally.reports.table.TablePackage;
import pondtally.table.Sha256;

/** Whether a folder holds a whole report, and which. */
final class WholeReport {

  private static final List<String> PARTS =
      List.of("run.json", "report.html", "program.xlsx", "grant.docx", "fix-list.xlsx");

  private WholeReport() {}

  /** Tables whose sums are right, and every report; throws where one is not. */
  static void require(Path out) throws IOException {
    TablePackage.open(out.resolve("tables"));
    for (String name : PARTS) {
      if (Files.size(out.resolve(name)) == 0) {
        throw new IOException(name + " is empty");
      }
    }
  }

  /** Files below a folder with their SHA-256. */
  static SortedMap<String, String> sums(Path out) throws IOException {
    SortedMap<String, String> sums = new TreeMap<>();
    try (Stream<Path> files = Files.walk(out)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        sums.put(out.relativize(file).toString(), Sha256.of(file));
      }
    }
    return sums;
  }

  /** Names in a folder, in order. */
  static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
