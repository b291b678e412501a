package pondtally.reports.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xwpf.extractor.XWPFWordExtractor;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.FigureLookup;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.Field;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Cautions;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Grant;
import pondtally.reports.view.Method;
import pondtally.reports.view.Section;
import pondtally.reports.view.Sentence;
import pondtally.reports.view.Setting;
import pondtally.reports.view.Summary;
import pondtally.reports.workbook.ProgramWorkbook;

/**
 * Walks document and workbook: each number printed is one that a figure names with its cell, which
 * is looked up; or stands as it is in a cell or fact; or belongs to a method, a caution, or the
 * fixed wording listed here.
 */
class EveryNumberTest {

  /** 95% limits, shares of 100, ages at which survival is told, a regulation, page numbers. */
  private static final List<String> WORDING =
      List.of("0", "1", "3", "5", "10", "95", "99.8", "100", "2", "200.306", "0.05");

  @TempDir private static Path folder;
  private static TablePackage tables;

  @BeforeAll
  static void tables() throws IOException {
    tables = TablesFixture.open(folder.resolve("tables"), 40);
  }

  private static List<Sentence> sentences() {
    List<Sentence> all = new ArrayList<>();
    Summary.of(tables).stream().map(Section::sentences).forEach(all::addAll);
    Grant.of(tables)
        .forEach(
            section -> {
              all.addAll(section.sentences());
              section.tables().forEach(t -> t.rows().forEach(all::addAll));
            });
    return all;
  }

  private static Set<String> numbers(String text) {
    Set<String> numbers = new TreeSet<>();
    Matcher matcher = FigureLookup.NUMBER.matcher(text);
    while (matcher.find()) {
      numbers.add(plain(matcher.group()));
    }
    return numbers;
  }

  /** Without thousands' commas, a comma of the sentence and the sign, which may be a dash. */
  private static String plain(String number) {
    return number.replace("\u2212", "").replace("-", "").replace(",", "");
  }

  /** Numbers that stand as they are in a cell, a fact, a label of a setting or a heading. */
  private static Set<String> known() {
    Set<String> known = new HashSet<>(WORDING);
    tables.facts().values().forEach(fact -> known.addAll(numbers(fact)));
    for (Table table : tables.tables()) {
      known.addAll(numbers(table.title()));
      for (Field field : table.fields()) {
        known.addAll(numbers(field.name() + " " + field.description()));
        table.rows().forEach(row -> known.addAll(numbers(row.text(field.name()))));
      }
    }
    Cautions.all().forEach(text -> known.addAll(numbers(text)));
    Method.all(tables).forEach(m -> known.addAll(numbers(m.text() + " " + m.source())));
    Setting.all(tables).forEach(s -> known.addAll(numbers(s.value() + " " + s.meaning())));
    known.add(Long.toString(2 * Long.parseLong(tables.fact("revisit_every_days"))));
    return known;
  }

  @Test
  void figuresAreWhatTheirCellsSayAndNoNumberStandsOutsideOne() {
    Set<String> known = known();
    int figures = 0;
    for (Sentence sentence : sentences()) {
      String rest = sentence.text();
      for (Figure figure : sentence.figures()) {
        FigureLookup.assertPrinted(tables, figure);
        rest = rest.replace(figure.printed(), " ");
        figures++;
      }
      for (String number : numbers(rest)) {
        assertTrue(known.contains(number), number + " in: " + sentence.text());
      }
    }
    assertTrue(figures > 100, figures + " figures");
  }

  /** The walk is shown finding a number that nothing in the tables says. */
  @Test
  void aPlantedNumberIsFound() {
    Set<String> planted =
        new TreeSet<>(numbers("The records hold 987,654 devices, 40 of them new."));
    planted.removeAll(known());
    assertTrue(planted.contains("987654"), planted.toString());
  }

  @Test
  void everyNumberOfTheDocument() throws IOException {
    Path file = folder.resolve("grant.docx");
    GrantDocument.write(tables, folder, List.of(), file);
    Set<String> known = known();
    sentences().forEach(sentence -> known.addAll(numbers(sentence.text())));
    try (XWPFDocument document = new XWPFDocument(Files.newInputStream(file));
        XWPFWordExtractor words = new XWPFWordExtractor(document)) {
      int tablesNumbered = document.getTables().size();
      for (int i = 1; i <= tablesNumbered; i++) {
        known.add(Integer.toString(i));
      }
      Set<String> printed = numbers(words.getText());
      printed.removeAll(known);
      assertEquals(Set.of(), printed);
    }
  }

  /** Formulas have the recalculation gate; this looks at every other number of every sheet. */
  @Test
  void everyConstantOfTheWorkbook() throws IOException {
    Path file = folder.resolve("program.xlsx");
    ProgramWorkbook.write(tables, file);
    Set<Double> cells = new HashSet<>(Set.of(0.0, 1.0));
    for (Table table : tables.tables()) {
      for (Field field : table.fields()) {
        table.rows().stream()
            .map(row -> row.text(field.name()))
            .filter(text -> text.matches("-?\\d.*"))
            .flatMap(EveryNumberTest::value)
            .forEach(cells::add);
      }
    }
    Setting.all(tables).forEach(s -> value(s.value()).forEach(cells::add));
    int constants = 0;
    try (XSSFWorkbook book = new XSSFWorkbook(file.toFile())) {
      for (Sheet sheet : book) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.NUMERIC && !DateUtil.isCellDateFormatted(cell)) {
              constants++;
              assertTrue(
                  cells.contains(cell.getNumericCellValue()),
                  sheet.getSheetName() + " " + cell.getAddress() + " " + cell);
            }
          }
        }
      }
    } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException e) {
      throw new IOException(e);
    }
    assertTrue(constants > 500, constants + " constants");
  }

  private static Stream<Double> value(String text) {
    try {
      return Stream.of(Double.valueOf(text));
    } catch (NumberFormatException e) {
      return Stream.empty();
    }
  }
}
