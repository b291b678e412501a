package pondtally.reports.page;

import java.util.List;
import java.util.Map;
import pondtally.reports.text.Messages;
import pondtally.reports.text.Missing;

/** The first screen: the first sentence of each chapter, and how to read figures. */
final class InShort {

  static final String ID = "in-short";
  static final String HEADING = Messages.of("page.InShort.in-short");

  private InShort() {}

  static void write(Html html, List<Chapter> chapters) {
    html.line().open("section", "aria-labelledby", ID);
    html.element("h2", HEADING, "id", ID).open("ul", "class", "short");
    for (Chapter chapter : chapters) {
      if (!chapter.sentences().isEmpty() && !chapter.id().equals(Subject.COVER.id())) {
        html.line().open("li");
        html.element("a", chapter.heading(), "href", "#" + chapter.id());
        html.open("p");
        SentenceHtml.words(html, chapter.sentences().get(0));
        html.close().close();
      }
    }
    html.close();
    legend(html);
    html.close();
  }

  private static void legend(Html html) {
    html.open("p", "class", "note")
        .text(Messages.of("page.InShort.in-tables"))
        .element("strong", TableHtml.NOT_KNOWN);
    html.text(
        Messages.of(
            "page.InShort.stands-for-nobody-recorded-it-or",
            Map.of("notknown", Missing.NOT_KNOWN, "withheld", Missing.WITHHELD)));
    html.close();
  }
}
