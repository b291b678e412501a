package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.DataIssue;
import pondtally.check.RowAccount;
import pondtally.check.RowCounts;
import pondtally.check.Severity;
import pondtally.check.UserError;

class SuggestedColumnsTest {

  @TempDir private Path target;

  private void write(String text, boolean isReplaced) {
    TreeMap<String, String> texts = new TreeMap<>();
    texts.put("a-first", text);
    texts.put("north", text);
    SuggestedColumns.write(texts, target, isReplaced, new PrintWriter(new StringWriter()));
  }

  @Test
  void anEarlierOneIsKeptUnlessItIsToBeReplaced() throws IOException {
    Path file = target.resolve("north/columns.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(file, "# mine\n");
    UserError error = assertThrows(UserError.class, () -> write("# new\n", false));
    assertEquals(4, error.exitCode());
    assertEquals("# mine\n", Files.readString(file));
    assertFalse(Files.exists(target.resolve("a-first")));
    write("# new\n", true);
    assertEquals("# new\n", Files.readString(file));
  }

  @Test
  void jsonHoldsTheAccountAndEveryIssue() throws IOException {
    RowAccount account =
        new RowAccount("north", "north/a.csv", "", "sites", new RowCounts(9, 4, 3, 2, 0));
    DataIssue issue =
        new DataIssue(
            "north",
            "north/a.csv",
            "",
            null,
            "sites",
            "",
            "",
            Severity.NOTICE,
            "unknown-column",
            "\"x\" is none.",
            "");
    JsonNode json =
        new ObjectMapper().readTree(CheckJson.of(List.of(account, account), List.of(issue)));
    assertEquals("18 8 6 4 0", numbers(json.get("rows")));
    assertEquals("9 4 3 2 0", numbers(json.get("account").get(1)));
    assertEquals("\"x\" is none.", json.get("issues").get(0).get("message").asText());
    assertEquals(true, json.get("issues").get(0).get("row").isNull());
  }

  private static String numbers(JsonNode counts) {
    return "%d %d %d %d %d"
        .formatted(
            counts.get("read").asInt(),
            counts.get("used").asInt(),
            counts.get("changed").asInt(),
            counts.get("set_aside").asInt(),
            counts.get("duplicate").asInt());
  }
}
