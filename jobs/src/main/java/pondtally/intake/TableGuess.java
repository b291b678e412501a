package pondtally.intake;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pondtally.schema.TableSchema;

/**
 * What a sheet that no table is recognised in may hold.
 *
 * @param row row number of what look like its headings
 * @param headings those headings
 * @param rows what stands below them
 * @param columns what its columns may be; null: no table is likely
 */
record TableGuess(int row, List<String> headings, List<SourceRow> rows, ColumnGuesses columns) {

  private static final double LEAST = 5;
  private static final double NAMED = 4;
  private static final int FEWEST_LIKELY = 2;

  /**
   * @param named the table that the name says; empty: any
   * @param sample the first rows of the sheet
   * @return empty where there are no headings with something below them
   */
  static Optional<TableGuess> of(String name, Optional<TableSchema> named, List<SourceRow> sample) {
    int at = headingsAt(sample);
    if (at < 0) {
      return Optional.empty();
    }
    List<String> headings = sample.get(at).cells().stream().map(Blank::clean).toList();
    List<SourceRow> below = sample.subList(at + 1, sample.size());
    List<ColumnSample> columns = ColumnSample.of(headings, below);
    List<ColumnGuesses> guesses = new ArrayList<>();
    for (TableSchema table : named.map(List::of).orElseGet(TableSchema::all)) {
      guesses.add(ColumnGuesses.of(table, columns, Collections.nCopies(columns.size(), "")));
    }
    ColumnGuesses best =
        guesses.stream()
            .max(Comparator.comparingDouble(guess -> worth(guess, name)))
            .filter(guess -> named.isPresent() || isLikely(guess, name))
            .orElse(null);
    return Optional.of(new TableGuess(sample.get(at).row(), headings, below, best));
  }

  private static boolean isLikely(ColumnGuesses guess, String name) {
    return guess.likely() >= FEWEST_LIKELY && worth(guess, name) >= LEAST;
  }

  private static double worth(ColumnGuesses guess, String name) {
    String words = name.toLowerCase(Locale.ROOT);
    boolean isNamed =
        words.contains(guess.table().name())
            || guess.table().synonyms().stream().anyMatch(words::contains);
    return guess.score() + (isNamed ? NAMED : 0);
  }

  /** The first row of words that is as wide as the widest, or nearly; -1: none. */
  private static int headingsAt(List<SourceRow> sample) {
    int widest = sample.stream().mapToInt(TableGuess::filled).max().orElse(0);
    for (int i = 0; i < sample.size() - 1; i++) {
      int filled = filled(sample.get(i));
      boolean isWords =
          sample.get(i).cells().stream()
              .map(Blank::clean)
              .allMatch(cell -> cell.isEmpty() || Character.isLetter(cell.codePointAt(0)));
      if (isWords && filled >= 2 && filled * 10 >= widest * 6) {
        return i;
      }
    }
    return -1;
  }

  private static int filled(SourceRow row) {
    return (int) row.cells().stream().filter(cell -> !Blank.clean(cell).isEmpty()).count();
  }
}
