package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Columns of numbers with a decimal point, a decimal comma and both, with separators of thousands
 * or without. Each number is known before it is written, and so is what it says about the mark. A
 * single point before three digits is taken as the project's own notation where nothing in the
 * column speaks for a comma; a single comma before three digits never is. Where both marks are in
 * use, what has a comma is refused.
 */
class MixedNumbersTest {

  private static final int SHEETS = 50;

  @TempDir Path folder;

  private enum Says {
    NOTHING,
    POINT,
    COMMA,
    COMMA_OR_THOUSANDS,
    POINT_OR_THOUSANDS
  }

  private record Draft(String text, BigDecimal meant, Says says) {}

  /** Digits in groups of three from the right. */
  private static String grouped(String digits, String separator) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < digits.length(); i++) {
      out.append(i > 0 && (digits.length() - i) % 3 == 0 ? separator : "").append(digits.charAt(i));
    }
    return out.toString();
  }

  private static Draft draft(SplittableRandom random, boolean hasComma) {
    int digits = 1 + random.nextInt(8);
    String whole = String.valueOf(1 + random.nextInt((int) Math.pow(10, digits) - 1));
    int decimals = random.nextInt(3) == 0 ? 0 : random.nextInt(3) == 0 ? 3 : 1 + random.nextInt(4);
    StringBuilder fraction = new StringBuilder();
    for (int i = 0; i < decimals; i++) {
      fraction.append(random.nextInt(10));
    }
    String mark = hasComma ? "," : ".";
    String other = hasComma ? "." : ",";
    String separator = random.nextInt(2) == 0 ? "" : pick(random, other, other, " ", "\u00a0", "'");
    String text = grouped(whole, separator) + (decimals == 0 ? "" : mark + fraction);
    BigDecimal meant = new BigDecimal(decimals == 0 ? whole : whole + "." + fraction);
    return new Draft(text, meant, says(whole, decimals, separator, other, hasComma));
  }

  private static String pick(SplittableRandom random, String... from) {
    return from[random.nextInt(from.length)];
  }

  /** From how it was made, not from how it looks. */
  private static Says says(
      String whole, int decimals, String separator, String other, boolean hasComma) {
    int groups = separator.isEmpty() ? 0 : (whole.length() - 1) / 3;
    boolean showsOther = groups > 0 && separator.equals(other);
    if (decimals == 0) {
      if (!showsOther) {
        return Says.NOTHING;
      }
      boolean isProof = groups > 1;
      return hasComma
          ? (isProof ? Says.COMMA : Says.POINT_OR_THOUSANDS)
          : (isProof ? Says.POINT : Says.COMMA_OR_THOUSANDS);
    }
    boolean isOpen = decimals == 3 && groups == 0 && whole.length() <= 3;
    return hasComma
        ? (isOpen ? Says.COMMA_OR_THOUSANDS : Says.COMMA)
        : (isOpen ? Says.POINT_OR_THOUSANDS : Says.POINT);
  }

  private static List<MixedColumns.Written> column(SplittableRandom random, boolean hasStored) {
    int writers = random.nextInt(3);
    List<Draft> drafts = new ArrayList<>();
    for (int cells = 1 + random.nextInt(12); cells > 0; cells--) {
      drafts.add(draft(random, writers == 2 ? random.nextBoolean() : writers == 1));
    }
    boolean hasPoint = drafts.stream().anyMatch(draft -> draft.says() == Says.POINT);
    boolean hasComma = drafts.stream().anyMatch(draft -> draft.says() == Says.COMMA);
    // Two writers who leave no trace of one of them cannot be told from one who writes as the other
    // cells do.
    drafts.removeIf(draft -> isTraceless(draft, writers, hasPoint, hasComma));
    List<MixedColumns.Written> column = new ArrayList<>();
    for (Draft draft : drafts) {
      double meant = draft.meant().doubleValue();
      boolean isStored = hasStored && draft.says() == Says.NOTHING && random.nextBoolean();
      column.add(
          new MixedColumns.Written(
              isStored ? null : draft.text(),
              isStored ? (Object) meant : null,
              meant,
              isDecidable(draft.says(), hasPoint, hasComma)));
    }
    return column;
  }

  private static boolean isTraceless(Draft draft, int writers, boolean hasPoint, boolean hasComma) {
    boolean isOpen =
        draft.says() == Says.POINT_OR_THOUSANDS || draft.says() == Says.COMMA_OR_THOUSANDS;
    return isOpen && writers == 2 && hasPoint != hasComma;
  }

  private static boolean isDecidable(Says says, boolean hasPoint, boolean hasComma) {
    return switch (says) {
      case NOTHING, POINT -> true;
      case COMMA -> !hasPoint;
      case COMMA_OR_THOUSANDS, POINT_OR_THOUSANDS -> hasPoint != hasComma;
    };
  }

  private MixedColumns.Outcome read(int columns) throws IOException {
    MixedColumns reader =
        new MixedColumns(folder, "cost_usd", visit -> visit.costUsd(), "ambiguous-number");
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
      outcome = outcome.plus(reader.inWorkbook(sheets, false, "book " + book));
    }
    return outcome;
  }

  @Test
  void noneIsReadWrongAndNoneInDoubtIsGuessed() throws IOException {
    MixedColumns.Outcome outcome = read(600);
    assertTrue(outcome.read() > 2000 && outcome.refused() > 200, outcome.toString());
  }

  @Test
  @Tag("benchmark")
  void tenThousandColumns() throws IOException {
    MixedColumns.Outcome outcome = read(10_000);
    System.out.println("10,000 columns of numbers: " + outcome);
    assertTrue(outcome.read() > 30_000 && outcome.refused() > 3000, outcome.toString());
  }
}
