package pondtally.reports.view;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/**
 * How a figure is computed.
 *
 * @param table the table it is for; empty for what holds everywhere
 * @param subject what is computed
 * @param text how, in a sentence or two
 * @param source where the method comes from
 */
public record Method(String table, String subject, String text, String source) {

  private static final List<Method> ALL = read();

  /** The methods behind the tables of this run. */
  public static List<Method> all(TablePackage tables) {
    return ALL.stream()
        .filter(m -> m.table.isEmpty() || tables.table(m.table).isPresent())
        .toList();
  }

  private static List<Method> read() {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Method.class.getResourceAsStream("methods.tsv"), StandardCharsets.UTF_8))) {
      return in.lines().skip(1).map(Method::parse).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Method parse(String line) {
    String[] cells = line.split("\t", -1);
    String key = "method." + cells[1];
    return new Method(
        cells[0],
        Messages.of(key + ".subject"),
        Messages.of(key + ".text"),
        Messages.of(key + ".source"));
  }
}
