package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pondtally.check.UserError;

/** What a coordinator reads who has made a slip in a {@code columns.yaml}. */
class ColumnsFileTest {

  @TempDir Path program;

  private String error(String yaml) throws IOException {
    Files.createDirectories(program.resolve("north/old"));
    Files.writeString(program.resolve("north/installs.csv"), "device_id,site_id,installed_on\n");
    Files.writeString(program.resolve("north/columns.yaml"), yaml);
    UserError error = assertThrows(UserError.class, () -> ProgramFolder.files(program));
    assertEquals(3, error.exitCode());
    return error.getMessage();
  }

  private static String installs(String lines) {
    return "tables:\n  - files: installs.csv\n    table: installs\n" + lines.indent(4);
  }

  static Stream<Arguments> slips() {
    return Stream.of(
        Arguments.of(
            "partners: North\n",
            "line 1: `partners` is no key here. Did you mean `partner`? Expected one of: partner,"
                + " dates, decimal, delimiter, encoding, tables."),
        Arguments.of(
            "partner: North\n\ndates: dd/mm/yyyy\n",
            "line 3: `dd/mm/yyyy` is no order of dates here. Expected one of: day/month/year,"
                + " month/day/year."),
        Arguments.of(
            "dates: day/month/year\ndates: month/day/year\n",
            "line 2: `dates` stands in line 1 already."),
        Arguments.of(
            "tables:\n  - files: '*.csv'\n    tabel: installs\n",
            "line 3: `tabel` is no key here. Did you mean `table`? Expected one of: files, sheets,"
                + " table, header_row, stop_at, columns, values, units, codes, dates, decimal,"
                + " delimiter, encoding."),
        Arguments.of(
            "tables:\n  - files: '*.csv'\n",
            "line 2: this entry has no `table`. Expected for example `table: installs`."),
        Arguments.of(
            "tables:\n  - table: installs\n",
            "line 2: this entry says of no file or sheet. Expected for example `files: \"*.csv\"`."),
        Arguments.of(
            "tables:\n  - files: instals.csv\n    table: installs\n",
            "line 2: no file here is called `instals.csv`. Expected a file name, in which * may"
                + " stand for any text; the folder holds installs.csv."),
        Arguments.of(
            installs("columns:\n  Tag: devise_id\n").replace("installs\n", "instals\n"),
            "line 3: `instals` is no table here. Did you mean `installs`? Expected one of: sites,"
                + " installs, materials, revisits, removals, properties, areas, prices, budgets,"
                + " expenses, requests, skip."),
        Arguments.of(
            installs("values:\n  device_kind: pond-leveller\n"),
            "line 5: device_kind: \"pond-leveller\" is no known code. Expected one of: pond-leveler,"
                + " culvert-fence, fence-and-pipe. Did you mean `pond-leveler`?"),
        Arguments.of(
            installs("units:\n  pipe_diameter_in: acres\n"),
            "line 5: `acres` is no unit that pipe_diameter_in can have. Expected one of: in, ft, yd,"
                + " mi, mm, cm, m, km."),
        Arguments.of(installs("units: {crew: m}\n"), "line 4: `crew` is a field without a unit."),
        Arguments.of(
            installs("codes:\n  pipe_wall:\n    twin: duel\n"),
            "line 6: `duel` is no code of pipe_wall here. Did you mean `dual`? Expected one of:"
                + " single, dual, smooth, none."),
        Arguments.of(
            installs("header_row: first\n"),
            "line 4: `header_row` is `first`. Expected the row number of the headings, from 1, or"
                + " `none`."),
        Arguments.of(
            installs("header_row: none\ncolumns: {Tag: device_id}\n"),
            "line 5: there is no row of headings, so `Tag` cannot be found. Expected a place, as"
                + " `column A`."),
        Arguments.of(
            "decimal: ','\n",
            "line 1: `,` is no decimal mark here. Expected one of: point, comma."),
        Arguments.of(
            "delimiter: space\n",
            "line 1: `delimiter` must be one of: comma, semicolon, tab, pipe."),
        Arguments.of(
            "encoding: ansi\n",
            "line 1: `ansi` is no encoding that is known. Expected one such as utf-8, utf-16,"
                + " windows-1252, iso-8859-1 or ibm437."),
        Arguments.of("- a\n- b\n", "line 1: `key: value` lines are expected here."));
  }

  @ParameterizedTest
  @MethodSource("slips")
  void aSlipIsNamedWithItsLine(String yaml, String message) throws IOException {
    assertEquals("north/columns.yaml, " + message, error(yaml));
  }

  @Test
  void aFieldIsNamedByTheNearest() throws IOException {
    String message = error(installs("columns:\n  Tag: devise_id\n"));
    assertEquals(
        "north/columns.yaml, line 5: `devise_id` is no field of the table installs here. Did you"
            + " mean `device_id`? Expected one of: device_id, site_id, installed_on,",
        message.substring(0, message.indexOf(" device_kind")));
  }

  @Test
  void brokenYamlIsNamedWithItsLine() throws IOException {
    String message = error("partner: [North\ndates: x\n");
    assertEquals(
        "north/columns.yaml, line 2: this is not valid YAML",
        message.substring(0, message.indexOf(" (")));
  }

  @Test
  void itLiesInThePartnersFolder() throws IOException {
    Files.createDirectories(program.resolve("north/old"));
    Files.writeString(program.resolve("north/old/columns.yaml"), "dates: day/month/year\n");
    assertEquals(
        "north/old/columns.yaml lies too deep. Expected it in the partner's folder, north, with the"
            + " sub-folder in its patterns, as files: \"2024/*.csv\".",
        assertThrows(UserError.class, () -> ProgramFolder.files(program)).getMessage());
  }

  @Test
  void anEmptyOneSaysNothing() throws IOException {
    Files.createDirectories(program.resolve("north"));
    Files.writeString(program.resolve("north/installs.csv"), "device_id\n");
    Files.writeString(program.resolve("north/columns.yaml"), "# nothing yet\n");
    assertEquals("north", ProgramFolder.files(program).get(0).partner());
  }
}
