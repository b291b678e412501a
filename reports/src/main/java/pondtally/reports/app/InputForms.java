package pondtally.reports.app;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import pondtally.reports.form.FormField;
import pondtally.reports.form.FormKind;
import pondtally.reports.form.FormNeed;
import pondtally.reports.form.FormTable;
import pondtally.schema.FieldSchema;
import pondtally.schema.TableSchema;
import pondtally.schema.Unit;

/** The input tables as forms see them, from their descriptors. */
final class InputForms {

  /** The folder says it already. */
  private static final String PARTNER = "partner";

  /** Kept by the coordinator, not by partners. */
  private static final String PRICES = "prices";

  private InputForms() {}

  /** Every table that partners fill in, in the order in which they are explained. */
  static List<FormTable> all() {
    return TableSchema.all().stream()
        .filter(table -> !table.name().equals(PRICES))
        .map(InputForms::table)
        .toList();
  }

  private static FormTable table(TableSchema table) {
    List<FormField> fields =
        table.fields().stream()
            .filter(field -> !field.name().equals(PARTNER))
            .map(field -> field(table, field))
            .toList();
    return new FormTable(table.name(), capital(table.name()), table.description(), fields);
  }

  private static FormField field(TableSchema table, FieldSchema field) {
    boolean isOneOf = table.anyOf().stream().anyMatch(group -> group.contains(field.name()));
    FormNeed optional = isOneOf ? FormNeed.ONE_OF : FormNeed.OPTIONAL;
    return new FormField(
        field.name(),
        heading(field),
        kind(field),
        field.required() ? FormNeed.NEEDED : optional,
        field.unit() == null ? "" : field.unit().plural(),
        description(table, field),
        field.codes(),
        field.minimum(),
        field.maximum());
  }

  /** The description with fields called by their headings. */
  private static String description(TableSchema table, FieldSchema field) {
    String text = field.description();
    for (FieldSchema other : table.fields()) {
      if (other.name().indexOf('_') > 0) {
        text = text.replace(other.name(), "\"" + heading(other) + "\"");
      }
    }
    return text;
  }

  private static FormKind kind(FieldSchema field) {
    return switch (field.type()) {
      case STRING -> field.codes().isEmpty() ? FormKind.TEXT : FormKind.CODE;
      case NUMBER -> FormKind.NUMBER;
      case INTEGER -> FormKind.WHOLE;
      case YEAR -> FormKind.YEAR;
      case DATE -> FormKind.DATE;
      case BOOLEAN -> FormKind.YES_NO;
    };
  }

  /** {@code pipe_diameter_in} becomes {@code Pipe diameter (in)}. */
  static String heading(FieldSchema field) {
    String name = field.name();
    int last = name.lastIndexOf('_');
    boolean endsInUnit =
        last > 0
            && field.unit() != null
            && Set.of(Unit.INCH, Unit.FOOT, Unit.DOLLAR).contains(field.unit())
            && Unit.find(name.substring(last + 1)).filter(field.unit()::equals).isPresent();
    if (endsInUnit) {
      return words(name.substring(0, last)) + " (" + field.unit().symbol() + ")";
    }
    return words(name);
  }

  private static String words(String name) {
    return capital(name.replace('_', ' '));
  }

  private static String capital(String text) {
    return text.equals("usd")
        ? "USD"
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
