package pondtally.analysis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;
import pondtally.history.Histories;
import pondtally.history.HistoryRules;
import pondtally.record.Action;
import pondtally.record.Cause;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.PipeWall;
import pondtally.record.Property;
import pondtally.record.Site;
import pondtally.record.Visit;
import pondtally.stats.PriceIndex;

/**
 * An invented program drawn at random, one device a site: installed over nine years, visited every
 * three to nine months, failing at ages of a Weibull power-law process (a repair does not make it
 * young again), repaired on the day it is found failed.
 */
final class SimulatedProgram {

  static final double SHAPE = 1.3;
  static final double SCALE_DAYS = 2500;

  private static final int AS_OF = (int) LocalDate.of(2024, 12, 31).toEpochDay();
  private static final int FIRST_INSTALL = (int) LocalDate.of(2016, 1, 1).toEpochDay();
  private static final int LAST_INSTALL = (int) LocalDate.of(2024, 6, 30).toEpochDay();

  /** A device as drawn: ages in days, money in dollars of a year without inflation. */
  record Drawn(
      int installedOn,
      int[] visitAges,
      boolean[] failed,
      double buildUsd,
      double[] visitUsd,
      int properties) {

    /** Age at its first visit that found it failed; -1 where none did. */
    int foundAge() {
      for (int i = 0; i < failed.length; i++) {
        if (failed[i]) {
          return visitAges[i];
        }
      }
      return -1;
    }

    /** The dearer half of the repairs are of chewed pipes, the others of plugged ones. */
    Cause cause(int visit) {
      if (!failed[visit]) {
        return null;
      }
      return visitUsd[visit] < 250 ? Cause.PIPE_PLUGGED : Cause.PIPE_CHEWED;
    }

    int lastAge() {
      return visitAges.length == 0 ? 0 : visitAges[visitAges.length - 1];
    }

    int failures() {
      int n = 0;
      for (boolean f : failed) {
        n += f ? 1 : 0;
      }
      return n;
    }

    /** Time not failed up to the last visit; failures taken in the middle between two visits. */
    double upDays() {
      double up = 0;
      for (int i = 0; i < failed.length; i++) {
        int gap = visitAges[i] - (i == 0 ? 0 : visitAges[i - 1]);
        up += failed[i] ? gap / 2.0 : gap;
      }
      return up;
    }

    double costUsd() {
      double sum = buildUsd;
      for (double usd : visitUsd) {
        sum += usd;
      }
      return sum;
    }
  }

  private SimulatedProgram() {}

  /** A device as it stands: its pipe, and what was drawn for it. */
  record Standing(PipeWall wall, Double diameterIn, Drawn drawn) {}

  static Drawn draw(SplittableRandom random) {
    return draw(1, random);
  }

  /** A device that fails at so many times the rate of the others. */
  static Drawn draw(double ratio, SplittableRandom random) {
    int installedOn = FIRST_INSTALL + random.nextInt(LAST_INSTALL - FIRST_INSTALL);
    List<Integer> visits = new ArrayList<>();
    List<Boolean> failed = new ArrayList<>();
    List<Double> usd = new ArrayList<>();
    double failsAt = next(0, ratio, random);
    for (int age = 90 + random.nextInt(180);
        installedOn + age <= AS_OF;
        age += 90 + random.nextInt(180)) {
      boolean down = failsAt <= age;
      visits.add(age);
      failed.add(down);
      usd.add(down ? 50 + 400 * random.nextDouble() : 30);
      failsAt = down ? next(age, ratio, random) : failsAt;
    }
    int n = visits.size();
    boolean[] down = new boolean[n];
    for (int i = 0; i < n; i++) {
      down[i] = failed.get(i);
    }
    return new Drawn(
        installedOn,
        visits.stream().mapToInt(Integer::intValue).toArray(),
        down,
        Math.exp(7.4 + 0.5 * random.nextDouble() + 0.5 * random.nextDouble()),
        usd.stream().mapToDouble(Double::doubleValue).toArray(),
        1 + random.nextInt(3));
  }

