package pondtally.reports.workbook;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pondtally.reports.view.Line;

/**
 * A figure that stays live in the workbook: the formula as spreadsheet programs of 2007 and later
 * understand it, and our own computation of the same figure, which is stored beside it.
 */
interface Formula {

  /** What stands where a figure is not known. */
  String NOT_KNOWN = "–";

  /** The formula, without the equals sign. */
  String text(Refs refs);

  /** The figure; empty where it is not known. */
  OptionalDouble value(Line line);

  /** {@code scale × top ÷ bottom}. */
  static Formula ratio(String top, String bottom, int scale) {
    String times = scale == 1 ? "" : "*" + scale;
    return of(
        refs -> orUnknown(refs.cell(top) + "/" + refs.cell(bottom) + times),
        line -> {
          OptionalDouble t = line.number(top);
          OptionalDouble b = line.number(bottom);
          return t.isEmpty() || b.isEmpty() || b.getAsDouble() == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(t.getAsDouble() / b.getAsDouble() * scale);
        });
  }

  /** {@code left − right}. */
  static Formula difference(String left, String right) {
    return of(
        refs -> orUnknown(refs.cell(left) + "-" + refs.cell(right)),
        line -> {
          OptionalDouble l = line.number(left);
          OptionalDouble r = line.number(right);
          return l.isEmpty() || r.isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(l.getAsDouble() - r.getAsDouble());
        });
  }

  /** The sum of the columns, those not known left out. */
  static Formula sum(String... columns) {
    return of(
        refs -> Stream.of(columns).map(refs::cell).collect(Collectors.joining(",", "SUM(", ")")),
        line -> {
          List<OptionalDouble> known =
              Stream.of(columns).map(line::number).filter(OptionalDouble::isPresent).toList();
          return OptionalDouble.of(known.stream().mapToDouble(OptionalDouble::getAsDouble).sum());
        });
  }

  /** One column over the sum of several, unknown where that is 0. */
  static Formula share(String part, String... of) {
    return of(
        refs -> orUnknown(refs.cell(part) + "/" + sum(of).text(refs)),
        line -> {
          double all = sum(of).value(line).orElse(0);
          OptionalDouble own = line.number(part);
          return own.isEmpty() || all == 0
              ? OptionalDouble.empty()
              : OptionalDouble.of(own.getAsDouble() / all);
        });
  }

  /** The first two columns multiplied and, where both are known, the other two, added up. */
  static Formula productSum(String a, String b, String c, String d) {
    return of(
        refs ->
            orUnknown(
                "%s*%s+SUM(%s)*SUM(%s)"
                    .formatted(refs.cell(a), refs.cell(b), refs.cell(c), refs.cell(d))),
        line ->
            line.number(a).isEmpty() || line.number(b).isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                    line.number(a).getAsDouble() * line.number(b).getAsDouble()
                        + line.number(c).orElse(0) * line.number(d).orElse(0)));
  }

  /**
   * The product of columns and named cells.
   *
   * @param named for example {@code *Revisit_every_days/Days_per_year}
   * @param factor what the named cells come to
   */
  static Formula product(List<String> columns, String named, OptionalDouble factor) {
    return of(
        refs ->
            orUnknown(columns.stream().map(refs::cell).collect(Collectors.joining("*")) + named),
        line -> {
          double product = 1;
          for (String column : columns) {
            OptionalDouble cell = line.number(column);
            if (cell.isEmpty() || factor.isEmpty()) {
              return OptionalDouble.empty();
            }
            product *= cell.getAsDouble();
          }
          return OptionalDouble.of(product * factor.orElseThrow());
        });
  }

  /** A formula from its two halves. */
  static Formula of(
      java.util.function.Function<Refs, String> text,
      java.util.function.Function<Line, OptionalDouble> value) {
    return new Formula() {
      @Override
      public String text(Refs refs) {
        return text.apply(refs);
      }

      @Override
      public OptionalDouble value(Line line) {
        return value.apply(line);
      }
    };
  }

  /** {@code formula}, or the sign for "not known" where it has no value. */
  static String orUnknown(String formula) {
    return "IFERROR(" + formula + ",\"" + NOT_KNOWN + "\")";
  }
}
