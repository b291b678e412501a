package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Columns of dates by writers of every habit, alone and mixed, as text and as date cells in both
 * date systems. Each date is known before it is written, and so is whether the column leaves one
 * reading only: none may be read wrong, none that can be read refused, none in doubt guessed.
 */
class MixedDatesTest {

  private static final int SHEETS = 50;

  @TempDir Path folder;

  /** Who wrote the cells of a column. */
  private enum Writers {
    DAY_FIRST,
    MONTH_FIRST,
    /** Both, where dates of either kind show it. */
    TWO,
    PLAIN
  }

  private static DateTimeFormatter form(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.US);
  }

  private static final List<DateTimeFormatter> PLAIN =
      List.of(
          form("uuuu-MM-dd"),
          form("uuuu/M/d"),
          form("d MMM uuuu"),
          form("MMMM d, uuuu"),
          form("uuuuMMdd"),
          form("uuuu-MM-dd'T'HH:mm"));
  private static final List<DateTimeFormatter> DAY_FIRST =
      List.of(form("dd/MM/uuuu"), form("d.M.uuuu"), form("d-M-uuuu"));
  private static final List<DateTimeFormatter> MONTH_FIRST =
      List.of(form("MM/dd/uuuu"), form("M/d/uuuu"), form("M-d-uuuu"));

  private static LocalDate anyDate(SplittableRandom random) {
    return LocalDate.ofEpochDay(random.nextInt(-3650, 20_000));
  }

  private static LocalDate proof(SplittableRandom random) {
    return anyDate(random).withDayOfMonth(13 + random.nextInt(16));
  }

  private record Draft(LocalDate date, Writers writer, DateTimeFormatter form) {

    boolean isProof() {
      return writer != Writers.PLAIN && date.getDayOfMonth() > 12;
    }

    boolean isOpen() {
      return writer != Writers.PLAIN
          && date.getDayOfMonth() <= 12
          && date.getDayOfMonth() != date.getMonthValue();
    }
  }

  private static Draft draft(SplittableRandom random, Writers writer, LocalDate date) {
    boolean isPlain = writer == Writers.PLAIN || random.nextInt(5) == 0;
    List<DateTimeFormatter> forms =
        isPlain ? PLAIN : writer == Writers.DAY_FIRST ? DAY_FIRST : MONTH_FIRST;
    DateTimeFormatter form = forms.get(random.nextInt(forms.size()));
    return new Draft(date, isPlain ? Writers.PLAIN : writer, form);
  }

  static List<MixedColumns.Written> column(SplittableRandom random, boolean hasDateCells) {
    Writers writers = Writers.values()[random.nextInt(Writers.values().length)];
    List<Draft> drafts = new ArrayList<>();
    if (writers == Writers.TWO) {
      drafts.add(new Draft(proof(random), Writers.DAY_FIRST, DAY_FIRST.get(random.nextInt(3))));
      drafts.add(new Draft(proof(random), Writers.MONTH_FIRST, MONTH_FIRST.get(random.nextInt(3))));
    }
    for (int cells = 1 + random.nextInt(12); cells > 0; cells--) {
      Writers writer =
          writers == Writers.TWO
              ? (random.nextBoolean() ? Writers.DAY_FIRST : Writers.MONTH_FIRST)
              : writers;
      // Early days of the month are what it is about.
      LocalDate date = anyDate(random);
      drafts.add(
          draft(
              random,
              writer,
              random.nextInt(3) > 0 ? date.withDayOfMonth(1 + random.nextInt(12)) : date));
    }
    boolean isProven = drafts.stream().anyMatch(Draft::isProof) && writers != Writers.TWO;
    List<MixedColumns.Written> column = new ArrayList<>();
    for (Draft draft : drafts) {
      int day = (int) draft.date().toEpochDay();
      boolean isStored = hasDateCells && draft.writer() == Writers.PLAIN && random.nextBoolean();
      column.add(
          isStored
              ? new MixedColumns.Written(null, draft.date(), day, true)
              : new MixedColumns.Written(
                  draft.form().format(draft.date().atTime(9, 30)),
                  null,
                  day,
                  isProven || !draft.isOpen()));
    }
    return column;
  }

  private MixedColumns.Outcome read(int columns) throws IOException {
    MixedColumns reader =
        new MixedColumns(folder, "visited_on", visit -> visit.visitedOn(), "ambiguous-date");
    MixedColumns.Outcome outcome = new MixedColumns.Outcome(0, 0);
    for (int seed = 0; seed < columns / 2; seed++) {
      List<MixedColumns.Written> column = column(new SplittableRandom(seed), false);
      outcome = outcome.plus(reader.inText(column, "seed " + seed));
    }
    for (int book = 0; book < columns / 2 / SHEETS; book++) {
      SplittableRandom random = new SplittableRandom(-1 - book);
      List<List<MixedColumns.Written>> sheets = new ArrayList<>();
      for (int i = 0; i < SHEETS; i++) {
        sheets.add(column(random, true));
      }
      outcome = outcome.plus(reader.inWorkbook(sheets, book % 2 == 1, "book " + book));
    }
    return outcome;
  }

  @Test
  void noneIsReadWrongAndNoneInDoubtIsGuessed() throws IOException {
    MixedColumns.Outcome outcome = read(600);
    assertTrue(outcome.read() > 2500 && outcome.refused() > 300, outcome.toString());
  }

  @Test
  @Tag("benchmark")
  void tenThousandColumns() throws IOException {
    MixedColumns.Outcome outcome = read(10_000);
    System.out.println("10,000 columns of dates: " + outcome);
    assertTrue(outcome.read() > 40_000 && outcome.refused() > 5000, outcome.toString());
  }
}
