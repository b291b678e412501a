package pondtally.reports.document;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.Editions;
import pondtally.reports.fixture.EveryNumber;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.page.ReportPage;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Sentence;
import pondtally.reports.view.Summary;
import pondtally.reports.workbook.EveryCell;
import pondtally.reports.workbook.ProgramWorkbook;

/** Each number of summary and document is looked up in the cell that its figure names. */
class EveryNumberTest {

  @TempDir private static Path folder;
  private static TablePackage tables;

  @BeforeAll
  static void tables() throws IOException {
    tables = TablesFixture.open(folder.resolve("tables"), 40);
  }

  @Test
  void everyNumberOfTheSentencesIsInItsCell() {
    int figures = EveryNumber.of(tables).sections(Summary.of(tables));
    assertTrue(figures > 60, figures + " figures");
  }

  @Test
  void everyNumberOfTheDocumentIsInItsCell() throws IOException {
    Path file = folder.resolve("grant.docx");
    GrantDocument.write(tables, folder, List.of(), file);
    int figures = EveryNumber.of(tables).grant();
    assertTrue(figures > 150, figures + " figures");
    EveryNumber.of(tables).document(file);
  }

  /** A small whole number that other cells hold is found where its own cell holds another. */
  @Test
  void aWrongSmallNumberIsFound() {
    Sentence right =
        Summary.of(tables).stream()
            .flatMap(section -> section.sentences().stream())
            .filter(sentence -> sentence.figures().stream().anyMatch(EveryNumberTest::isSmall))
            .findFirst()
            .orElseThrow();
    EveryNumber.of(tables).sentence(right);
    Figure figure = right.figures().stream().filter(EveryNumberTest::isSmall).findFirst().get();
    String wrong = Integer.toString(Integer.parseInt(figure.printed().replaceAll("\\D", "")) + 1);
    String printed = figure.printed().replaceAll("\\d+", wrong);
    Figure planted =
        new Figure(figure.table(), figure.key(), figure.how(), figure.columns(), printed);
    Sentence sentence =
        new Sentence(right.text().replace(figure.printed(), printed), List.of(planted));
    assertThrows(AssertionError.class, () -> EveryNumber.of(tables).sentence(sentence));
  }

  private static boolean isSmall(Figure figure) {
    return figure.printed().matches("\\d{1,2}(\u00a0[a-z -]+)?")
        && figure.how() == Figure.How.CELL
        && figure.columns().size() == 1;
  }

  /** A number without a figure is found, though cells of other columns hold it. */
  @Test
  void aNumberWithoutACellIsFound() {
    Sentence planted = Sentence.of("The records hold 40 devices.").build();
    assertThrows(AssertionError.class, () -> EveryNumber.of(tables).sentence(planted));
    assertTrue(tables.table("devices").orElseThrow().rows().size() == 40);
  }

  /** The same for one funder, one watershed, and dollars of another year. */
  @Test
  void everyNumberOfAScopedReport() throws IOException {
    for (Map<String, String> facts :
        List.of(
            Map.of("scope_funder", "River Levy"),
            Map.of("scope_watershed", "99010101"),
            Map.of("base_year", "2022", "failure", "failed-or-reduced", "groups_below", "12"))) {
      String name = String.join("-", facts.values());
      TablePackage scoped = TablesFixture.open(folder.resolve(name), 40, facts);
      assertTrue(EveryNumber.of(scoped).sections(Summary.of(scoped)) > 50);
      assertTrue(EveryNumber.of(scoped).grant() > 100);
    }
  }

  /** The same for the public edition, its page and its workbook. */
  @Test
  void everyNumberOfThePublicEdition() throws Exception {
    TablePackage open = Editions.open(folder.resolve("editions"), 60);
    EveryNumber numbers = EveryNumber.of(open);
    assertTrue(numbers.sections(Summary.of(open)) > 20);
    assertTrue(numbers.grant() > 50);
    Path file = folder.resolve("public.html");
    ReportPage.write(open, folder, List.of(), file);
    assertTrue(numbers.page(file) > 500);
    Path book = folder.resolve("public.xlsx");
    ProgramWorkbook.write(open, book);
    assertTrue(EveryCell.ofProgram(open, book) > 500);
  }
}
