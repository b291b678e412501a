package pondtally.reports.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.view.Line;

/**
 * Sites with coordinates, laid on a plane: degrees of longitude are shortened by the cosine of the
 * middle latitude, which keeps distances true to about one per cent over a few hundred kilometers.
 */
final class SitePlaces {

  /** Mean radius of the earth (Moritz 2000, Geodetic Reference System 1980), kilometers. */
  private static final double RADIUS_KM = 6371.0088;

  /** Length of a degree on a great circle, kilometers. */
  static final double KM_PER_DEGREE = RADIUS_KM * Math.PI / 180;

  /** Nothing smaller than this fills a map, kilometers. */
  private static final double LEAST_KM = 2;

  private final List<Place> places;
  private final int without;
  private final double west;
  private final double east;
  private final double south;
  private final double north;

  /** A site at degrees north and east. */
  record Place(String site, String state, double latitude, double longitude) {}

  private SitePlaces(List<Place> places, int without) {
    this.places = places;
    this.without = without;
    double halfLatitude = LEAST_KM / 2 / KM_PER_DEGREE;
    double low = places.stream().mapToDouble(Place::latitude).min().orElse(0);
    double high = places.stream().mapToDouble(Place::latitude).max().orElse(0);
    double left = places.stream().mapToDouble(Place::longitude).min().orElse(0);
    double right = places.stream().mapToDouble(Place::longitude).max().orElse(0);
    double half = Math.max((high - low) / 2, halfLatitude) * 1.06;
    south = (low + high) / 2 - half;
    north = (low + high) / 2 + half;
    double halfLongitude = Math.max((right - left) / 2, halfLatitude / shrink()) * 1.06;
    west = (left + right) / 2 - halfLongitude;
    east = (left + right) / 2 + halfLongitude;
  }

  /** The sites of the table; none has a place where the edition leaves coordinates out. */
  static SitePlaces of(Table sites) {
    boolean coordinates =
        sites.fields().stream()
            .map(Field::name)
            .toList()
            .containsAll(List.of("latitude", "longitude", "state"));
    List<Place> places = new ArrayList<>();
    int without = 0;
    for (Row row : sites.rows()) {
      OptionalDouble latitude =
          coordinates ? Line.of(row).number("latitude") : OptionalDouble.empty();
      OptionalDouble longitude =
          coordinates ? Line.of(row).number("longitude") : OptionalDouble.empty();
      if (latitude.isPresent() && longitude.isPresent()) {
        places.add(
            new Place(
                row.text("site_id"),
                row.text("state"),
                latitude.getAsDouble(),
                longitude.getAsDouble()));
      } else {
        without++;
      }
    }
    return new SitePlaces(acrossDateLine(places), without);
  }

  /** Places on both sides of the 180th meridian stand beside each other. */
  private static List<Place> acrossDateLine(List<Place> places) {
    double least = places.stream().mapToDouble(Place::longitude).min().orElse(0);
    double most = places.stream().mapToDouble(Place::longitude).max().orElse(0);
    if (most - least <= 180) {
      return places;
    }
    return places.stream()
        .map(
            p ->
                p.longitude() < 0
                    ? new Place(p.site(), p.state(), p.latitude(), p.longitude() + 360)
                    : p)
        .toList();
  }

  List<Place> places() {
    return places;
  }

  /** Sites that have no coordinates. */
  int without() {
    return without;
  }

  /** Whether several sites lie at one place, so that marks hide each other. */
  boolean share() {
    return places.stream().map(p -> p.latitude() + " " + p.longitude()).distinct().count()
        < places.size();
  }

  double west() {
    return west;
  }

  double east() {
    return east;
  }

  double south() {
    return south;
  }

  double north() {
    return north;
  }

  /** How much shorter a degree of longitude is than one of latitude; never nothing. */
  double shrink() {
    return Math.max(0.01, Math.cos(Math.toRadians((south + north) / 2)));
  }
}
