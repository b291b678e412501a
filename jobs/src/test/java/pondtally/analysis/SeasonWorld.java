package pondtally.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;
import pondtally.history.Histories;
import pondtally.history.HistoryRules;
import pondtally.record.Action;
import pondtally.record.ClusterRecords;
import pondtally.record.Condition;
import pondtally.record.DeviceKind;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.PipeWall;
import pondtally.record.Site;
import pondtally.record.Visit;

/**
 * An invented program whose every failure is known: sites with one to four devices of three pipe
 * types, half of the sites visited about every 90 days and half about every 360, a tenth of the
 * devices retired and a tenth followed late. Failures come at ages of a Weibull power-law process
 * (repair leaves the age, replacement begins at 0). After the data cut the program lives one more
 * year by the plan of {@link SeasonForecast}: what visits then find is the truth.
 */
public final class SeasonWorld {

  static final int AS_OF = (int) LocalDate.of(2024, 12, 31).toEpochDay();
  static final int EVERY = 180;

  private static final int FIRST = (int) LocalDate.of(2014, 1, 1).toEpochDay();
  private static final double[] SHAPE = {1.4, 0.9, 1.1};
  private static final double[] SCALE = {1800, 3500, 2600};
  private static final PipeWall[] WALL = {PipeWall.SINGLE, PipeWall.DUAL, PipeWall.SMOOTH};
  private static final double REPLACED = 0.2;

  final SeasonTally tally = new SeasonTally(FailureDating.INTERVAL);
  final List<WorklistDevice> devices = new ArrayList<>();
  final AnalysisSettings settings;
  int foundNextYear;
  int retired;
  int failuresFound;

  /** Pipe type, and factor of the site on the hazard, of each device. */
  private final List<double[]> drawn = new ArrayList<>();

  private final List<ClusterRecords> clusters = new ArrayList<>();

  private final SplittableRandom random;
  private final double siteSpread;
  private List<Install> installs;
  private List<Visit> visits;
  private int rows;

  private SeasonWorld(long seed, double siteSpread) {
    this.random = new SplittableRandom(seed);
    this.siteSpread = siteSpread;
    this.settings = settings(seed);
  }

  /**
   * A program.
   *
   * @param siteSpread standard deviation of the logarithm of a site's own factor on the hazard
   */
  static SeasonWorld of(long seed, int sites, double siteSpread) {
    SeasonWorld world = new SeasonWorld(seed, siteSpread);
    CostRules costs = new CostRules(SimulatedProgram.prices(), 32, null);
    for (int site = 0; site < sites; site++) {
      ClusterRecords records = world.site("S" + site, site % 2 == 0 ? 90 : 360);
      world.clusters.add(records);
      ClusterView view =
          new ClusterView(Histories.of(records, world.settings.rules()), new Groups(8), costs);
      BenefitCluster amounts = BenefitCluster.of(view, world.settings);
      world.tally.add(view);
      view.subsets().forEach(subset -> world.tally.add(subset, amounts.sum(subset.devices())));
      world.devices.addAll(WorklistDevice.of(view, world.settings));
    }
    return world;
  }

  /** A larger program of unlike sites, for the way through files. */
  public static SeasonWorld unlikeSites(long seed, int sites) {
    return of(seed, sites, 0.4);
  }

  public int devices() {
    return drawn.size();
  }

  public int retired() {
    return retired;
  }

  /** Failures that visits found up to the data cut. */
  public int failuresFound() {
    return failuresFound;
  }

  /** Failures that visits by plan find in the year after the data cut. */
  public int foundNextYear() {
    return foundNextYear;
  }

  /** True share of devices of a pipe type, as {@code dual 12 in}, not failed at an age. */
  public double survival(String pipe, double days) {
    double sum = 0;
    int n = 0;
    for (double[] device : drawn) {
      int type = (int) device[0];
      if (pipe.equals(WALL[type].code() + " 12 in")) {
        sum += Math.exp(-device[1] * Math.pow(days / SCALE[type], SHAPE[type]));
        n++;
      }
    }
    return sum / n;
  }

