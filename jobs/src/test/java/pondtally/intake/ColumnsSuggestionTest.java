package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.RowCounts;

class ColumnsSuggestionTest {

  @TempDir Path program;

  @BeforeEach
  void files() throws IOException {
    Files.createDirectories(program.resolve("north"));
    Files.writeString(
        program.resolve("north/revisits.csv"),
        """
        device_id,Visited,How is it,Beavers seen,Phone "home"
        D1,03/04/2024,working,yes,555 0100
        D2,05/04/2024,failed,lots,555 0101
        """);
    Files.writeString(
        program.resolve("north/visits.csv"),
        """
        device,date,condition
        D1,03/04/2024,OK
        D2,05/04/2024,wroking
        """);
    Files.writeString(program.resolve("north/list.csv"), "a,b\n1,2\n");
    Files.createDirectories(program.resolve("south"));
    Files.writeString(program.resolve("south/sites.csv"), "site_id,watershed\nS1,17010101\n");
  }

  private String suggested() {
    return ColumnsSuggestion.byFolder(ProgramFolder.files(program), Read.SETTINGS).get("north");
  }

  @Test
  void whatIsSureStandsAndWhatIsNotIsMarked() {
    assertEquals(
        """
        # Suggested for north from its files. Lines that begin with #? are guesses to decide:
        # correct them and take the three signs "#? " away. The others are read so already.
        # Then ask again: codes and units are seen once the columns are known.
        #? dates: day/month/year  # or month/day/year: 2 cells, as "03/04/2024"
        tables:
          - files: "visits.csv"
            table: revisits
            columns:
              "device": device_id
              "date": visited_on
              "condition": condition
        #?     codes:
        #?       condition:  # one of working, reduced, failed, retired
        #?         "ok": ~
        #?         "wroking": working
        #?   - files: "list.csv"
        #?     table: skip  # or the table that it holds
        #?     columns:  # headings of row 1: write our field for each
        #?       "a": ignore  # holds "1"
        #?       "b": ignore  # holds "2"
        #?   - files: "revisits.csv"
        #?     table: revisits
        #?     columns:
        #?       "device_id": device_id  # holds "D1", "D2"
        #?       "Visited": visited_on  # holds "03/04/2024", "05/04/2024"
        #?       "How is it": condition  # holds "working", "failed"
        #?       "Beavers seen": beaver_present  # holds "yes", "lots"
        #?       "Phone \\"home\\"": ignore  # holds "555 0100", "555 0101"
        """,
        suggested());
  }

  @Test
  void headingsThatNobodyKnowsAreGuessedFromWordsAndCells() throws IOException {
    Files.createDirectories(program.resolve("east"));
    Files.writeString(
        program.resolve("east/pipes 2024.csv"),
        """
        East crew;;;;;
        Tag No.;Where;Went in;Dia;Len (m);Boss
        A1;North pond;13/05/2024;300;12;Al
        A2;South pond;02/06/2024;250;9;Bo
        """);
    Files.writeString(
        program.resolve("east/places.csv"), "HUC,N,Nearest road\n01020304,45.1,Route 9\n");
    assertEquals(
        """
        # Suggested for east from its files. Lines that begin with #? are guesses to decide:
        # correct them and take the three signs "#? " away. The others are read so already.
        # Then ask again: codes and units are seen once the columns are known.
        #? tables:
        #?   - files: "pipes 2024.csv"
        #?     table: installs
        #?     columns:
        #?       "Tag No.": device_id  # holds "A1", "A2"
        #?       "Where": site_id  # holds "North pond", "South pond"
        #?       "Went in": installed_on  # holds "13/05/2024", "02/06/2024"
        #?       "Dia": pipe_diameter_in  # holds "300", "250"
        #?       "Len (m)": pipe_length_ft  # holds "12", "9"
        #?       "Boss": ignore  # holds "Al", "Bo"
        #?     units:
        #?       pipe_diameter_in: mm  # as inches the numbers are above 48, the most possible
        #?   - files: "places.csv"
        #?     table: sites  # needs a column for site_id as well
        #?     columns:
        #?       "HUC": watershed  # holds "01020304"
        #?       "N": ignore  # holds "45.1"
        #?       "Nearest road": road_id  # holds "Route 9"
        """,
        ColumnsSuggestion.byFolder(ProgramFolder.files(program), Read.SETTINGS).get("east"));
  }

