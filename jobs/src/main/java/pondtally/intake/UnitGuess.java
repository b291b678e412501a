package pondtally.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import pondtally.schema.FieldSchema;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/**
 * The unit that the bare numbers of a column must be in, where they are out of the possible in the
 * field's own. Good enough for a suggestion that somebody decides, never for reading.
 */
final class UnitGuess {

  private UnitGuess() {}

  /** Empty where the heading says the unit, or the numbers can be in the field's own. */
  static Optional<Unit> of(ColumnSample column, FieldSchema field, TableSchema table) {
    HeadingMatch heading = table.matchAs(column.heading(), field);
    if (field.unit() == null || field.maximum() == null || heading.unit() != null) {
      return Optional.empty();
    }
    double[] numbers = numbers(column);
    long out = DoubleStream.of(numbers).filter(number -> number > field.maximum()).count();
    return out * 2 > numbers.length
        ? units(field.unit()).stream().filter(unit -> areFit(numbers, unit, field)).findFirst()
        : Optional.empty();
  }

  private static double[] numbers(ColumnSample column) {
    return column.cells().stream()
        .mapToDouble(PlainNumber::parse)
        .filter(number -> !Double.isNaN(number))
        .toArray();
  }

  private static List<Unit> units(Unit own) {
    return Arrays.stream(Unit.values())
        .filter(unit -> unit != own && unit.dimension() == own.dimension())
        .toList();
  }

  private static boolean areFit(double[] numbers, Unit unit, FieldSchema field) {
    return DoubleStream.of(numbers)
        .map(number -> unit.convert(number, field.unit()))
        .allMatch(
            number ->
                number <= field.maximum()
                    && (field.minimum() == null || number >= field.minimum()));
  }
}
