package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pondtally.reports.chart.ChartFile;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.Messages;
import pondtally.reports.view.Section;
import pondtally.reports.view.Sentence;
import pondtally.reports.view.Summary;

/**
 * A subject as this run can tell it.
 *
 * @param id what links point at
 */
record Chapter(
    String id,
    String heading,
    List<Sentence> sentences,
    List<ChartFile> charts,
    List<PageTable> tables) {

  /**
   * Every chapter that has anything to show. Sentences and charts that no subject claims come last:
   * none is lost.
   */
  static List<Chapter> all(TablePackage tables, List<ChartFile> charts) {
    List<Section> sections = new ArrayList<>(Summary.of(tables));
    List<ChartFile> left = new ArrayList<>(charts);
    List<Chapter> chapters = new ArrayList<>();
    for (Subject subject : Subject.values()) {
      List<ChartFile> own = left.stream().filter(subject::owns).toList();
      left.removeAll(own);
      add(
          chapters,
          new Chapter(
              subject.id(),
              subject.heading(),
              take(sections, subject.heading()),
              own,
              subject.tables(tables)));
    }
    for (Section section : sections) {
      String id = "more-" + (chapters.size() + 1);
      add(chapters, new Chapter(id, section.heading(), section.sentences(), List.of(), List.of()));
    }
    add(
        chapters,
        new Chapter(
            "more-charts", Messages.of("page.Chapter.more-charts"), List.of(), left, List.of()));
    return chapters;
  }

  private static List<Sentence> take(List<Section> sections, String heading) {
    Optional<Section> own =
        sections.stream().filter(section -> section.heading().equals(heading)).findFirst();
    own.ifPresent(sections::remove);
    return own.map(Section::sentences).orElse(List.of());
  }

  private static void add(List<Chapter> chapters, Chapter chapter) {
    if (!chapter.sentences.isEmpty() || !chapter.charts.isEmpty() || !chapter.tables.isEmpty()) {
      chapters.add(chapter);
    }
  }
}
