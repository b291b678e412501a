package pondtally.intake;

import java.util.Locale;
import java.util.Map;
import java.util.Set;
import pondtally.schema.FieldSchema;
import pondtally.schema.FieldType;
import pondtally.schema.HeadingMatch;
import pondtally.schema.TableSchema;
import pondtally.schema.TextKind;
import pondtally.schema.Unit;

/** Chooses the converter of each column of a sheet. */
final class Converters {

  /** What people write in brackets behind a heading beside a unit. */
  private static final Set<String> REMARKS =
      Set.of(
          "total",
          "each",
          "approx",
          "approx.",
          "approximate",
          "est",
          "est.",
          "estimated",
          "actual",
          "optional",
          "required",
          "if known",
          "if any",
          "per unit",
          "per year",
          "per visit",
          "inside",
          "id",
          "i.d.",
          "all workers",
          "paid",
          "unpaid",
          "nominal",
          "wgs84",
          "wgs 84",
          "decimal",
          "decimal degrees",
          "n",
          "w",
          "north",
          "east");

  private final RecordFactory factory;
  private final SheetClues clues;
  private final SheetMap map;
  private final RowJudge judge;
  private final boolean isOurs;

  Converters(TableSchema table, SheetClues clues, SheetMap map, RowJudge judge) {
    this.isOurs = table.name().equals("prices");
    this.factory = RecordFactory.of(table.name());
    this.clues = clues;
    this.map = map;
    this.judge = judge;
  }

  CellConverter of(int column, HeadingMatch match) {
    FieldSchema field = match.field();
    if (hasClues(field.type())) {
      clues.watch(column, field.type());
    }
    CellConverter usual = usual(column, match);
    Map<String, String> meanings = map.codes().get(field.name());
    CellConverter mapped =
        meanings == null ? usual : new MappedCodes(field, meanings, usual, judge);
    Map<String, String> sameAs = map.aliases().get(field.name());
    return sameAs == null ? mapped : new MergedIds(field, sameAs, mapped, judge);
  }

  private CellConverter usual(int column, HeadingMatch match) {
    FieldSchema field = match.field();
    return switch (field.type()) {
      case STRING -> text(field);
      case BOOLEAN -> new YesNoConverter(field, judge);
      case DATE ->
          new DateConverter(field, column, map.order(field, match.comment()), clues, judge);
      case NUMBER -> number(column, match);
      case INTEGER, YEAR -> new WholeConverter(field, number(column, match), judge);
    };
  }

  CellConverter text(FieldSchema field) {
    if (!field.codes().isEmpty()) {
      return new CodeConverter(field, factory.typeOf(field.position()), judge);
    }
    return field.kind() == TextKind.HYDROLOGIC_UNIT
        ? new WatershedConverter(field, judge)
        : new TextConverter(field, judge);
  }

  private NumberConverter number(int column, HeadingMatch match) {
    FieldSchema field = match.field();
    Unit unit = match.unit() == null ? field.unit() : match.unit();
    String refused = refusedUnit(match);
    String unitBy = map.units().containsKey(field.name()) ? "columns.yaml" : "The heading";
    NumberForm form =
        new NumberForm(
            refused == null ? unit : field.unit(), unitBy, refused, map.decimal(), isOurs);
    return new NumberConverter(field, column, form, clues, judge);
  }

  /** The unit of a heading that cannot be one of the field; null: none. */
  private static String refusedUnit(HeadingMatch match) {
    Unit own = match.field().unit();
    if (own == null) {
      return null;
    }
    if (match.unit() != null && match.unit().dimension() != own.dimension()) {
      return match.unit().symbol();
    }
    String comment = match.comment();
    return comment.isEmpty() || REMARKS.contains(comment.toLowerCase(Locale.ROOT)) ? null : comment;
  }

  private static boolean hasClues(FieldType type) {
    return type == FieldType.DATE
        || type == FieldType.NUMBER
        || type == FieldType.INTEGER
        || type == FieldType.YEAR;
  }
}
