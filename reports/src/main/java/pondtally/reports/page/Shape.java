package pondtally.reports.page;

import java.util.Locale;
import java.util.function.DoubleFunction;
import pondtally.reports.table.Field;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;

/** How the numbers of a column are printed. */
enum Shape {
  /** A number that is a name, as a year. */
  LABEL(value -> Long.toString((long) value)),
  COUNT(value -> NumberText.decimal(value, 0)),
  DOLLARS(NumberText::dollars),
  ONE(value -> NumberText.decimal(value, 1)),
  TWO(value -> NumberText.decimal(value, 2)),
  PERCENT(NumberText::percent),
  RATIO(NumberText::ratio),
  PROBABILITY(Shape::probability);

  private final DoubleFunction<String> form;

  Shape(DoubleFunction<String> form) {
    this.form = form;
  }

  String print(double value) {
    return form.apply(value);
  }

  /** What suits a column, by its type, unit and description. */
  static Shape of(Field field) {
    if (field.type().equals("integer")) {
      return isLabel(field.name()) ? LABEL : COUNT;
    }
    return switch (field.unit()) {
      case "usd" -> DOLLARS;
      case "days", "hours", "device-years", "property-years", "failures" -> ONE;
      case "" -> ofPureNumber(field);
      default -> TWO;
    };
  }

  private static boolean isLabel(String name) {
    return name.equals("year") || name.equals("base_year") || name.equals("row");
  }

  private static Shape ofPureNumber(Field field) {
    if (field.name().startsWith("p_") || field.name().endsWith("_p")) {
      return PROBABILITY;
    }
    String description = field.description().toLowerCase(Locale.ROOT);
    boolean share =
        field.name().startsWith("survival")
            || field.name().equals("discount_rate")
            || description.contains("share")
            || description.startsWith("chance");
    return share ? PERCENT : TWO;
  }

  /** The p of a test, never printed as nothing. */
  private static String probability(double p) {
    return p < 0.0005 ? Messages.of("page.Shape.below-0-001") : NumberText.decimal(p, 3);
  }
}
