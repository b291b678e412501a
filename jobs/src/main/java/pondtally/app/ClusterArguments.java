package pondtally.app;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.OptionalInt;
import pondtally.check.UserError;

/**
 * What a run on a cluster is asked to do.
 *
 * @param folder the program folder, on any Hadoop file system
 * @param out the folder to write, on any Hadoop file system
 * @param shared a folder that every machine reaches under this path; null: there is none
 */
record ClusterArguments(
    String folder,
    String out,
    boolean replace,
    OptionalInt from,
    OptionalInt to,
    Path shared,
    boolean contributions) {

  static final String USAGE =
      "Usage: spark-submit --master URL pondtally-jobs-cluster.jar FOLDER --out DIR [--replace]"
          + " [--from DATE] [--to DATE] [--shared DIR [--contributions]]";

  /**
   * @throws UserError with exit code 2 for arguments that are not known or missing
   */
  static ClusterArguments of(String... arguments) {
    Parser parser = new Parser(new ArrayDeque<>(List.of(arguments)));
    while (!parser.left.isEmpty()) {
      parser.next();
    }
    if (parser.folder == null || parser.out == null) {
      throw UserError.usage("A program folder and --out are needed. " + USAGE);
    }
    if (parser.contributions && parser.shared == null) {
      throw UserError.usage("--contributions needs --shared DIR. " + USAGE);
    }
    return new ClusterArguments(
        parser.folder,
        parser.out,
        parser.replace,
        parser.from,
        parser.to,
        parser.shared,
        parser.contributions);
  }

  private static final class Parser {
    private final Deque<String> left;
    private String folder;
    private String out;
    private boolean replace;
    private boolean contributions;
    private OptionalInt from = OptionalInt.empty();
    private OptionalInt to = OptionalInt.empty();
    private Path shared;

    Parser(Deque<String> left) {
      this.left = left;
    }

    void next() {
      String name = left.remove();
      switch (name) {
        case "--out" -> out = value(name);
        case "--replace" -> replace = true;
        case "--contributions" -> contributions = true;
        case "--from" -> from = date(name);
        case "--to" -> to = date(name);
        case "--shared" -> shared = Path.of(value(name));
        default -> folder = folder(name);
      }
    }

    private String folder(String text) {
      if (text.startsWith("-") || folder != null) {
        throw UserError.usage("%s is not understood. %s".formatted(text, USAGE));
      }
      return text;
    }

    private String value(String name) {
      if (left.isEmpty()) {
        throw UserError.usage("%s needs a value. %s".formatted(name, USAGE));
      }
      return left.remove();
    }

    private OptionalInt date(String name) {
      String text = value(name);
      try {
        return OptionalInt.of((int) LocalDate.parse(text).toEpochDay());
      } catch (DateTimeException e) {
        throw UserError.usage("%s %s: expected a date such as 2025-12-31.".formatted(name, text));
      }
    }
  }
}
