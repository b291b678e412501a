package pondtally.intake;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What {@code columns.yaml} states about the files of one partner.
 *
 * @param partner name of the partner; null: the name of the folder
 * @param entries about some of the files or sheets; the first that fits counts
 * @param others about all the other sheets
 * @param text about all text files that no entry says more about
 */
record ColumnsMap(String partner, List<Entry> entries, SheetMap others, TextForm text)
    implements Serializable {

  static final ColumnsMap NONE = new ColumnsMap(null, List.of(), SheetMap.NONE, TextForm.UNSTATED);

  /**
   * An entry of {@code tables}.
   *
   * @param line where it begins
   * @param files the pattern as written; null: all files
   * @param sheets the pattern as written; null: all sheets
   */
  record Entry(int line, String files, String sheets, SheetMap map, TextForm text)
      implements Serializable {

    boolean fitsFile(String path) {
      return files == null || fits(files, files.contains("/") ? below(path) : fileName(path));
    }

    boolean fitsSheet(String sheet) {
      return sheets == null || fits(sheets, sheet);
    }
  }

  /** The same with the ids that {@code aliases.csv} merges. */
  ColumnsMap with(Map<String, Map<String, String>> merged) {
    return new ColumnsMap(
        partner,
        entries.stream()
            .map(
                entry ->
                    new Entry(
                        entry.line, entry.files, entry.sheets, entry.map.with(merged), entry.text))
            .toList(),
        others.with(merged),
        text);
  }

  /** The map of a sheet. */
  SheetMap sheet(String path, String sheet) {
    return entries.stream()
        .filter(entry -> entry.fitsFile(path) && entry.fitsSheet(sheet))
        .map(Entry::map)
        .findFirst()
        .orElse(others);
  }

  /** The form of a text file. */
  TextForm textOf(String path) {
    return entries.stream()
        .filter(entry -> entry.fitsFile(path) && entry.sheets() == null)
        .map(entry -> entry.text().or(text))
        .findFirst()
        .orElse(text);
  }

  /** Path below the partner's folder. */
  private static String below(String path) {
    return path.substring(path.indexOf('/') + 1);
  }

  private static String fileName(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  /** Whether a name fits a pattern, in which {@code *} is any text and {@code ?} any sign. */
  private static boolean fits(String pattern, String name) {
    StringBuilder regex = new StringBuilder();
    for (int i = 0; i < pattern.length(); i++) {
      char c = pattern.charAt(i);
      regex.append(c == '*' ? ".*" : c == '?' ? "." : Pattern.quote(String.valueOf(c)));
    }
    return Pattern.compile(regex.toString(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE)
        .matcher(name)
        .matches();
  }
}
