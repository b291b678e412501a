package pondtally.intake;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pondtally.schema.TableSchema;

/**
 * What the name of a sheet or file says about its content.
 *
 * @param table the table that its first word names; of a sheet the sheet's name counts first
 * @param isRemark whether it says that the sheet holds explanations rather than records
 */
record TableName(Optional<TableSchema> table, boolean isRemark) {

  private static final Pattern WORD = Pattern.compile("\\p{L}+");
  private static final Set<String> REMARKS =
      Set.of(
          "read",
          "readme",
          "about",
          "note",
          "notes",
          "instructions",
          "help",
          "legend",
          "key",
          "codes",
          "list",
          "lists",
          "lookup",
          "lookups",
          "summary",
          "chart",
          "charts",
          "pivot");

  static TableName of(InputFile file, String sheet, SheetMap map) {
    if (map.table() != null) {
      return new TableName(map.tableSchema(), false);
    }
    String fileName = file.path().substring(file.path().lastIndexOf('/') + 1);
    String own = firstWord(sheet.isEmpty() ? fileName : sheet);
    Optional<TableSchema> table = TableSchema.find(own);
    boolean isRemark = table.isEmpty() && REMARKS.contains(own);
    return new TableName(table.or(() -> TableSchema.find(firstWord(fileName))), isRemark);
  }

  private static String firstWord(String name) {
    Matcher word = WORD.matcher(name);
    return word.find() ? word.group().toLowerCase(Locale.ROOT) : "";
  }
}
