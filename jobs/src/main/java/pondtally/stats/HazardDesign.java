package pondtally.stats;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Which covariates a hazard model has and how they become numbers: a factor is one 0/1 column for
 * each level but the reference, a number is one column.
 */
public final class HazardDesign implements Serializable {
  private static final long serialVersionUID = 1L;

  /**
   * One column of the model.
   *
   * @param term name of the covariate
   * @param level the level the column stands for; empty for a number
   * @param reference the level it is compared with; empty for a number
   */
  public record Column(String term, String level, String reference) implements Serializable {
    /** Term and level as one text, for messages. */
    public String label() {
      return level.isEmpty() ? term : term + " " + level;
    }
  }

  private record Term(String name, List<String> levels) implements Serializable {}

  private final ArrayList<Term> terms;
  private final ArrayList<Column> columns = new ArrayList<>();

  private HazardDesign(List<Term> terms) {
    this.terms = new ArrayList<>(terms);
    for (Term term : terms) {
      if (term.levels.isEmpty()) {
        columns.add(new Column(term.name, "", ""));
      }
      for (String level :
          term.levels.subList(Math.min(1, term.levels.size()), term.levels.size())) {
        columns.add(new Column(term.name, level, term.levels.get(0)));
      }
    }
  }

  /** A design without covariates; add them with {@link #withFactor} and {@link #withNumber}. */
  public static HazardDesign empty() {
    return new HazardDesign(new ArrayList<>());
  }

  /** This design and a factor; the first level is the reference. */
  public HazardDesign withFactor(String term, String reference, List<String> otherLevels) {
    ArrayList<String> levels = new ArrayList<>(otherLevels.size() + 1);
    levels.add(reference);
    otherLevels.stream().filter(level -> !level.equals(reference)).forEach(levels::add);
    return with(new Term(term, levels));
  }

  /** This design and a covariate that is a number, such as a diameter in inches. */
  public HazardDesign withNumber(String term) {
    return with(new Term(term, new ArrayList<>()));
  }

  private HazardDesign with(Term term) {
    ArrayList<Term> more = new ArrayList<>(terms);
    more.add(term);
    return new HazardDesign(more);
  }

  /** The columns in order. */
  public List<Column> columns() {
    return Collections.unmodifiableList(columns);
  }

  /**
   * One device's covariates as a row of the model.
   *
   * @param values one for each term in order: a level (String) for a factor, a {@link Number} for a
   *     number
   * @throws IllegalArgumentException for a wrong number of values, a level the factor lacks, or a
   *     value that is no number
   */
  public double[] encode(Object... values) {
    if (values.length != terms.size()) {
      throw new IllegalArgumentException(
          "expected " + terms.size() + " covariates, got " + values.length);
    }
    double[] x = new double[columns.size()];
    int at = 0;
    for (int t = 0; t < values.length; t++) {
      Term term = terms.get(t);
      if (term.levels.isEmpty()) {
        x[at++] = number(term, values[t]);
      } else {
        int level = term.levels.indexOf(values[t]);
        if (level < 0) {
          throw new IllegalArgumentException(
              term.name + ": " + values[t] + " is none of " + term.levels);
        }
        if (level > 0) {
          x[at + level - 1] = 1;
        }
        at += term.levels.size() - 1;
      }
    }
    return x;
  }

  private static double number(Term term, Object value) {
    if (value instanceof Number number && Double.isFinite(number.doubleValue())) {
      return number.doubleValue();
    }
    throw new IllegalArgumentException(term.name + ": " + value + " is not a finite number");
  }
}
