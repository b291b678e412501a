package pondtally.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Draws which devices stand where, of which pipe, since when. */
final class DeviceMaker {
  private static final List<SampleTruth.Pipe> PIPES = List.of(SampleTruth.Pipe.values());
  private static final LocalDate LAST_INSTALL = LocalDate.of(2025, 11, 14);
  private static final LocalDate LOWMARROW_FOLLOWED_FROM = LocalDate.of(2020, 5, 1);

  private record Place(Site site, LocalDate on) {}

  private DeviceMaker() {}

  /** Every device, by partner and identifier. */
  static List<Device> devices(List<Site> sites) {
    List<Device> devices = new ArrayList<>();
    for (Partner partner : Partner.values()) {
      List<Site> own = sites.stream().filter(s -> s.partner() == partner && s.hasDevice()).toList();
      devices.addAll(numbered(partner, places(partner, own)));
    }
    return devices;
  }

  private static List<Place> places(Partner partner, List<Site> sites) {
    Draw draw = Draw.of("places", partner.prefix);
    List<Place> places = new ArrayList<>();
    for (Site site : sites) {
      places.add(new Place(site, firstInstall(partner, draw)));
    }
    List<Place> first = List.copyOf(places);
    while (places.size() < partner.devices) {
      Place base = draw.pick(first);
      long there = places.stream().filter(place -> place.site().equals(base.site())).count();
      if (there < 4) {
        places.add(new Place(base.site(), laterInstall(base.on(), draw)));
      }
    }
    return places;
  }

  private static LocalDate firstInstall(Partner partner, Draw draw) {
    int year =
        partner.firstYear
            + (int) StrictMath.floor(StrictMath.pow(draw.unit(), 1.5) * (2026 - partner.firstYear));
    return inSeason(LocalDate.of(year, draw.between(4, 10), draw.between(1, 28)));
  }

  private static LocalDate laterInstall(LocalDate first, Draw draw) {
    LocalDate later = inSeason(first.plusDays(draw.between(150, 1500)));
    return draw.chance(0.4) || later.isAfter(LAST_INSTALL) ? first : later;
  }

  private static LocalDate inSeason(LocalDate day) {
    int month = day.getMonthValue();
    return month < 4
        ? day.withDayOfMonth(12).withMonth(4)
        : month > 11 ? day.withMonth(11).withDayOfMonth(6) : day;
  }

  private static List<Device> numbered(Partner partner, List<Place> places) {
    List<Place> ordered =
        places.stream()
            .sorted(Comparator.comparing((Place p) -> p.site().id()).thenComparing(Place::on))
            .toList();
    List<Device> devices = new ArrayList<>();
    for (int i = 0; i < ordered.size(); i++) {
      Site site = ordered.get(i).site();
      int atSite = 1;
      while (i - atSite >= 0 && ordered.get(i - atSite).site().equals(site)) {
        atSite++;
      }
      devices.add(device(identifier(partner, site, i + 1, atSite), ordered.get(i)));
    }
    return devices;
  }

  private static String identifier(Partner partner, Site site, int number, int atSite) {
    return switch (partner) {
      case QUARRINDALE -> String.format(Locale.ROOT, "QD-T%02d", number);
      case BRACKWEN -> String.format(Locale.ROOT, "BF-D%02d", number);
      default -> site.id() + "-" + (char) ('A' + atSite - 1);
    };
  }

  private static Device device(String id, Place place) {
    Draw draw = Draw.of("device", id);
    Site site = place.site();
    boolean crossing = site.setting().equals("road-crossing") || site.setting().equals("rail");
    SampleTruth.Pipe pipe = pipe(site, crossing, draw);
    String kind =
        pipe == SampleTruth.Pipe.FENCE_ONLY
            ? "culvert-fence"
            : crossing && draw.chance(0.4) ? "fence-and-pipe" : "pond-leveler";
    boolean toSpecification = draw.chance(SampleTruth.TO_SPECIFICATION_SHARE);
    boolean shared = site.partner() != Partner.QUARRINDALE && draw.chance(0.25);
    String crew = shared ? Partner.SHARED_CREW : draw.pick(site.partner().crews());
    return new Device(
        id,
        site,
        pipe,
        kind,
        place.on(),
        trackedFrom(site.partner(), place.on()),
        lastFollowUp(place.on(), draw),
        toSpecification,
        crew,
        draw.chance(0.04));
  }

  private static SampleTruth.Pipe pipe(Site site, boolean crossing, Draw draw) {
    double[] weights = site.watershed().pipeWeights().stream().mapToDouble(w -> w).toArray();
    int fenceOnly = PIPES.indexOf(SampleTruth.Pipe.FENCE_ONLY);
    weights[fenceOnly] = crossing ? weights[fenceOnly] : 0;
    return PIPES.get(draw.weighted(weights));
  }

  private static LocalDate trackedFrom(Partner partner, LocalDate installedOn) {
    boolean late = partner == Partner.LOWMARROW && installedOn.isBefore(LOWMARROW_FOLLOWED_FROM);
    return late ? LOWMARROW_FOLLOWED_FROM : null;
  }

  /**
   * Nearly all are followed to the data cut; some drop out of sight, a few are never seen again.
   */
  private static LocalDate lastFollowUp(LocalDate installedOn, Draw draw) {
    if (draw.chance(0.012)) {
      return installedOn;
    }
    return draw.chance(0.09)
        ? SampleTruth.AS_OF.minusDays(draw.between(400, 900))
        : SampleTruth.AS_OF;
  }
}
