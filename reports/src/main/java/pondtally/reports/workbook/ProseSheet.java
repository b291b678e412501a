package pondtally.reports.workbook;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet of sentences in one column, without filter or frozen rows.
 *
 * @param title stands in A1
 */
record ProseSheet(String name, String title, List<Block> blocks) {

  /** What a block is. */
  enum Kind {
    SECTION,
    PARAGRAPH,
    LINK
  }

  /**
   * A heading, a paragraph or a link.
   *
   * @param target name of the sheet a link leads to; empty for the others
   */
  record Block(Kind kind, String text, String target) {}

  /** Collects blocks. */
  static final class Builder {
    private final List<Block> blocks = new ArrayList<>();

    Builder section(String text) {
      blocks.add(new Block(Kind.SECTION, text, ""));
      return this;
    }

    Builder paragraph(String text) {
      blocks.add(new Block(Kind.PARAGRAPH, text, ""));
      return this;
    }

    Builder link(String text, String sheet) {
      blocks.add(new Block(Kind.LINK, text, sheet));
      return this;
    }

    ProseSheet build(String name, String title) {
      return new ProseSheet(name, title, List.copyOf(blocks));
    }
  }
}
