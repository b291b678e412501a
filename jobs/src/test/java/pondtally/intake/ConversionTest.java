package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.record.Area;
import pondtally.record.AreaMethod;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Visit;

/** Each conversion with the exact sentence that a partner reads. */
class ConversionTest {

  @TempDir Path folder;

  private Read install(String field, String... values) throws IOException {
    StringBuilder text = new StringBuilder("device_id\tsite_id\tinstalled_on\t" + field + "\n");
    int row = 0;
    for (String value : values) {
      text.append("D%d\tS1\t2024-05-01\t%s\n".formatted(++row, value));
    }
    return Read.text(folder, "installs.tsv", text.toString());
  }

  private Read dates(String heading, String... values) throws IOException {
    StringBuilder text = new StringBuilder("device_id\tcondition\t" + heading + "\n");
    int row = 0;
    for (String value : values) {
      text.append("D%d\tworking\t%s\n".formatted(++row, value));
    }
    return Read.text(folder, "revisits.tsv", text.toString());
  }

  private static List<LocalDate> days(Read read) {
    return read.records().stream()
        .map(record -> LocalDate.ofEpochDay(((Visit) record).visitedOn()))
        .toList();
  }

  @Test
  void isoDatesAndPlainNumbersAreNoChange() throws IOException {
    Read read = install("pipe_diameter_in", "12", "15.5", "0012", "");
    assertEquals("4=4+0+0", read.counts());
    assertEquals(List.of(), read.findings());
    assertEquals((int) LocalDate.of(2024, 5, 1).toEpochDay(), read.report().newestDay());
  }

  @Test
  void theRestOfAColumnDecidesTheOrderOfADate() throws IOException {
    Read read = dates("visited_on", "03/04/2024", "13/04/2024", "05/05/2024");
    assertEquals(
        List.of(
            "2 visited_on changed date-from-text: \"03/04/2024\" is read as 2024-04-03:"
                + " day/month/year, as in this column's other date. -> 2024-04-03",
            "3 visited_on changed date-from-text: \"13/04/2024\" is read as 2024-04-13. ->"
                + " 2024-04-13",
            "4 visited_on changed date-from-text: \"05/05/2024\" is read as 2024-05-05. ->"
                + " 2024-05-05"),
        read.findings());
    assertEquals("3=0+3+0", read.counts());
    assertEquals(
        List.of(LocalDate.of(2024, 4, 3), LocalDate.of(2024, 4, 13), LocalDate.of(2024, 5, 5)),
        days(read));
  }

  @Test
  void monthMayComeFirst() throws IOException {
    assertEquals(
        List.of(LocalDate.of(2024, 3, 4), LocalDate.of(2024, 4, 13)),
        days(dates("visited_on", "3/4/2024", "4/13/2024")));
  }

  @Test
  void anUndecidedDateIsAnErrorThatNamesTheSetting() throws IOException {
    assertEquals(
        List.of(
            "2 visited_on set-aside ambiguous-date: \"03/04/2024\" is 2024-04-03 or 2024-03-04;"
                + " nothing else in this column decides. Expected YYYY-MM-DD, or the order in the"
                + " heading, as (DD/MM/YYYY), or in columns.yaml, as dates: day/month/year. Row set"
                + " aside."),
        dates("visited_on", "03/04/2024").findings());
  }

  @Test
  void aColumnOfBothOrdersDecidesNothing() throws IOException {
    Read read = dates("visited_on", "03/04/2024", "13/04/2024", "04/13/2024", "04/14/2024");
    assertEquals("4=0+3+1", read.counts());
    assertEquals(
        "2 visited_on set-aside ambiguous-date: \"03/04/2024\" is 2024-04-03 or 2024-03-04; this"
            + " column holds 1 day/month/year and 2 month/day/year. Expected YYYY-MM-DD, or the"
            + " order in the heading, as (DD/MM/YYYY), or in columns.yaml, as dates:"
            + " day/month/year. Row set aside.",
        read.findings().get(0));
  }

  @Test
  void aNumberIsExpectedInTheUnitOfTheHeading() throws IOException {
    assertEquals(
        "2 pipe_length_ft changed unknown-unit: \"2 lengths\": \"lengths\" is no unit of length."
            + " Expected a number of meters, or one followed by its unit (in, ft, yd, mi, mm, cm, m,"
            + " km). Value left out; the row counts without it.",
        Read.text(
                folder,
                "installs.csv",
                "device_id,site_id,installed_on,Pipe length (m)\nD1,S1,2024-05-01,2 lengths\n")
            .findings()
            .get(0));
  }

