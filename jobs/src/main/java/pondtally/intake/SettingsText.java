package pondtally.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import pondtally.check.UserError;

/** The text of a YAML file, of a size and depth that people write. */
public final class SettingsText {

  private static final int MOST_BYTES = 1_000_000;

  private SettingsText() {}

  /**
   * Reads the file.
   *
   * @param name what messages call it
   * @throws UserError where it is no text in UTF-8, or larger than 1 MB
   */
  public static String of(Path file, String name) {
    try {
      if (Files.size(file) > MOST_BYTES) {
        throw UserError.input(
            "%s is larger than 1 MB. Expected a few lines or pages of settings.".formatted(name));
      }
      return Files.readString(file);
    } catch (IOException e) {
      throw UserError.input(
          "%s cannot be read. Expected a text file in UTF-8 that you may read.".formatted(name));
    }
  }

  /**
   * What a parser makes of the text.
   *
   * @throws UserError where its brackets are nested deeper than the parser can follow
   */
  public static <T> T parsed(String text, String name, Function<String, T> parser) {
    try {
      return parser.apply(text);
    } catch (StackOverflowError e) {
      throw UserError.input(
          "%s is nested far deeper than settings are. Expected `key: value` lines."
              .formatted(name));
    }
  }
}
