package pondtally.reports.app;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.check.RowCounts;

/** The row account and all issues as one JSON object, for other programs. */
final class CheckJson {

  private static final ObjectMapper JSON = new ObjectMapper();

  private CheckJson() {}

  /** Members {@code rows} (the totals), {@code account} and {@code issues}, in file order. */
  static String of(List<RowAccount> account, List<DataIssue> issues) {
    ObjectNode root = JSON.createObjectNode();
    ArrayNode sheets = JSON.createArrayNode();
    RowCounts total = new RowCounts(0, 0, 0, 0, 0);
    for (RowAccount row : account) {
      total = total.plus(row.counts());
      ObjectNode sheet = sheets.addObject();
      sheet.put("partner", row.partner()).put("file", row.file());
      sheet.put("sheet", row.sheet()).put("table", row.table());
      putCounts(sheet, row.counts());
    }
    putCounts(root.putObject("rows"), total);
    root.set("account", sheets);
    ArrayNode list = root.putArray("issues");
    issues.forEach(issue -> put(list.addObject(), issue));
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void putCounts(ObjectNode node, RowCounts counts) {
    node.put("read", counts.read()).put("used", counts.used()).put("changed", counts.changed());
    node.put("set_aside", counts.setAside()).put("duplicate", counts.duplicate());
  }

  /** Members without a value are null: the row of an issue about a sheet, for example. */
  private static void put(ObjectNode node, DataIssue issue) {
    node.put("partner", issue.partner()).put("file", issue.file()).put("sheet", issue.sheet());
    node.put("row", issue.row()).put("table", issue.table()).put("column", issue.column());
    node.put("value", issue.value()).put("severity", issue.severity().code());
    node.put("rule", issue.rule()).put("message", issue.message());
    node.put("suggestion", issue.suggestion());
  }
}
