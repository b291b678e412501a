package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;
import pondtally.reports.text.GroupText;
import pondtally.reports.text.Messages;
import pondtally.reports.text.NumberText;
import pondtally.reports.view.Rows;

/** Where the sites lie and how they stand, drawn from coordinates alone. */
final class SitesMap {

  private static final String CAPTION = Messages.of("page.SitesMap.where-the-sites-are-and-their");

  private SitesMap() {}

  /** Nothing where the run made no table of sites. */
  static void write(Html html, TablePackage tables) {
    Optional<Table> sites = tables.table("sites");
    if (sites.isEmpty() || sites.get().rows().isEmpty()) {
      return;
    }
    SitePlaces places = SitePlaces.of(sites.get());
    html.line();
    if (places.places().isEmpty()) {
      html.element("p", Messages.of("page.SitesMap.no-map-is-drawn-no-site"), "class", "note");
      return;
    }
    html.open("figure", "class", "card map");
    html.element("p", CAPTION, "class", "title");
    new MapDrawing(places).write(html, CAPTION, description(places));
    legend(html, tables);
    said(html, places);
    html.element("figcaption", Messages.of("page.SitesMap.no-ground-is-drawn-under-the"));
    html.close();
  }

  private static String description(SitePlaces places) {
    TreeMap<SiteMark, Integer> counts = new TreeMap<>();
    places.places().forEach(p -> counts.merge(SiteMark.of(p.state()), 1, Integer::sum));
    return Messages.of(
        "page.SitesMap.map-of-by-their-coordinates-the",
        Map.of(
            "sites",
            NumberText.count(places.places().size(), "sites"),
            "joining",
            counts.entrySet().stream()
                .map(e -> NumberText.count(e.getValue()) + " " + words(e.getKey().state()))
                .collect(Collectors.joining(", "))));
  }

  private static String words(String state) {
    return state.isEmpty() ? Messages.of("page.SitesMap.of-another-state") : GroupText.words(state);
  }

  /** The states that occur, each with its mark and the number of its sites on record. */
  private static void legend(Html html, TablePackage tables) {
    Rows sites = Rows.of(tables, "sites");
    html.open("ul", "class", "legend");
    List<String> states = new ArrayList<>();
    for (SiteMark mark : SiteMark.values()) {
      states.add(mark.state());
    }
    sites.list().stream()
        .map(row -> row.text("state"))
        .distinct()
        .sorted()
        .filter(state -> !states.contains(state))
        .forEach(states::add);
    for (String state : states) {
      Rows own = sites.where("state", state);
      if (!own.list().isEmpty()) {
        html.line().open("li");
        html.open("svg", "viewBox", "-7 -7 14 14", "aria-hidden", "true", "focusable", "false");
        SiteMark.of(state).draw(html);
        html.close().close();
        html.text(
            (state.isEmpty()
                    ? Messages.of("page.SitesMap.state-not-known")
                    : GroupText.words(state))
                + ": ");
        Cell count = Cell.rows(own, NumberText.count(own.list().size(), "sites"));
        html.element("span", count.text(), Source.attributes(count.figure().orElseThrow()));
        html.close();
      }
    }
    html.close();
  }

  private static void said(Html html, SitePlaces places) {
    html.open("p");
    if (places.without() == 0) {
      html.text(Messages.of("page.SitesMap.every-site-on-record-has-coordinates"));
    } else {
      html.element(
          "span",
          NumberText.count(places.without(), "sites"),
          "data-cell",
          "sites;;latitude,longitude",
          "data-how",
          "without");
      html.text(
          places.without() == 1
              ? Messages.of("page.SitesMap.on-record-has-no-coordinates-and")
              : Messages.of("page.SitesMap.on-record-have-no-coordinates-and"));
    }
    html.text(places.share() ? Messages.of("page.SitesMap.some-sites-lie-at-one-place") : "");
    html.close();
  }
}
