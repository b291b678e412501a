package pondtally.intake;

import java.util.stream.Collectors;

/** A {@code columns.yaml} that is there already, with what is still open in its files below it. */
final class StatedColumns {

  private static final String OPEN = "# Still open in these files, beside what stands above.";
  private static final String HOW =
      """
      # Each line is a comment. Write what you decide into the entry above that is about the
      # same file and sheet (of two entries only the first counts), or add the entry there.
      """;

  private StatedColumns() {}

  /**
   * What is stated, word for word, and below it every suggested line as a comment.
   *
   * @param stated text of the file, which may end with an earlier suggestion; that one is renewed
   * @param suggested text of a whole suggestion
   */
  static String with(String stated, String suggested) {
    int earlier = stated.indexOf(OPEN);
    String own = earlier < 0 ? stated : stated.substring(0, earlier);
    String kept = own.isEmpty() || own.endsWith("\n") ? own : own + "\n";
    String open =
        suggested
            .lines()
            .filter(line -> !line.startsWith("#") || line.startsWith(SheetSuggestion.MARK))
            .map(line -> line.startsWith("#") ? line : SheetSuggestion.MARK + line)
            .map(line -> line + "\n")
            .collect(Collectors.joining());
    return open.isEmpty() ? kept : kept + OPEN + "\n" + HOW + open;
  }
}
