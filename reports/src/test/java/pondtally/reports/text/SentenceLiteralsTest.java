package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What readers of the reports are told stands in {@code messages.properties}: a sentence or a
 * heading that is written into a class instead is found here, and so is a key without a message and
 * a message that nothing says.
 */
class SentenceLiteralsTest {

  private static final Path SOURCES = Path.of("src/main/java/pondtally/reports");

  private static final List<String> PACKAGES =
      List.of(
          "chart", "compare", "document", "fixlist", "form", "page", "text", "view", "workbook");

  private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?m:^\\s*//.*$)");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");

  /** Two words in a row. */
  private static final Pattern WORDS =
      Pattern.compile("[A-Za-z]{2,}[,;:.]?[ \u00a0][A-Za-z]{2,}|^ [a-z]{2,}[ .]*$|^[a-z]{2,} $");

  /** What has words in a row and is not told to readers. */
  private static final Set<String> NOT_TOLD =
      Set.of(
          // names of fonts
          "'Noto Sans', 'DejaVu Sans Condensed', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif",
          // markup: ids of a title and a description, a class, a color scheme, what may be loaded
          "sites-map-title sites-map-desc",
          "card map",
          "width=device-width, initial-scale=1",
          "light dark",
          "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none';"
              + " form-action 'none'",
          // values of the tables that are compared with, not shown
          "pipe, stratified by watershed",
          "Beaver coexistence program",
          "failures per 100 device-years",
          "no pipe",
          "year=all; measure=per-property; basis=cash",
          "year=all; property_type=all",
          "sheet ",
          // the beginning of a column's name
          "claim ",
          "none given",
          // faults of the program
          "The document cannot be put together: ",
          " has no column ",
          " has no limits to check",
          " needs an end",
          " not in the sentence: ",
          " is no picture: ",
          " cells for ");

  /** A noun that goes with a number: the bundle has its forms. */
  private static boolean isCounted(String literal) {
    return Messages.english().has("unit." + literal.replace(' ', '-') + ".other");
  }

  @Test
  void sentencesStandInTheBundle() throws IOException {
    TreeSet<String> found = new TreeSet<>();
    for (Path file : sources()) {
      String name = SOURCES.relativize(file).toString();
      literals(Files.readString(file))
          .filter(SentenceLiteralsTest::isTold)
          .forEach(literal -> found.add(name + ": \"" + literal + "\""));
    }
    assertEquals("", String.join("\n", found), "texts that belong into messages.properties");
  }

  /** The scan finds what it is for, and passes over comments, keys and codes. */
  @Test
  void theScanFindsASentence() {
    String source =
        """
        /** A comment "with words". */
        // another "with words"
        say("Rows read: " + count + " were used.");
        say(Messages.of("view.Rows.rows-read"), "device_years", "cash-and-in-kind", "<p class=");
        """;
    assertEquals(
        List.of("Rows read: ", " were used."),
        literals(source).filter(SentenceLiteralsTest::isTold).toList());
  }

  /** Every key that a class names has a message; every message is said somewhere. */
  @Test
  void keysAndMessagesMatch() throws IOException {
    StringBuilder all = new StringBuilder();
    TreeSet<String> without = new TreeSet<>();
    for (Path file : sources()) {
      String source = Files.readString(file);
      all.append(source);
      literals(source)
          .filter(literal -> literal.matches("(common|chart|document|page|view|workbook)\\.\\w.*"))
          .filter(literal -> literal.contains("-") || literal.startsWith("common."))
          .filter(key -> !Messages.english().has(key))
          .forEach(without::add);
    }
    assertEquals(Set.of(), without, "keys without a message");
    List<String> unsaid =
        keys().stream()
            .filter(key -> key.matches("(common|chart|document|page|view|workbook|text)\\..*"))
            .filter(key -> all.indexOf("\"" + key + "\"") < 0)
            .toList();
    assertEquals(List.of(), unsaid, "messages that nothing says");
  }

  private static boolean isTold(String literal) {
    return WORDS.matcher(literal).find()
        && !NOT_TOLD.contains(literal)
        && !literal.contains("<")
        && !isCounted(literal);
  }

  private static Stream<String> literals(String source) {
    // a text in parts is one text
    String joined =
        COMMENT.matcher(source).replaceAll("").replaceAll("(?<!\\\\)\"\\s*\\+\\s*\"", "");
    return LITERAL.matcher(joined).results().map((MatchResult found) -> found.group(1));
  }

  private static List<Path> sources() throws IOException {
    List<Path> sources = new java.util.ArrayList<>();
    for (String name : PACKAGES) {
      try (Stream<Path> files = Files.walk(SOURCES.resolve(name))) {
        files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
      }
    }
    assertTrue(sources.size() > 150, "sources found: " + sources.size());
    return sources;
  }

  private static List<String> keys() throws IOException {
    java.util.Properties messages = new java.util.Properties();
    try (java.io.InputStream in = Messages.class.getResourceAsStream("messages.properties")) {
      messages.load(new java.io.InputStreamReader(in, java.nio.charset.StandardCharsets.UTF_8));
    }
    return messages.stringPropertyNames().stream().sorted().toList();
  }
}
