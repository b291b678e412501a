package pondtally.reports.page;

import java.util.List;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;

/** Links to the chapters. */
final class Contents {

  private Contents() {}

  static void write(Html html, TablePackage tables, List<Chapter> chapters) {
    html.line().open("nav", "aria-labelledby", "contents");
    html.element("h2", Messages.of("common.Contents"), "id", "contents").open("ul");
    link(html, InShort.ID, InShort.HEADING);
    chapters.forEach(chapter -> link(html, chapter.id(), chapter.heading()));
    Closing.chapters(tables).forEach((id, heading) -> link(html, id, heading));
    html.close().close();
  }

  private static void link(Html html, String id, String heading) {
    html.line().open("li").element("a", heading, "href", "#" + id).close();
  }
}
