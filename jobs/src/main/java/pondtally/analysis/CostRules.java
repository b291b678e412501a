package pondtally.analysis;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.CostLine.Stage;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Visit;

/**
 * What counts as the cost of a device: material lines, paid hours at the labor rate, volunteer
 * hours at their rate, and the same for visits. A lump sum stands for lines and paid hours where no
 * line was kept; where there are lines, lines and hours win over it. Common practice in project
 * accounts, no source.
 */
public final class CostRules {

  /** Payer named on a line that nobody paid in cash. */
  public static final String IN_KIND = "in-kind";

  /** An order in which sums do not depend on where rows stand in files. */
  private static final Comparator<CostLine> WHATEVER_THE_FILE =
      Comparator.comparingInt(CostLine::day)
          .thenComparing(CostLine::stage)
          .thenComparing(CostLine::payment)
          .thenComparingDouble(CostLine::nominalUsd)
          .thenComparing(CostLine::origin);

  private final Prices prices;
  private final double laborRateUsd;
  private final Double volunteerRateUsd;

  public CostRules(Prices prices, double laborRateUsd, Double volunteerRateUsd) {
    this.prices = prices;
    this.laborRateUsd = laborRateUsd;
    this.volunteerRateUsd = volunteerRateUsd;
  }

  /** What turns dollars of a year into dollars of the base year. */
  public Prices prices() {
    return prices;
  }

  /**
   * The cost of one device from its rows.
   *
   * @param installs its install rows, earliest first; not empty
   */
  public DeviceCost of(List<Install> installs, List<MaterialLine> materials, List<Visit> visits) {
    Install first = installs.get(0);
    Collector lines = new Collector(first.funder(), first.installedOn());
    for (MaterialLine material : materials) {
      int day = material.purchasedOn() == null ? first.installedOn() : material.purchasedOn();
      lines.bought(
          material.origin(), day, materialUsd(material), material.paidBy(), material.matchFor());
    }
    double itemized = lines.lines.stream().mapToDouble(CostLine::nominalUsd).sorted().sum();
    Double difference = null;
    for (Install install : installs) {
      boolean lumpSum = install.installCostUsd() != null && !hasLines(install, installs, materials);
      if (lumpSum) {
        lines.bought(install.origin(), install.installedOn(), install.installCostUsd(), null, null);
      } else {
        lines.worked(install.origin(), install.installedOn(), install.laborHours(), null, null);
        if (install.installCostUsd() != null) {
          difference = install.installCostUsd() - itemized - laborUsd(install);
        }
      }
      lines.volunteered(
          install.origin(), install.installedOn(), install.volunteerHours(), install.matchFor());
    }
    boolean built =
        lines.lines.stream().anyMatch(line -> line.stage() == Stage.BUILD)
            || !lines.hours.isEmpty();
    for (Visit visit : visits) {
      upkeep(visit, lines);
    }
    lines.lines.sort(WHATEVER_THE_FILE);
    return new DeviceCost(List.copyOf(lines.lines), built, List.copyOf(lines.hours), difference);
  }

  private static double materialUsd(MaterialLine line) {
    return line.totalCostUsd() != null ? line.totalCostUsd() : line.quantity() * line.unitCostUsd();
  }

  private void upkeep(Visit visit, Collector lines) {
    if (visit.costUsd() != null) {
      lines.spent(
          visit.origin(),
          visit.visitedOn(),
          Stage.UPKEEP,
          visit.costUsd(),
          visit.paidBy(),
          visit.matchFor());
    }
    lines.worked(
        visit.origin(),
        visit.visitedOn(),
        visit.hours(),
        visit.paidBy(),
        visit.matchFor(),
        Stage.UPKEEP);
    lines.volunteered(
        visit.origin(), visit.visitedOn(), visit.volunteerHours(), visit.matchFor(), Stage.UPKEEP);
  }

  private double laborUsd(Install install) {
    return install.laborHours() == null ? 0 : install.laborHours() * laborRateUsd;
  }

  /** Whether anything was bought for an install, since the one before and up to its day. */
  private static boolean hasLines(
      Install install, List<Install> installs, List<MaterialLine> materials) {
    int at = installs.indexOf(install);
    int after = at == 0 ? Integer.MIN_VALUE : installs.get(at - 1).installedOn();
    int first = installs.get(0).installedOn();
    for (MaterialLine line : materials) {
      int day = line.purchasedOn() == null ? first : line.purchasedOn();
      if (day > after && day <= install.installedOn()) {
        return true;
      }
    }
    return false;
  }

  /** Collects the lines of one device. */
  private final class Collector {

    private final List<CostLine> lines = new ArrayList<>();
    private final List<DeviceCost.DatedHours> hours = new ArrayList<>();
    private final String funder;
    private final int installedOn;

    Collector(String funder, int installedOn) {
      this.funder = funder;
      this.installedOn = installedOn;
    }

    Stage stage(int day) {
      return day > installedOn ? Stage.UPKEEP : Stage.BUILD;
    }

    void bought(Origin origin, int day, double usd, String paidBy, String matchFor) {
      spent(origin, day, stage(day), usd, paidBy, matchFor);
    }

    void spent(Origin origin, int day, Stage stage, double usd, String paidBy, String matchFor) {
      int year = LocalDate.ofEpochDay(day).getYear();
      Double real = prices.real(usd, year);
      add(origin, day, stage, paidBy, matchFor, usd, real, prices.isProvisional(year));
    }

    void worked(Origin origin, int day, Double paidHours, String paidBy, String matchFor) {
      worked(origin, day, paidHours, paidBy, matchFor, stage(day));
    }

    void worked(
        Origin origin, int day, Double paidHours, String paidBy, String matchFor, Stage stage) {
      if (paidHours != null) {
        double usd = paidHours * laborRateUsd;
        add(origin, day, stage, paidBy, matchFor, usd, usd, false);
      }
    }

    void volunteered(Origin origin, int day, Double volunteerHours, String matchFor) {
      volunteered(origin, day, volunteerHours, matchFor, stage(day));
    }

    void volunteered(Origin origin, int day, Double volunteerHours, String matchFor, Stage stage) {
      if (volunteerHours == null) {
        return;
      }
      hours.add(new DeviceCost.DatedHours(origin, day, volunteerHours));
      if (volunteerRateUsd != null) {
        double usd = volunteerHours * volunteerRateUsd;
        lines.add(
            new CostLine(origin, day, stage, Payment.VOLUNTEER, null, matchFor, usd, usd, false));
      }
    }

    private void add(
        Origin origin,
        int day,
        Stage stage,
        String paidBy,
        String matchFor,
        double nominal,
        Double real,
        boolean provisional) {
      boolean inKind = IN_KIND.equals(paidBy);
      lines.add(
          new CostLine(
              origin,
              day,
              stage,
              inKind ? Payment.IN_KIND : Payment.CASH,
              inKind ? null : paidBy == null ? funder : paidBy,
              matchFor,
              nominal,
              real,
              provisional));
    }
  }
}
