package pondtally.intake;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import pondtally.check.Finding;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.record.Origin;
import pondtally.record.Sourced;

/**
 * Reads partner files: each row ends as a record or with the reasons why not. Nothing in a file
 * makes it throw; what cannot be read is reported.
 */
public final class PartnerFileReader {

  private PartnerFileReader() {}

  /**
   * Reads all sheets of a file.
   *
   * @param sink takes the record of each row that is used, in row order
   * @return a report for each sheet that holds anything, in the order of the sheets; one that says
   *     why, if the file as a whole cannot be read
   */
  public static List<SheetReport> read(
      InputFile file, IntakeSettings settings, Consumer<Sourced> sink) {
    return read(
        file,
        (table, judge) -> {
          RecordFactory factory = RecordFactory.of(table.name());
          return factory == null
              ? new PriceSink(judge)
              : new RecordSink(factory, sink, settings.today());
        });
  }

  /**
   * The price index in a file: level of prices by year. Empty where the file holds none; of two
   * rows for one year the first counts. What was noticed about its rows is in the report of {@link
   * #read}.
   */
  public static NavigableMap<Integer, Double> prices(InputFile file, IntakeSettings settings) {
    NavigableMap<Integer, Double> levels = new TreeMap<>();
    List<PriceSink> sinks = new ArrayList<>();
    read(
        file,
        (table, judge) -> {
          RecordFactory factory = RecordFactory.of(table.name());
          if (factory != null) {
            return new RecordSink(factory, record -> {}, settings.today());
          }
          sinks.add(new PriceSink(judge));
          return sinks.get(sinks.size() - 1);
        });
    for (PriceSink prices : sinks) {
      prices.levels().forEach(levels::putIfAbsent);
    }
    return levels;
  }

  /**
   * Rows as they stand in the file, with the partner's headings.
   *
   * @param rows row numbers by index of the sheet
   * @return the rows that were found, in the order of the file
   * @throws IOException if the file cannot be read any more
   */
  public static List<SourceRow> cells(InputFile file, Map<Integer, SortedSet<Integer>> rows)
      throws IOException {
    List<SourceRow> found = new ArrayList<>();
    try (Sheets sheets = Sheets.open(file)) {
      for (SheetSource source : sheets.all()) {
        SortedSet<Integer> wanted = rows.getOrDefault(source.index(), new TreeSet<>());
        if (!wanted.isEmpty()) {
          found.addAll(SourceCells.of(file, source, wanted));
        }
      }
    }
    return found;
  }

  private static List<SheetReport> read(InputFile file, RowSink.Maker sinks) {
    Optional<NotOpened> why = file.notOpened();
    if (why.isPresent() && (why.get() != NotOpened.NAME || ProgramFolder.isRead(file))) {
      return List.of(noSheet(file, why.get().severity(), why.get().rule(), why.get().message()));
    }
    if (!ProgramFolder.isRead(file)) {
      return List.of(
          noSheet(
              file,
              Severity.NOTICE,
              IntakeRule.FILE_NOT_READ,
              "Not read: expected a .csv, .tsv or .xlsx file. Save it as one of these if it holds"
                  + " records."));
    }
    if (file.fixes().list() != null) {
      return List.of(FixReports.ofList(file));
    }
    List<SheetReport> reports = new ArrayList<>();
    try (Sheets sheets = Sheets.open(file)) {
      List<SheetSource> all = sheets.all();
      for (SheetSource source : all) {
        new SheetReader(file, source, sinks)
            .read()
            .ifPresent(report -> reports.add(FixReports.withRefused(report, source)));
      }
      FixReports.addMissingSheets(file, FixReports.names(all), reports);
    } catch (IOException e) {
      return List.of(unreadable(file, e));
    }
    if (!reports.isEmpty()) {
      reports.set(0, AbsentSheets.reported(file, reports));
    }
    if (reports.isEmpty()) {
      reports.add(
          noSheet(
              file, Severity.NOTICE, IntakeRule.FILE_EMPTY, "There is nothing in the workbook."));
    }
    return reports;
  }

  private static SheetReport unreadable(InputFile file, IOException e) {
    return noSheet(
        file,
        Severity.SET_ASIDE,
        IntakeRule.FILE_UNREADABLE,
        "The file cannot be read: %s. Nothing of it is counted.".formatted(reason(e)));
  }

  /** Why, in words: the file system's own exceptions say no more than a path. */
  public static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "you have no permission to read it";
    }
    if (e instanceof NoSuchFileException) {
      return "it is gone";
    }
    return e instanceof FileSystemException ? "the file system refuses it" : e.getMessage();
  }

  private static SheetReport noSheet(
      InputFile file, Severity severity, IntakeRule rule, String message) {
    Origin origin = new Origin(file.index(), 0, 0, false);
    Finding finding =
        new Finding(origin, null, null, null, null, severity, rule.code(), message, "");
    RowCounts none = new RowCounts(0, 0, 0, 0, 0);
    return new SheetReport(file.index(), 0, "", null, Map.of(), none, null, List.of(finding));
  }
}
