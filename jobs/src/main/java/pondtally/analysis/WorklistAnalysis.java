package pondtally.analysis;

import java.util.AbstractList;
import java.util.List;
import pondtally.analysis.GroupKey.Grouping;

/**
 * The result table {@code worklist}: where a visit is worth most. Devices never visited come first,
 * a list of their own; then those whose yearly damage is known, by expected loss; then the others,
 * by chance of having failed times acres. Devices that have ended are not listed.
 */
public final class WorklistAnalysis {

  private static final double DAYS_PER_YEAR = 365.25;

  private final BenefitFits fits;
  private final AnalysisSettings settings;

  private WorklistAnalysis(BenefitFits fits, AnalysisSettings settings) {
    this.fits = fits;
    this.settings = settings;
  }

  /** One row of the result table; dates are days since 1970-01-01, null: unknown. */
  public record Row(
      Integer rank,
      String deviceId,
      String siteId,
      String watershed,
      Integer lastVisitOn,
      Integer daysOverdue,
      Double chanceFailed,
      Long properties,
      Double acres,
      Double damagePerYearUsd,
      Double expectedLossUsd,
      String block,
      String state,
      String crew,
      Integer lastKnownGoodOn,
      String fit) {}

  /** What a visit is worth. */
  record Judged(WorklistDevice device, Double chance, String fit, Double lossUsd) {

    Double atStake() {
      if (lossUsd != null) {
        return lossUsd;
      }
      Double acres = device.acres();
      return chance == null || acres == null ? null : (Double) (chance * acres);
    }

    Block block() {
      if (device.lastVisitOn() == null) {
        return Block.NEVER_VISITED;
      }
      return device.damageUsd() != null ? Block.BY_LOSS : Block.BY_ACRES;
    }
  }

  /** The lists that the worklist is made of, in order. */
  enum Block {
    NEVER_VISITED("never-visited"),
    BY_LOSS("expected-loss"),
    BY_ACRES("damage-unknown");

    private final String code;

    Block(String code) {
      this.code = code;
    }
  }

  /** The rows of the result table, in order; each is made when it is asked for. */
  public static List<Row> rows(
      List<WorklistDevice> devices, BenefitFits fits, AnalysisSettings settings) {
    WorklistAnalysis analysis = new WorklistAnalysis(fits, settings);
    int[] order = WorklistOrder.of(devices, analysis);
    return new AbstractList<>() {
      @Override
      public Row get(int index) {
        return analysis.row(index + 1, analysis.judge(devices.get(order[index])));
      }

      @Override
      public int size() {
        return order.length;
      }
    };
  }

  /** What is known of a device, weighed. */
  Judged judge(WorklistDevice device) {
    BenefitFit fit = fits.of(new GroupKey(Grouping.PIPE, device.pipe())).orElse(null);
    Double chance = chance(device, fit);
    Double loss =
        chance == null || device.damageUsd() == null
            ? null
            : (Double)
                (chance * device.damageUsd() * settings.rules().revisitEveryDays() / DAYS_PER_YEAR);
    return new Judged(device, chance, fit == null ? null : fit.group(), loss);
  }

  private static Double chance(WorklistDevice device, BenefitFit fit) {
    if (device.failed()) {
      return 1.0;
    }
    return fit == null
        ? null
        : (Double) fit.chanceFailed(device.goodAgeDays(), device.daysSinceGood());
  }

  private Row row(int rank, Judged one) {
    WorklistDevice device = one.device();
    int asOf = settings.rules().asOf();
    int since = device.lastVisitOn() == null ? device.entryOn() : device.lastVisitOn();
    return new Row(
        rank,
        device.deviceId(),
        device.siteId(),
        device.watershed(),
        device.lastVisitOn(),
        Math.max(0, asOf - since - settings.rules().revisitEveryDays()),
        one.chance(),
        device.properties(),
        device.acres(),
        device.damageUsd(),
        one.lossUsd(),
        one.block().code,
        device.state(),
        device.crew(),
        device.failed() ? null : (Integer) device.knownGoodOn(),
        device.failed() ? null : one.fit());
  }
}