  @Test
  void aSheetThatHasLittleOfATableIsNoTable() throws IOException {
    Files.createDirectories(program.resolve("east"));
    Files.writeString(
        program.resolve("east/fuel.csv"), "Month,Card,Gallons\nJanuary,A,41.5\nMarch,B,38.0\n");
    assertEquals(
        """
        #? tables:
        #?   - files: "fuel.csv"
        #?     table: skip  # or the table that it holds
        #?     columns:  # headings of row 1: write our field for each
        #?       "Month": ignore  # holds "January", "March"
        #?       "Card": ignore  # holds "A", "B"
        #?       "Gallons": ignore  # holds "41.5", "38.0"
        """
            .lines()
            .toList(),
        ColumnsSuggestion.byFolder(ProgramFolder.files(program), Read.SETTINGS)
            .get("east")
            .lines()
            .skip(3)
            .toList());
  }

  @Test
  void aUnitThatNumbersMustBeInIsSuggestedForHeadingsThatAreKnown() throws IOException {
    Files.createDirectories(program.resolve("west"));
    Files.writeString(
        program.resolve("west/installs.csv"),
        "device_id,site_id,installed_on,pipe diameter\nD1,S1,2024-05-01,300\nD2,S1,2024-05-01,380\n");
    String suggested =
        ColumnsSuggestion.byFolder(ProgramFolder.files(program), Read.SETTINGS).get("west");
    assertEquals(
        List.of(
            "#?     units:",
            "#?       pipe_diameter_in: mm  # as inches the numbers are above 48, the most possible"),
        suggested.lines().filter(line -> line.startsWith("#? ")).toList());
    Files.writeString(program.resolve("west/columns.yaml"), suggested.replace("#? ", ""));
    assertEquals(List.of(0L), counts("west").stream().map(RowCounts::setAside).toList());
    assertEquals(List.of(2L), counts("west").stream().map(RowCounts::changed).toList());
  }

  @Test
  void whatIsStatedAlreadyStaysWordForWord() throws IOException {
    Path file = program.resolve("north/columns.yaml");
    String stated =
        """
        dates: day/month/year
        tables:
          - files: visits.csv
            table: revisits
            codes: {condition: {ok: working}}   # asked in May
        """;
    Files.writeString(file, stated);
    List<RowCounts> before = counts();
    String suggested = ColumnsSuggestion.of(program, Read.SETTINGS).get("north");
    assertEquals(
        stated
            + """
        # Still open in these files, beside what stands above.
        # Each line is a comment. Write what you decide into the entry above that is about the
        # same file and sheet (of two entries only the first counts), or add the entry there.
        #? tables:
        #?   - files: "visits.csv"
        """,
        suggested.lines().limit(10).map(line -> line + "\n").collect(Collectors.joining()));
    Files.writeString(file, suggested);
    assertEquals(suggested, ColumnsSuggestion.of(program, Read.SETTINGS).get("north"));
    assertEquals(before, counts());
  }

  @Test
  void aPartnerWithoutOpenQuestionsIsTold() {
    assertEquals(
        List.of("# There is nothing to decide: every table, column and code is known."),
        ColumnsSuggestion.byFolder(ProgramFolder.files(program), Read.SETTINGS)
            .get("south")
            .lines()
            .skip(2)
            .toList());
  }

  private List<RowCounts> counts() {
    return counts("");
  }

  private List<RowCounts> counts(String partner) {
    return ProgramFolder.files(program).stream()
        .filter(file -> file.path().startsWith(partner))
        .flatMap(file -> PartnerFileReader.read(file, Read.SETTINGS, row -> {}).stream())
        .map(report -> report.counts())
        .toList();
  }

  @Test
  void asItStandsItChangesNothing() throws IOException {
    List<RowCounts> before = counts();
    Files.writeString(program.resolve("north/columns.yaml"), suggested());
    assertEquals(before, counts());
  }

  @Test
  void withTheMarksTakenAwayItIsValid() throws IOException {
    String decided = suggested().replace("#? ", "").replace("\"ok\": ~", "\"ok\": working");
    Files.writeString(program.resolve("north/columns.yaml"), decided);
    assertEquals(List.of(0L, 0L, 0L, 0L), counts().stream().map(RowCounts::setAside).toList());
  }
}