  /** Age at the next failure of a device that works at an age. */
  private static double next(double age, double ratio, SplittableRandom random) {
    double hazard = Math.pow(age / SCALE_DAYS, SHAPE) - Math.log(1 - random.nextDouble()) / ratio;
    return SCALE_DAYS * Math.pow(hazard, 1 / SHAPE);
  }

  static AnalysisSettings settings(long seed, int resamples) {
    return settings(seed, resamples, FailureDating.DISCOVERY);
  }

  static AnalysisSettings settings(long seed, int resamples, FailureDating dating) {
    return new AnalysisSettings(
        new HistoryRules(FailureDefinition.FAILED, dating, AS_OF, 180),
        (int) LocalDate.of(2024, 1, 1).toEpochDay(),
        AS_OF,
        8,
        2024,
        0.07,
        10,
        32,
        null,
        5,
        seed,
        resamples);
  }

  static Prices prices() {
    TreeMap<Integer, Double> flat = new TreeMap<>();
    for (int year = 2016; year <= 2024; year++) {
      flat.put(year, 100.0);
    }
    return new Prices(PriceIndex.of(flat), 2024);
  }

  /** The device as rows of partners, made into histories as the job makes them. */
  static ClusterView view(int number, Drawn drawn, AnalysisSettings settings, CostRules costs) {
    return view(number, null, List.of(new Standing(null, null, drawn)), settings, costs);
  }

  /** The devices of one site. */
  static ClusterView view(
      int number,
      String watershed,
      List<Standing> devices,
      AnalysisSettings settings,
      CostRules costs) {
    ClusterRecords records = records(Integer.toString(number), watershed, devices);
    return new ClusterView(Histories.of(records, settings.rules()), new Groups(8), costs);
  }

  private static ClusterRecords records(String site, String watershed, List<Standing> devices) {
    List<Install> installs = new ArrayList<>();
    List<Visit> visits = new ArrayList<>();
    List<Property> properties = new ArrayList<>();
    for (int d = 0; d < devices.size(); d++) {
      Drawn drawn = devices.get(d).drawn;
      String device = d == 0 ? site : site + "-" + d;
      installs.add(install(device, site, devices.get(d)));
      for (int i = 0; i < drawn.visitAges.length; i++) {
        visits.add(visit(device, i, drawn));
      }
      for (int i = 0; i < drawn.properties; i++) {
        properties.add(
            new Property(row(i), "p", device + "-" + i, site, null, null, null, null, null, null));
      }
    }
    return new ClusterRecords(
        site,
        List.of(site(site, watershed)),
        installs,
        List.of(),
        visits,
        List.of(),
        properties,
        List.of(),
        List.of());
  }

  private static Origin row(int row) {
    return new Origin(0, 0, row + 2, false);
  }

  private static Visit visit(String id, int i, Drawn drawn) {
    return new Visit(
        row(i),
        "p",
        id,
        drawn.installedOn + drawn.visitAges[i],
        drawn.failed[i] ? Condition.FAILED : Condition.WORKING,
        drawn.cause(i),
        drawn.failed[i] ? Action.REPAIRED : Action.NONE,
        null,
        null,
        null,
        drawn.visitUsd[i],
        null,
        null,
        null,
        null,
        null);
  }

  private static Site site(String id, String watershed) {
    return new Site(
        row(0), "p", id, watershed, null, null, null, null, null, null, null, null, null, null,
        null, null, null, null, null, null);
  }

  private static Install install(String id, String site, Standing device) {
    return new Install(
        row(0),
        "p",
        id,
        site,
        device.drawn.installedOn,
        null,
        device.wall,
        device.diameterIn,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        device.drawn.buildUsd,
        null,
        null,
        null,
        null);
  }
}
