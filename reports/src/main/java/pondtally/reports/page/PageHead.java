package pondtally.reports.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import pondtally.reports.table.TablePackage;
import pondtally.reports.view.Summary;

/** What stands in the page before its body. */
final class PageHead {

  /** Browsers that heed it will not ask any host for anything, whatever the page holds. */
  static final String NOTHING_FROM_OUTSIDE =
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

  private PageHead() {}

  static void write(Html html, TablePackage tables) {
    write(html, Summary.title(tables));
  }

  static void write(Html html, String title) {
    html.open("head").line();
    html.single("meta", "charset", "utf-8").line();
    html.single("meta", "http-equiv", "Content-Security-Policy", "content", NOTHING_FROM_OUTSIDE)
        .line();
    html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
        .line();
    html.single("meta", "name", "color-scheme", "content", "light dark").line();
    html.element("title", title).line();
    html.single("link", "rel", "icon", "href", "data:,").line();
    html.open("style").finished("\n" + style()).close();
    html.close();
  }

  private static String style() {
    try (InputStream in = PageHead.class.getResourceAsStream("page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
