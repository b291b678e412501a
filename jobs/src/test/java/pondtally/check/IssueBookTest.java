package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import pondtally.record.Origin;

class IssueBookTest {

  private static final List<FileName> FILES =
      List.of(
          new FileName("north/installs.xlsx", "north"), new FileName("south/visits.csv", "south"));

  private static Origin at(int file, int sheet, int row, boolean changed) {
    return new Origin(file, sheet, row, changed);
  }

  private static SheetReport sheet(
      int file, int sheet, String name, String table, RowCounts counts, Finding... findings) {
    Map<String, String> headings = Map.of("device_id", "Device", "visited_on", "Date of visit");
    return new SheetReport(file, sheet, name, table, headings, counts, null, List.of(findings));
  }

  private static Finding finding(
      Origin origin, String field, Severity severity, CheckRule rule, String message) {
    return new Finding(origin, "revisits", field, null, "v", severity, rule.code(), message, "");
  }

  private static List<Verdict> verdict(RowFate fate, Origin... origins) {
    return Arrays.stream(origins).map(o -> new Verdict(o, "revisits", fate)).toList();
  }

  private static RowCounts countsAfter(RowCounts before, List<Verdict> verdicts) {
    SheetReport report = sheet(1, 0, "", "revisits", before);
    return IssueBook.of(FILES, List.of(report), List.of(), verdicts, KnownIds.NONE)
        .accounts()
        .get(0)
        .counts();
  }

  @Test
  void aRowThatIsSetAsideDoesNotCountWithoutAValue() {
    String leftOut = "No number." + LeftOutValue.ENDING;
    SheetReport report =
        sheet(
            1,
            0,
            "",
            "revisits",
            new RowCounts(3, 1, 1, 1, 0),
            finding(
                at(1, 0, 5, true), "hours", Severity.CHANGED, CheckRule.DATE_AFTER_CUT, leftOut),
            finding(
                at(1, 0, 6, true), "hours", Severity.CHANGED, CheckRule.DATE_AFTER_CUT, leftOut));
    Finding unknown =
        finding(
            at(1, 0, 5, false), "device_id", Severity.SET_ASIDE, CheckRule.UNKNOWN_DEVICE, "Gone.");
    assertEquals(
        List.of("Gone.", "No number. Value left out.", leftOut),
        IssueBook.of(FILES, List.of(report), List.of(unknown), List.of(), KnownIds.NONE)
            .issues()
            .stream()
            .map(DataIssue::message)
            .toList());
  }

  @Test
  void aRowLeavesTheCountItCameWith() {
    List<Verdict> verdicts =
        new ArrayList<>(verdict(RowFate.SET_ASIDE, at(1, 0, 5, false), at(1, 0, 6, true)));
    verdicts.addAll(verdict(RowFate.DUPLICATE, at(1, 0, 7, true)));
    verdicts.addAll(verdict(RowFate.CHANGED, at(1, 0, 8, false), at(1, 0, 9, true)));
    assertEquals(
        new RowCounts(20, 8, 7, 4, 1), countsAfter(new RowCounts(20, 10, 8, 2, 0), verdicts));
  }

  @Test
  void severalVerdictsMoveARowOnce() {
    List<Verdict> verdicts = new ArrayList<>(verdict(RowFate.CHANGED, at(1, 0, 5, false)));
    verdicts.addAll(verdict(RowFate.SET_ASIDE, at(1, 0, 5, false), at(1, 0, 5, false)));
    verdicts.addAll(verdict(RowFate.DUPLICATE, at(1, 0, 5, false)));
    assertEquals(
        new RowCounts(20, 19, 0, 1, 0), countsAfter(new RowCounts(20, 20, 0, 0, 0), verdicts));
  }

  @Test
  void moreVerdictsThanRowsIsAFault() {
    List<Verdict> verdicts = verdict(RowFate.SET_ASIDE, at(1, 0, 5, false), at(1, 0, 6, false));
    assertThrows(
        IllegalStateException.class, () -> countsAfter(new RowCounts(1, 1, 0, 0, 0), verdicts));
  }

  @Test
  void verdictOnASheetThatWasNotReadIsAFault() {
    List<Verdict> verdicts = verdict(RowFate.SET_ASIDE, at(0, 3, 5, false));
    assertThrows(
        IllegalStateException.class, () -> countsAfter(new RowCounts(1, 1, 0, 0, 0), verdicts));
  }

  @Test
  void issuesStandInFileOrderWithThePartnersHeadings() {
    Finding read =
        new Finding(
            at(0, 1, 0, false),
            null,
            null,
            "Colour",
            "",
            Severity.NOTICE,
            "unknown-column",
            "Not a field; shown as {row:1/0/3} was written.",
            "");
    IssueBook book =
        IssueBook.of(
            FILES,
            List.of(
                sheet(1, 0, "", "revisits", new RowCounts(20, 20, 0, 0, 0)),
                sheet(0, 1, "2024", "installs", new RowCounts(20, 20, 0, 0, 0), read)),
            List.of(
                finding(
                    at(1, 0, 9, false),
                    "visited_on",
                    Severity.NOTICE,
                    CheckRule.SAME_DAY_VISITS,
                    "b"),
                finding(
                    at(1, 0, 9, false),
                    "device_id",
                    Severity.NOTICE,
                    CheckRule.SAME_DAY_VISITS,
                    "a"),
                finding(
                    at(1, 0, 5, false), "hours", Severity.NOTICE, CheckRule.SAME_DAY_VISITS, "c"),
                finding(at(0, 1, 8, false), null, Severity.NOTICE, CheckRule.DUPLICATE_ROW, "d")),
            List.of(),
            KnownIds.NONE);
    assertEquals(
        List.of(
            "north|north/installs.xlsx|2024|null|Colour|Not a field; shown as {row:1/0/3} was"
                + " written.",
            "north|north/installs.xlsx|2024|8||d",
            "south|south/visits.csv||5|hours|c",
            "south|south/visits.csv||9|Date of visit|b",
            "south|south/visits.csv||9|Device|a"),
        book.issues().stream()
            .map(
                i ->
                    String.join(
                        "|",
                        i.partner(),
                        i.file(),
                        i.sheet(),
                        String.valueOf(i.row()),
                        i.column(),
                        i.message()))
            .toList());
    assertEquals(
        List.of("north/installs.xlsx 2024", "south/visits.csv "),
        book.accounts().stream().map(a -> a.file() + " " + a.sheet()).toList());
  }

