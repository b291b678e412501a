package pondtally.intake;

import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pondtally.check.UserError;

/**
 * Reads a {@code columns.yaml}: how a partner's files, columns, units, codes and dates map to ours.
 * What it cannot be sure of stops the run with the line and the nearest right key.
 */
final class ColumnsFile {

  static final List<String> FORM_KEYS = List.of("dates", "decimal", "delimiter", "encoding");
  private static final List<String> KEYS =
      List.of("partner", "dates", "decimal", "delimiter", "encoding", "tables");
  private static final Map<String, Character> DELIMITERS =
      Map.of(
          ",",
          ',',
          "comma",
          ',',
          ";",
          ';',
          "semicolon",
          ';',
          "\t",
          '\t',
          "\\t",
          '\t',
          "tab",
          '\t',
          "|",
          '|',
          "pipe",
          '|');

  private ColumnsFile() {}

  /**
   * Reads the file.
   *
   * @param name what messages call it
   * @throws UserError if anything in it is wrong
   */
  static ColumnsMap read(Path file, String name) {
    Optional<YamlPart> root = YamlPart.read(file, name);
    return root.isEmpty() ? ColumnsMap.NONE : map(root.get().entries(KEYS));
  }

  private static ColumnsMap map(Map<String, YamlPart> root) {
    Map<String, DateOrder> dates = new HashMap<>();
    if (root.containsKey("dates")) {
      dates.put(SheetMap.ANY, order(root.get("dates")));
    }
    SheetMap others =
        new SheetMap(
            null,
            false,
            SheetMap.SEARCHED,
            null,
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            dates,
            Map.of(),
            decimal(root));
    List<ColumnsMap.Entry> entries = new ArrayList<>();
    if (root.containsKey("tables")) {
      for (YamlPart item : root.get("tables").items()) {
        entries.add(ColumnsEntry.read(item, others));
      }
    }
    return new ColumnsMap(partner(root), List.copyOf(entries), others, text(root));
  }

  private static String partner(Map<String, YamlPart> root) {
    if (!root.containsKey("partner")) {
      return null;
    }
    String name = root.get("partner").text();
    if (name.isEmpty()) {
      throw root.get("partner").wrong("`partner` is empty. Expected the partner's name");
    }
    return name;
  }

  static DateOrder order(YamlPart part) {
    return part.oneOf("order of dates", List.of("day/month/year", "month/day/year"))
            .startsWith("day")
        ? DateOrder.DAY_FIRST
        : DateOrder.MONTH_FIRST;
  }

  /** The decimal mark that the keys state; null: none. */
  static DecimalMark decimal(Map<String, YamlPart> keys) {
    YamlPart part = keys.get("decimal");
    if (part == null) {
      return null;
    }
    boolean isPoint = part.oneOf("decimal mark", List.of("point", "comma")).equals("point");
    return isPoint ? DecimalMark.POINT : DecimalMark.COMMA;
  }

  /** What the keys state about text files. */
  static TextForm text(Map<String, YamlPart> keys) {
    Character delimiter = null;
    if (keys.containsKey("delimiter")) {
      delimiter = DELIMITERS.get(keys.get("delimiter").text());
      if (delimiter == null) {
        throw keys.get("delimiter")
            .wrong("`delimiter` must be one of: comma, semicolon, tab, pipe");
      }
    }
    YamlPart encoding = keys.get("encoding");
    return new TextForm(encoding == null ? null : charset(encoding), delimiter);
  }

  private static String charset(YamlPart part) {
    try {
      return Charset.forName(part.text()).name();
    } catch (IllegalArgumentException e) {
      throw part.wrong(
          "`%s` is no encoding that is known. Expected one such as utf-8, utf-16, windows-1252,"
              + " iso-8859-1 or ibm437",
          part.text());
    }
  }
}