  @Test
  void aHeadingMayStateTheOrder() throws IOException {
    assertEquals(
        List.of(LocalDate.of(2024, 3, 4)), days(dates("Visit date (MM/DD/YYYY)", "03/04/2024")));
    assertEquals(
        "2 visited_on set-aside unreadable-date: \"13/04/2024\" is not a real date in the order"
            + " that the heading states. Expected YYYY-MM-DD, or month/day/year as the heading"
            + " says. Correct the cell. Row set aside.",
        dates("Visit date (MM/DD/YYYY)", "13/04/2024").findings().get(0));
  }

  @Test
  void impossibleDatesNameTheFormOfTheColumn() throws IOException {
    assertEquals(
        "2 visited_on set-aside unreadable-date: \"31/02/2024\" is not a real date. Expected"
            + " YYYY-MM-DD, or day/month/year as in this column's other 2 dates. Correct the cell. Row set aside.",
        dates("visited_on", "31/02/2024", "13/04/2024", "14/04/2024").findings().get(0));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2024-02-30|unreadable-date|\"2024-02-30\" is not a real date. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "5/6/24|unreadable-date|\"5/6/24\" has a year of two digits. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "3-Mar-24|unreadable-date|\"3-Mar-24\" has a year of two digits. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "March 2024|unreadable-date|\"March 2024\" names no day. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "2024|unreadable-date|\"2024\" names no day. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "spring|unreadable-date|\"spring\" is no date. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "45321|unreadable-date|\"45321\" is no date, but may be a spreadsheet's day number. Expected YYYY-MM-DD. Correct the cell. Row set aside.",
        "1949-12-31|out-of-range|\"1949-12-31\" is not possible here. Expected a day from 1950-01-01 to 2100-12-31. Row set aside.",
        "2101-01-01|out-of-range|\"2101-01-01\" is not possible here. Expected a day from 1950-01-01 to 2100-12-31. Row set aside.",
        "#VALUE!|error-cell|\"#VALUE!\" is an error of the spreadsheet, not a value. Correct its formula, or write the value. Row set aside.",
        "n/a|missing-required|\"n/a\" is read as not known. Row set aside.",
        "''|missing-required|This cell is empty, and the row cannot be used without it. Expected a day, as YYYY-MM-DD. Fill it in. Row set aside."
      })
  void datesThatAreRefused(String value, String rule, String message) throws IOException {
    String finding = dates("visited_on", value.equals("''") ? "" : value).findings().get(0);
    assertEquals(
        "2 visited_on set-aside " + rule + ": " + message, finding.replaceFirst(" -> .*", ""));
  }

  @ParameterizedTest
  @CsvSource({
    "2024-3-1",
    "2024/03/01",
    "2024.03.01",
    "20240301",
    "1 Mar 2024",
    "1-Mar-2024",
    "1st March 2024",
    "'March 1, 2024'",
    "2024-03-01T10:30",
    "2024-03-01 00:00:00",
    "2024-Mar-01",
    "Mar 1 2024 3:15 PM"
  })
  void otherFormsThatLeaveNoDoubt(String value) throws IOException {
    Read read = dates("visited_on", value);
    assertEquals(List.of(LocalDate.of(2024, 3, 1)), days(read));
    assertEquals("1=0+1+0", read.counts());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12\"|12|",
        "12 in|12|",
        "380 mm|14.960629921259843|\"380 mm\" is read as 14.9606 inches.",
        "30 cm|11.811023622047244|\"30 cm\" is read as 11.811 inches.",
        "1 ft|12|\"1 ft\" is read as 12 inches.",
        "1' 3\"|15|\"1' 3\"\" is read as 15 inches.",
      })
  void unitsOfValues(String value, double inches, String message) throws IOException {
    Read read = install("pipe_diameter_in", value);
    assertEquals(inches, read.only(Install.class).pipeDiameterIn(), 1e-12);
    List<String> expected =
        message == null
            ? List.of()
            : List.of("2 pipe_diameter_in changed unit-converted: " + message);
    assertEquals(expected, read.findings());
  }

  @Test
  void aHeadingsUnitIsToldOnce() throws IOException {
    Read read = install("Pipe dia (mm)", "300", "381", "15\"", "");
    assertEquals("4=1+3+0", read.counts());
    assertEquals(
        List.of(
            "0 pipe_diameter_in changed unit-converted: The heading says millimeters: 2 values"
                + " were converted to inches.",
            "4 pipe_diameter_in changed unit-converted: \"15\"\" is read as 15 inches."),
        read.findings());
    assertEquals(15, ((Install) read.records().get(1)).pipeDiameterIn(), 0);
    assertEquals("Pipe dia (mm)", read.report().headings().get("pipe_diameter_in"));
  }

  @Test
  void aHeadingsUnitOfAnotherKindIsRefused() throws IOException {
    assertEquals(
        List.of(
            "2 pipe_diameter_in changed unknown-unit: \"3\": the heading's \"hands\" is no unit of"
                + " length. Expected a number of inches, or one followed by its unit (in, ft, yd,"
                + " mi, mm, cm, m, km). Value left out; the row counts without it."),
        install("Pipe diameter (hands)", "3").findings());
    assertNull(install("Pipe diameter (acres)", "3").only(Install.class).pipeDiameterIn());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "60|out-of-range|\"60\" is more than 48 in, the most possible. Correct the number or its unit. Value left out; the row counts without it. -> 60 mm",
        "-3|out-of-range|\"-3\" is less than 1 in, the least possible. Correct the number. Value left out; the row counts without it.",
        "3000 mm|out-of-range|\"3000 mm\" (118.11 in) is more than 48 in, the most possible. Correct the number or its unit. Value left out; the row counts without it.",
        "wide|unreadable-number|\"wide\" is no number. Expected a number of inches, or one followed by its unit (in, ft, yd, mi, mm, cm, m, km). Value left out; the row counts without it.",
        "3 hands|unknown-unit|\"3 hands\": \"hands\" is no unit of length. Expected a number of inches, or one followed by its unit (in, ft, yd, mi, mm, cm, m, km). Value left out; the row counts without it.",
        "50%|unknown-unit|\"50%\": \"%\" is no unit of length. Expected a number of inches, or one followed by its unit (in, ft, yd, mi, mm, cm, m, km). Value left out; the row counts without it.",
        "1.2E+01|digits-lost|\"1.2E+01\" is a number that a spreadsheet rounded. Expected a number of inches, or one followed by its unit (in, ft, yd, mi, mm, cm, m, km). Value left out; the row counts without it.",
        "unknown|not-recorded|\"unknown\" is read as not known. Value left out; the row counts without it.",
        "about 12|unreadable-number|\"about 12\" is no number. Expected a number of inches, or one followed by its unit (in, ft, yd, mi, mm, cm, m, km). Value left out; the row counts without it."
      })
  void numbersThatAreRefused(String value, String rule, String message) throws IOException {
    Read read = install("pipe_diameter_in", value);
    assertEquals(List.of("2 pipe_diameter_in changed " + rule + ": " + message), read.findings());
    assertNull(read.only(Install.class).pipeDiameterIn());
    assertEquals("1=0+1+0", read.counts());
  }

  private List<Double> costs(String... values) throws IOException {
    return install("install_cost_usd", values).records().stream()
        .map(record -> ((Install) record).installCostUsd())
        .toList();
  }

  @Test
  void separatorsAreReadWhereTheColumnDecides() throws IOException {
    assertEquals(List.of(1234.0, 12.5), costs("1,234", "12.50"));
    assertEquals(List.of(1.234, 12.5), costs("1,234", "12,50"));
    assertEquals(List.of(1234.0, 12.5), costs("1.234", "12,50"));
    assertEquals(List.of(1.234, 12.5), costs("1.234", "12.50"));
    assertEquals(
        List.of(1200.5, 1234567.0, 85.0, 1234.5, 0.75),
        costs("$1,200.50", "1,234,567", "USD 85", "1 234.5", "$.75"));
    assertEquals(List.of(1234.5, 1234567.0), costs("1.234,50", "1.234.567"));
  }

  @Test
  void separatorsThatNothingDecidesAreAnError() throws IOException {
    assertEquals(
        List.of(
            "2 install_cost_usd changed ambiguous-number: \"1,234\" is 1.234 if its comma is the"
                + " decimal mark, and 1234 if it separates thousands; no other cell of the sheet"
                + " decides. Write 1,2340 or 1234, or in columns.yaml which mark the partner uses, as"
                + " decimal: point or decimal: comma. Value left out; the row counts without it."),
        install("install_cost_usd", "1,234").findings());
    assertEquals(
        List.of(
            "2 install_cost_usd changed ambiguous-number: \"$1.234\" is 1.234 if its point is the"
                + " decimal mark, and 1234 if it separates thousands; no other cell of the sheet"
                + " decides. Write 1.2340 or 1234, or in columns.yaml which mark the partner uses, as"
                + " decimal: point or decimal: comma. Value left out; the row counts without it."),
        install("install_cost_usd", "$1.234").findings());
  }

  @Test
  void bothMarksInOneColumnAreAnError() throws IOException {
    assertEquals(
        List.of(
            "3 install_cost_usd changed ambiguous-number: \"12,50\" has a decimal comma, and 1"
                + " other cell has a decimal point. Correct the cells that are wrong, or write in"
                + " columns.yaml which mark the partner uses, as decimal: point or decimal: comma."
                + " Value left out; the row counts without it.",
            "4 install_cost_usd changed ambiguous-number: \"1.234\" is 1.234 if its point is the"
                + " decimal mark, and 1234 if it separates thousands; 1 other cell has a decimal"
                + " point and 1 a decimal comma. Write 1.2340 or 1234, or in columns.yaml which mark the partner"
                + " uses, as decimal: point or decimal: comma. Value left out; the row counts"
                + " without it."),
        install("install_cost_usd", "12.50", "12,50", "1.234").findings());
  }

  /** 12,375 inches are out of the possible, and a price index is a file in our own form. */
  @Test
  void aPointThatCannotSeparateThousandsIsADecimalPoint() throws IOException {
    Read read = install("pipe_diameter_in", "12.375", "300.125 mm");
    assertEquals(12.375, ((Install) read.records().get(0)).pipeDiameterIn());
    assertEquals(300.125 / 25.4, ((Install) read.records().get(1)).pipeDiameterIn(), 1e-12);
    Read prices = Read.text(folder, "prices.csv", "year,index\n2023,304.702\n2024,313.689\n");
    assertEquals(List.of(), prices.findings());
    assertEquals("2=2+0+0", prices.counts());
  }

  @Test
  void theSheetsOtherColumnsDecideWhereTheColumnIsSilent() throws IOException {
    Read read =
        Read.text(
            folder,
            "materials.csv",
            "device_id;item;quantity;total_cost_usd\nD1;pipe;1;1,234\nD2;pipe;2,5;7\n");
    assertEquals(1.234, ((MaterialLine) read.records().get(0)).totalCostUsd(), 0);
  }

  @Test
  void otherCurrenciesAreRefused() throws IOException {
    assertEquals(
        "2 install_cost_usd changed unknown-unit: \"€50\": \"€\" is no unit of money. Expected a"
            + " number of dollars. Value left out; the row"
            + " counts without it.",
        install("install_cost_usd", "€50").findings().get(0));
  }

  @Test
  void anAreaWithoutMethodIsAnEstimate() throws IOException {
    Read read = Read.text(folder, "areas.csv", "pond_id,measured_on,acres\nP1,2024-01-01,3\n");
    assertEquals(AreaMethod.ESTIMATE, read.only(Area.class).method());
    assertNull(read.only(Area.class).siteId());
  }

  @Test
  void anEndBeforeItsBeginningIsLeftOut() throws IOException {
    Read read = install("retired_on", "2023-01-01");
    assertNull(read.only(Install.class).retiredOn());
    assertEquals(
        List.of(
            "2 retired_on changed dates-reversed: \"2023-01-01\" is before \"installed_on\""
                + " (2024-05-01). Correct whichever is wrong. Value left out; the row counts without it."),
        read.findings());
  }

  @Test
  void aPartnerColumnOverridesTheFolder() throws IOException {
    Read read = install("partner", "South group", "");
    assertEquals("South group", read.records().get(0).partner());
    assertEquals("north", read.records().get(1).partner());
  }

  @Test
  void daysAfterTheRunDoNotMakeTheNewest() throws IOException {
    Read read = dates("visited_on", "2025-06-01", "2026-01-01");
    assertEquals("2=2+0+0", read.counts());
    assertEquals((int) LocalDate.of(2025, 6, 1).toEpochDay(), read.report().newestDay());
  }

  @Test
  void valuesAreShownShortAndHarmless() {
    assertEquals("\"a\\tb\\u0000c\\u202e\"", Shown.value("a\tb\u0000c\u202e"));
    assertEquals("\"" + "x".repeat(60) + "…\"", Shown.value("x".repeat(61)));
  }
}
