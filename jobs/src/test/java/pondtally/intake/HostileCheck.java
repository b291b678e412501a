package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import pondtally.check.CheckSettings;
import pondtally.check.CheckedCluster;
import pondtally.check.ClusterChecks;
import pondtally.check.FileName;
import pondtally.check.Finding;
import pondtally.check.IssueBook;
import pondtally.check.KnownIds;
import pondtally.check.ProgramChecks;
import pondtally.check.RowAccount;
import pondtally.check.Severity;
import pondtally.check.SheetReport;
import pondtally.check.Verdict;
import pondtally.record.Area;
import pondtally.record.AreaMethod;
import pondtally.record.Budget;
import pondtally.record.ClusterRecords;
import pondtally.record.Code;
import pondtally.record.Expense;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/**
 * What must hold of every file, whatever is in it: it is read without an exception, every row that
 * was read ends in one of the four fates, every row set aside has its reason, and every value that
 * counts is the one in its cell, or there is a finding about that cell or its column.
 */
final class HostileCheck {

  private static final int TODAY = (int) LocalDate.of(2025, 12, 31).toEpochDay();

  private final InputFile file;
  private final List<Sourced> records = new ArrayList<>();
  private final List<SheetReport> reports;
  private final String name;

  private HostileCheck(Path path, String name) {
    this.name = name;
    file = new InputFile(0, "north/" + path.getFileName(), path.toString(), "north");
    reports = PartnerFileReader.read(file, Read.SETTINGS, records::add);
  }

  /** Checks a file, and returns the number of rows that were read. */
  static long of(Path folder, HostileFile hostile, String name) throws IOException {
    Path path = folder.resolve(hostile.name());
    Files.write(path, hostile.bytes());
    HostileCheck check = new HostileCheck(path, name);
    check.everyRowSetAsideHasItsReason();
    check.messagesAreSentences();
    check.noValueWasChangedInSilence();
    return check.theAccountAddsUp();
  }

  private void everyRowSetAsideHasItsReason() {
    assertTrue(!reports.isEmpty(), name);
    for (SheetReport report : reports) {
      List<Integer> reasons =
          report.findings().stream()
              .filter(finding -> finding.severity() == Severity.SET_ASIDE)
              .map(finding -> finding.origin().row())
              .distinct()
              .toList();
      assertTrue(reasons.contains(0) || reasons.size() == report.counts().setAside(), name);
    }
  }

  private void messagesAreSentences() {
    for (SheetReport report : reports) {
      for (Finding finding : report.findings()) {
        assertTrue(finding.message().endsWith("."), finding.message());
        assertTrue(finding.message().chars().noneMatch(Character::isISOControl), name);
      }
    }
  }

  // Fates

  private <T extends Sourced> List<T> only(Class<T> type) {
    return records.stream().filter(type::isInstance).map(type::cast).toList();
  }

  /** After the checks across rows too; the constructor of RowCounts refuses any other sum. */
  private long theAccountAddsUp() {
    CheckSettings settings = new CheckSettings(TODAY, TODAY);
    CheckedCluster cluster = ClusterChecks.check(cluster(), settings);
    ProgramChecks.Checked program =
        ProgramChecks.check(only(Budget.class), only(Expense.class), settings);
    List<Finding> findings = new ArrayList<>(cluster.findings());
    findings.addAll(program.findings());
    List<Verdict> verdicts = new ArrayList<>(cluster.verdicts());
    verdicts.addAll(program.verdicts());
    IssueBook book =
        IssueBook.of(
            List.of(new FileName(file.path(), "north")),
            reports,
            findings,
            verdicts,
            KnownIds.NONE);
    ClusterRecords kept = cluster.kept();
    long counting =
        kept.sites().size()
            + kept.installs().size()
            + kept.materials().size()
            + kept.visits().size()
            + kept.removals().size()
            + kept.properties().size()
            + kept.areas().size()
            + kept.requests().size()
            + program.budgets().size()
            + program.expenses().size();
    long read = 0;
    long used = 0;
    for (RowAccount account : book.accounts()) {
      boolean isPrices = account.table().equals("prices");
      read += account.counts().read();
      used += isPrices ? 0 : account.counts().used() + account.counts().changed();
    }
    assertEquals(counting, used, name);
    return read;
  }

