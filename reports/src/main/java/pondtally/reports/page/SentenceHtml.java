package pondtally.reports.page;

import java.util.List;
import pondtally.reports.view.Figure;
import pondtally.reports.view.Sentence;

/** Sentences as they stand, with each figure marked by the cell it comes from. */
final class SentenceHtml {

  private SentenceHtml() {}

  /** Paragraphs, one a sentence. */
  static void paragraphs(Html html, List<Sentence> sentences) {
    for (Sentence sentence : sentences) {
      html.line().open("p");
      words(html, sentence);
      html.close();
    }
  }

  /** The words of one sentence. */
  static void words(Html html, Sentence sentence) {
    String text = sentence.text();
    int from = 0;
    List<Integer> places = sentence.places();
    for (int i = 0; i < places.size(); i++) {
      Figure figure = sentence.figures().get(i);
      int at = places.get(i);
      html.text(text.substring(from, at));
      html.element("span", figure.printed(), Source.attributes(figure));
      from = at + figure.printed().length();
    }
    html.text(text.substring(from));
  }
}