  /** Writes the program folder: a partner who visits every 90 days, and one every 360. */
  public void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("program.yaml"),
        "as_of: 2024-12-31\nbase_year: 2024\nrevisit_every_days: " + EVERY + "\n");
    for (int partner = 0; partner < 2; partner++) {
      Path own = Files.createDirectories(folder.resolve(partner == 0 ? "often" : "seldom"));
      List<String> siteRows = new ArrayList<>(List.of("site_id,watershed"));
      List<String> installRows =
          new ArrayList<>(
              List.of(
                  "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,tracked_from,install_cost_usd"));
      List<String> visitRows =
          new ArrayList<>(List.of("device_id,visited_on,condition,action,cost_usd"));
      for (int i = partner; i < clusters.size(); i += 2) {
        ClusterRecords site = clusters.get(i);
        siteRows.add(site.cluster() + ",99010101");
        site.installs().forEach(row -> installRows.add(line(row)));
        site.visits().forEach(row -> visitRows.add(line(row)));
      }
      Files.write(own.resolve("sites.csv"), siteRows);
      Files.write(own.resolve("installs.csv"), installRows);
      Files.write(own.resolve("revisits.csv"), visitRows);
    }
  }

  private static String line(Install row) {
    return String.join(
        ",",
        row.deviceId(),
        row.siteId(),
        LocalDate.ofEpochDay(row.installedOn()).toString(),
        row.deviceKind().code(),
        row.pipeWall().code(),
        row.pipeDiameterIn().toString(),
        LocalDate.ofEpochDay(row.trackedFrom()).toString(),
        row.installCostUsd().toString());
  }

  private static String line(Visit row) {
    return String.join(
        ",",
        row.deviceId(),
        LocalDate.ofEpochDay(row.visitedOn()).toString(),
        row.condition().code(),
        row.action().code(),
        Double.toString(Math.round(row.costUsd() * 100) / 100.0));
  }

  private static AnalysisSettings settings(long seed) {
    return new AnalysisSettings(
        new HistoryRules(FailureDefinition.FAILED, FailureDating.INTERVAL, AS_OF, EVERY),
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
        1);
  }

  private ClusterRecords site(String id, int everyDays) {
    installs = new ArrayList<>();
    visits = new ArrayList<>();
    double factor = Math.exp(siteSpread * gaussian() - siteSpread * siteSpread / 2);
    int devices = 1 + random.nextInt(4);
    for (int i = 0; i < devices; i++) {
      new Life(id + "-" + i, id, random.nextInt(3), everyDays, factor).run();
    }
    return new ClusterRecords(
        id,
        List.of(site(id)),
        installs,
        List.of(),
        visits,
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private double gaussian() {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  /** One device, lived through. */
  private final class Life {
    private final String id;
    private final String site;
    private final int type;
    private final int everyDays;
    private final double factor;
    private final int installedOn = FIRST + random.nextInt(AS_OF - 200 - FIRST);
    private final boolean late = random.nextDouble() < 0.1;
    private final int retiresAt =
        random.nextDouble() < 0.1 ? 300 + random.nextInt(2500) : Integer.MAX_VALUE;
    private int bornOn = installedOn;
    private double failsAt;

    Life(String id, String site, int type, int everyDays, double factor) {
      this.id = id;
      this.site = site;
      this.type = type;
      this.everyDays = everyDays;
      this.factor = factor;
    }

    /** Age at the next failure of a device that works at an age. */
    private double next(double age) {
      double hazard =
          Math.pow(age / SCALE[type], SHAPE[type]) - Math.log(1 - random.nextDouble()) / factor;
      return SCALE[type] * Math.pow(hazard, 1 / SHAPE[type]);
    }

    private void run() {
      drawn.add(new double[] {type, factor});
      int tracked = late ? installedOn + Math.min(AS_OF - installedOn, 250) : installedOn;
      installs.add(install(id, site, installedOn, tracked, type));
      failsAt = next(tracked - installedOn);
      int last = tracked;
      for (int day = tracked + gap(); day <= AS_OF; day += gap()) {
        last = day;
        boolean failed = bornOn + failsAt <= day;
        if (!failed && day - installedOn > retiresAt) {
          visits.add(visit(id, day, Condition.RETIRED, Action.NONE));
          retired++;
          return;
        }
        failuresFound += failed ? 1 : 0;
        visits.add(
            visit(id, day, failed ? Condition.FAILED : Condition.WORKING, mend(failed, day)));
      }
      for (int day = Math.max(AS_OF + 1, last + EVERY); day <= AS_OF + 365; day += EVERY) {
        boolean failed = bornOn + failsAt <= day;
        foundNextYear += failed ? 1 : 0;
        mend(failed, day);
      }
    }

    private int gap() {
      return (int) (everyDays * (0.7 + 0.6 * random.nextDouble()));
    }

    private Action mend(boolean failed, int day) {
      if (!failed) {
        return Action.NONE;
      }
      boolean replaced = random.nextDouble() < REPLACED;
      bornOn = replaced ? day : bornOn;
      failsAt = next(day - bornOn);
      return replaced ? Action.REPLACED : Action.REPAIRED;
    }
  }

  private Origin origin() {
    return new Origin(0, 0, ++rows, false);
  }

  private Visit visit(String id, int day, Condition condition, Action action) {
    double usd = condition == Condition.FAILED ? 100 + 300 * random.nextDouble() : 40;
    return new Visit(
        origin(), "p", id, day, condition, null, action, null, null, null, usd, null, null, null,
        null, null);
  }

  private Site site(String id) {
    return new Site(
        origin(),
        "p",
        id,
        "99010101",
        null,
        null,
        null,
        null,
        null,
        null,
        800.0,
        2024,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  private Install install(String id, String site, int on, int tracked, int type) {
    return new Install(
        origin(),
        "p",
        id,
        site,
        on,
        DeviceKind.POND_LEVELER,
        WALL[type],
        12.0,
        20.0,
        10.0,
        5.0,
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
        1500.0,
        null,
        tracked,
        null,
        null);
  }
}
