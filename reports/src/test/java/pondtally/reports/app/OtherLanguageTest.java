package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.OtherLanguage;
import pondtally.reports.fixture.TablesFixture;

/**
 * Reports in another language, which is one more file beside the English messages: page, workbook,
 * document and charts hold no English words but those of the tables.
 */
class OtherLanguageTest {

  /** Two English words in a row: what a sentence or a heading that is not in the bundle has. */
  private static final Pattern WORDS =
      Pattern.compile("[A-Za-z]{2,}(?:[,;:.]?[ \u00a0][A-Za-z]{2,})+");

  @Test
  void noEnglishIsLeft(@TempDir Path folder) throws IOException, InterruptedException {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 40);
    Path out = folder.resolve("out");
    OtherLanguage.run(folder, "render", tables.toString(), "--out", out.toString());
    String told = told(tables);
    TreeSet<String> left = new TreeSet<>();
    int texts = 0;
    for (Path file : files(out)) {
      String text = text(file);
      texts += text.split("⟦", -1).length - 1;
      left(text, told).forEach(line -> left.add(file.getFileName() + ": " + line));
    }
    assertTrue(texts > 3000, "messages in the reports: " + texts);
    assertEquals("", String.join("\n", left), "words that are not in the message bundle");
  }

  /** The check can fail. */
  @Test
  void aForgottenSentenceIsFound() {
    assertEquals(
        List.of("Rows read", "and used"), left("⟦One ⟦two⟧ three⟧\nRows read: ⟦5⟧ and used", ""));
    assertEquals(List.of(), left("⟦One⟧ Orrenby Roads 17", " orrenby roads "));
  }

  /** What stands outside messages, with two words or more, and is in no table. */
  private static List<String> left(String text, String told) {
    StringBuilder outside = new StringBuilder();
    int depth = 0;
    for (char c : text.toCharArray()) {
      if (c == '⟦') {
        depth++;
        outside.append('\n');
      } else if (c == '⟧') {
        depth = Math.max(0, depth - 1);
      } else if (depth == 0) {
        outside.append(c);
      }
    }
    return outside
        .toString()
        .lines()
        .flatMap(line -> WORDS.matcher(line).results())
        .map(MatchResult::group)
        .filter(words -> !told.contains(" " + plain(words) + " "))
        .toList();
  }

  private static String plain(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", " ").strip();
  }

  /** Cells of the tables, and each run of words in the descriptor: those the reports repeat. */
  private static String told(Path tables) throws IOException {
    StringBuilder told = new StringBuilder();
    for (Path file : files(tables)) {
      String text = Files.readString(file);
      if (file.toString().endsWith(".json")) {
        WORDS.matcher(text).results().forEach(run -> told.append("| " + plain(run.group()) + " |"));
      } else {
        text.lines().forEach(line -> told.append(" ").append(plain(line)).append(" |"));
      }
    }
    return told.toString();
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    }
  }

  private static String text(Path file) throws IOException {
    String name = file.getFileName().toString();
    if (name.endsWith(".xlsx") && !name.startsWith("fix") || name.endsWith(".docx")) {
      List<String> parts = new ArrayList<>();
      try (ZipFile zip = new ZipFile(file.toFile())) {
        for (ZipEntry entry : zip.stream().filter(e -> e.getName().endsWith(".xml")).toList()) {
          parts.add(
              ofMarkup(
                  new String(
                      zip.getInputStream(entry).readAllBytes(),
                      java.nio.charset.StandardCharsets.UTF_8)));
        }
      }
      return String.join("\n", parts);
    }
    return name.endsWith(".html") || name.endsWith(".svg") ? ofMarkup(Files.readString(file)) : "";
  }

  private static String ofMarkup(String markup) {
    return markup
        .replaceAll("(?s)<(style|f|formula1|xdr:f|c:f)[ >].*?</\\1>", "\n")
        .replaceAll("<[^>]*(?:descr|title|aria-label)=\"([^\"]*)\"[^>]*>", "\n$1\n")
        .replaceAll("<[^>]*>", "\n")
        .replaceAll("&amp;[LCR]", "\n")
        .replace("&amp;", "&")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&apos;", "'")
        .replace("&lt;", "<");
  }
}