  private static String written(Origin seenFrom, String message) {
    return IssueBook.of(
            FILES,
            List.of(
                sheet(0, 1, "2024", "installs", new RowCounts(9, 9, 0, 0, 0)),
                sheet(1, 0, "", "revisits", new RowCounts(9, 9, 0, 0, 0))),
            List.of(finding(seenFrom, null, Severity.NOTICE, CheckRule.DUPLICATE_ROW, message)),
            List.of(),
            KnownIds.NONE)
        .issues()
        .get(0)
        .message();
  }

  @Test
  void rowsAreNamedByFileSheetAndRow() {
    assertEquals(
        "as in north/installs.xlsx, sheet 2024, row 57.",
        written(at(1, 0, 4, false), "as in {row:0/1/57}."));
    assertEquals(
        "as in south/visits.csv, row 12.", written(at(0, 1, 4, false), "as in {row:1/0/12}."));
    assertEquals("as in row 57 of this sheet.", written(at(0, 1, 4, false), "as in {row:0/1/57}."));
    assertEquals("as in row 3 of this file.", written(at(1, 0, 4, false), "as in {row:1/0/3}."));
  }

  @Test
  void aValueThatLooksLikeAPlaceIsShownAsItStands() {
    String hostile = "{row:0/1/57} {{row:9/9/9} $1 \\";
    assertEquals(
        "The id \"" + hostile + "\" is unknown.",
        written(at(1, 0, 4, false), "The id " + Words.quote(hostile) + " is unknown."));
  }

  @Test
  void unknownIdsGetTheNearestKnownOne() {
    Finding device =
        new Finding(
            at(1, 0, 4, false),
            "revisits",
            "device_id",
            null,
            "NW-O12",
            Severity.SET_ASIDE,
            CheckRule.UNKNOWN_DEVICE.code(),
            "m",
            "");
    DataIssue issue =
        IssueBook.of(
                FILES,
                List.of(sheet(1, 0, "", "revisits", new RowCounts(20, 20, 0, 0, 0))),
                List.of(device),
                List.of(),
                new KnownIds(List.of("NW-O123"), List.of(), List.of("NW-012", "SE-1")))
            .issues()
            .get(0);
    assertEquals("NW-O12", issue.value());
    assertEquals("NW-012", issue.suggestion());
  }

  @Test
  void aFindingAboutAWholeRowHasNoColumnAndNoValue() {
    Finding row =
        new Finding(
            at(1, 0, 4, false),
            "revisits",
            null,
            null,
            null,
            Severity.NOTICE,
            CheckRule.DUPLICATE_ROW.code(),
            "m",
            "");
    DataIssue issue =
        IssueBook.of(
                FILES,
                List.of(sheet(1, 0, "", "revisits", new RowCounts(20, 20, 0, 0, 0))),
                List.of(row),
                List.of(),
                KnownIds.NONE)
            .issues()
            .get(0);
    assertEquals("", issue.column() + issue.value() + issue.suggestion());
  }

  @Test
  void manyRowsSetAsideIsNoticed() {
    Finding first =
        finding(at(1, 0, 5, false), "device_id", Severity.SET_ASIDE, CheckRule.UNKNOWN_DEVICE, "a");
    Finding second =
        finding(at(1, 0, 6, false), "device_id", Severity.SET_ASIDE, CheckRule.UNKNOWN_DEVICE, "b");
    Finding third =
        finding(
            at(1, 0, 7, false),
            "visited_on",
            Severity.SET_ASIDE,
            CheckRule.VISIT_BEFORE_INSTALL,
            "c");
    IssueBook book =
        IssueBook.of(
            FILES,
            List.of(sheet(1, 0, "", "revisits", new RowCounts(20, 20, 0, 0, 0))),
            List.of(first, second, third),
            verdict(RowFate.SET_ASIDE, at(1, 0, 5, false), at(1, 0, 6, false), at(1, 0, 7, false)),
            KnownIds.NONE);
    assertEquals(
        new DataIssue(
            "south",
            "south/visits.csv",
            "",
            null,
            "revisits",
            "",
            "3 of 20",
            Severity.NOTICE,
            "many-rows-set-aside",
            "3 of the 20 rows here (15 %) were set aside, 2 for unknown-device, 1 for"
                + " visit-before-install. One cause may stand behind many of them: begin with the"
                + " first reason.",
            ""),
        book.issues().get(0));
    assertEquals(4, book.issues().size());
  }

  @Test
  void aTenthSetAsideIsNotNoticed() {
    IssueBook book =
        IssueBook.of(
            FILES,
            List.of(sheet(1, 0, "", "revisits", new RowCounts(20, 18, 0, 2, 0))),
            List.of(),
            List.of(),
            KnownIds.NONE);
    assertEquals(List.of(), book.issues());
  }
}