  private ClusterRecords cluster() {
    return new ClusterRecords(
        "S1",
        only(Site.class),
        only(Install.class),
        only(MaterialLine.class),
        only(Visit.class),
        only(Removal.class),
        only(Property.class),
        only(Area.class),
        only(Request.class));
  }

  // Values

  private void noValueWasChangedInSilence() throws IOException {
    Map<Integer, Map<Integer, Sourced>> bySheet = new TreeMap<>();
    Map<Integer, SortedSet<Integer>> rows = new TreeMap<>();
    for (Sourced record : records) {
      int sheet = record.origin().sheet();
      bySheet.computeIfAbsent(sheet, s -> new HashMap<>()).put(record.origin().row(), record);
      rows.computeIfAbsent(sheet, s -> new TreeSet<>()).add(record.origin().row());
    }
    if (rows.isEmpty()) {
      return;
    }
    Set<String> told = new HashSet<>();
    for (SheetReport report : reports) {
      for (Finding finding : report.findings()) {
        told.add(report.sheet() + " " + finding.origin().row() + " " + finding.field());
      }
    }
    for (SourceRow source : PartnerFileReader.cells(file, rows)) {
      compare(bySheet.get(source.sheet()).get(source.row()), source, told);
    }
  }

  private void compare(Sourced record, SourceRow source, Set<String> told) {
    Map<String, Object> values = values(record);
    for (int i = 0; i < source.fields().size(); i++) {
      String field = source.fields().get(i);
      if (!field.isEmpty() && !field.equals("partner")) {
        String cell = Blank.clean(source.cells().get(i));
        // An area without a method is an estimate, as the field's description says.
        boolean isDefault = cell.isEmpty() && values.get(field) == AreaMethod.ESTIMATE;
        boolean isTold =
            isDefault
                || told.contains(source.sheet() + " " + source.row() + " " + field)
                || told.contains(source.sheet() + " 0 " + field);
        assertTrue(
            isTold || isSame(withoutOwnUnit(cell, field), values.get(field)),
            () -> "%s: %s of row %s".formatted(name, field, source));
      }
    }
  }

  private static Map<String, Object> values(Sourced record) {
    Map<String, Object> values = new HashMap<>();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        String field = component.getName().replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
        values.put(field, component.getAccessor().invoke(record));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(e);
      }
    }
    return values;
  }

  /** The sign of the column's own unit beside a number says nothing new. */
  private static String withoutOwnUnit(String cell, String field) {
    if (field.endsWith("_usd") && cell.matches("\\$\\d+")) {
      return cell.substring(1);
    }
    return field.endsWith("_in") && cell.matches("\\d+\"")
        ? cell.substring(0, cell.length() - 1)
        : cell;
  }

  static void requireSame(String cell, Object value) {
    assertTrue(isSame(cell, value), cell);
  }

  private static boolean isSame(String cell, Object value) {
    if (value == null) {
      return cell.isEmpty();
    }
    if (value instanceof Code code) {
      return code.code().equals(cell);
    }
    if (value instanceof Boolean flag) {
      return cell.equals(flag ? "yes" : "no");
    }
    if (value instanceof Integer whole && cell.matches("\\d{4}-\\d\\d-\\d\\d")) {
      return LocalDate.parse(cell).toEpochDay() == whole;
    }
    if (value instanceof Number number) {
      return cell.matches("-?(\\d+\\.?\\d*|\\.\\d+)")
          && Double.parseDouble(cell) == number.doubleValue();
    }
    assertNotNull(value);
    return value.equals(cell);
  }
}
