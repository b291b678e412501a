package pondtally.reports.workbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Line;

/**
 * Puts planned sheets into one file. Heads, tables and charts are made first, because the library
 * can make them in memory only; lines follow in a stream, so that memory does not grow with them.
 */
final class Book {

  /** Lines of one sheet; a table with more goes on in a further sheet. */
  static final int LINES_A_SHEET = 1_000_000;

  private static final int ROWS_IN_MEMORY = 100;

  private final BookProperties properties;
  private final int linesASheet;
  private final List<Object> plans = new ArrayList<>();
  private final Map<String, Place> places = new LinkedHashMap<>();
  private final Map<String, List<Place>> parts = new HashMap<>();
  private final List<NamedCell> names = new ArrayList<>();

  /**
   * A cell that formulas call by name.
   *
   * @param line number of its line, counted from 0
   */
  record NamedCell(String name, String sheet, String column, int line) {}

  Book(BookProperties properties, int linesASheet) {
    this.properties = properties;
    this.linesASheet = linesASheet;
  }

  /** Puts a sheet before all others. */
  void addFirst(ProseSheet sheet) {
    plans.add(0, sheet);
  }

  /** Adds what {@code sheet} makes, when the run made the table it is about. */
  void when(TablePackage tables, String table, BiConsumer<Book, TablePackage> sheet) {
    if (tables.table(table).isPresent()) {
      sheet.accept(this, tables);
    }
  }

  /** The table sheets, in their order. */
  Collection<Place> places() {
    return places.values();
  }

  /** Names of the sheets so far, in their order. */
  List<String> sheetNames() {
    return plans.stream().map(Book::name).toList();
  }

  /** Adds a table sheet, and further sheets where it is too long for one. */
  void add(TableSheet sheet) {
    List<Line> lines = sheet.lines();
    int number = Math.max(1, (lines.size() + linesASheet - 1) / linesASheet);
    for (int i = 0; i < number; i++) {
      TableSheet part = number == 1 ? sheet : part(sheet, i, number);
      Place place = new Place(part);
      plans.add(place);
      places.put(part.name(), place);
      parts.computeIfAbsent(sheet.name(), name -> new ArrayList<>()).add(place);
    }
  }

  void add(ModelSheet model) {
    plans.add(model);
  }

  void add(NamedCell name) {
    names.add(name);
  }

  private TableSheet part(TableSheet sheet, int part, int number) {
    List<Line> lines = sheet.lines();
    int from = part * linesASheet;
    List<Line> own = lines.subList(from, Math.min(lines.size(), from + linesASheet));
    List<String> notes = new ArrayList<>();
    notes.add(
        Messages.of(
            "workbook.Book.sheet-of-the-table-is-too",
            Map.of(
                "part",
                String.valueOf(part + 1),
                "number",
                String.valueOf(number),
                "name",
                sheet.name())));
    notes.addAll(sheet.notes());
    String name = part == 0 ? sheet.name() : sheet.name() + " " + (part + 1);
    return sheet.part(name, notes, own, part == 0);
  }

  /** Writes the file; the same plans give the same bytes. */
  void write(Path file) throws IOException {
    try (XSSFWorkbook book = new XSSFWorkbook()) {
      Styles styles = new Styles(book);
      // Sheets and names first: formulas may speak of any of them.
      plans.forEach(plan -> book.createSheet(name(plan)));
      names.forEach(name -> define(book, name));
      heads(book, styles);
      charts(book);
      properties.set(book);
      try (SXSSFWorkbook stream = new SXSSFWorkbook(book, ROWS_IN_MEMORY)) {
        for (Place place : places.values()) {
          new TableLines(place, styles, refs(place)).write(stream.getSheet(place.sheet().name()));
        }
        StableZip.write(stream, file);
      }
    }
  }

  private void heads(XSSFWorkbook book, Styles styles) {
    for (Object plan : plans) {
      if (plan instanceof ProseSheet prose) {
        XSSFSheet sheet = book.getSheet(prose.name());
        new ProseWriter(styles).write(sheet, prose);
        properties.page(sheet, false, false);
      } else if (plan instanceof ModelSheet model) {
        XSSFSheet sheet = book.getSheet(ModelSheet.NAME);
        new ModelWriter(sheet, styles, model).write();
        properties.page(sheet, true, true);
      } else if (plan instanceof Place place) {
        XSSFSheet sheet = book.getSheet(place.sheet().name());
        new TableHead(sheet, place, styles, refs(place)).write();
        boolean onePage = !place.sheet().charts().isEmpty() && ChartAnchors.standUnder(place);
        int pages = place.sheet().pages();
        int wide = pages == 0 ? PagesWide.set(sheet, place, ChartAnchors.ranges(place)) : 1;
        properties.page(sheet, pages == 0, wide, pages == 0 && onePage ? 1 : pages);
        if (pages == 0) {
          sheet.getPrintSetup().setPaperSize(PagesWide.paper(place));
        }
      }
    }
  }

  private static String name(Object plan) {
    if (plan instanceof ModelSheet) {
      return ModelSheet.NAME;
    }
    return plan instanceof ProseSheet prose ? prose.name() : ((Place) plan).sheet().name();
  }

  private void charts(XSSFWorkbook book) {
    ChartWriter writer = new ChartWriter(places::get);
    for (Place place : places.values()) {
      ChartAnchors anchors = new ChartAnchors(place);
      for (ChartPlan plan : place.sheet().charts()) {
        String name = place.sheet().name();
        if (isOnOneSheet(plan, name)) {
          writer.draw(book.getSheet(name), name, plan, anchors.next());
        }
      }
    }
  }

  /** A chart cannot draw a range that goes on in a further sheet. */
  private boolean isOnOneSheet(ChartPlan plan, String own) {
    return plan.series().stream()
        .allMatch(
            series -> {
              Place place = places.get(series.sheet().isEmpty() ? own : series.sheet());
              return series.from() + series.count() <= place.sheet().lines().size();
            });
  }

  private void define(XSSFWorkbook book, NamedCell named) {
    Place place = places.get(named.sheet());
    Name name = book.createName();
    name.setNameName(named.name());
    String range = place.farRange(named.column(), named.line(), 1);
    name.setRefersToFormula(range.substring(0, range.indexOf(':')));
  }

  private RefsAt refs(Place place) {
    return new RefsAt(
        place,
        (sheet, column) ->
            parts.getOrDefault(sheet, List.of()).stream()
                .map(p -> p.farRange(column, 0, p.sheet().lines().size()))
                .toList());
  }
}
