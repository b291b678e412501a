package pondtally.analysis;

import java.util.Random;

/**
 * What one event of a kind costs and takes, from the program's own records.
 *
 * @param meanUsd by draw: draw 0 holds the mean on record, the others the mean as uncertain as the
 *     number of records leaves it; dollars of the base year
 * @param sdUsd spread among events, dollars
 * @param hours mean hours, paid and given; null: never recorded
 */
record SeasonUnit(double[] meanUsd, double sdUsd, Double hours) {

  /** Measures of one kind of event. */
  enum Kind {
    VISIT(
        BenefitMeasure.VISITS,
        BenefitMeasure.VISIT_USD,
        BenefitMeasure.VISIT_USD_SQUARED,
        BenefitMeasure.VISITS_TIMED,
        BenefitMeasure.VISIT_HOURS),
    REPAIR(
        BenefitMeasure.REPAIRS,
        BenefitMeasure.REPAIR_USD,
        BenefitMeasure.REPAIR_USD_SQUARED,
        BenefitMeasure.REPAIRS_TIMED,
        BenefitMeasure.REPAIR_HOURS),
    REPLACEMENT(
        BenefitMeasure.REPLACEMENTS,
        BenefitMeasure.REPLACEMENT_USD,
        BenefitMeasure.REPLACEMENT_USD_SQUARED,
        BenefitMeasure.REPLACEMENTS_TIMED,
        BenefitMeasure.REPLACEMENT_HOURS);

    private final BenefitMeasure count;
    private final BenefitMeasure usd;
    private final BenefitMeasure squared;
    private final BenefitMeasure timed;
    private final BenefitMeasure hours;

    Kind(
        BenefitMeasure count,
        BenefitMeasure usd,
        BenefitMeasure squared,
        BenefitMeasure timed,
        BenefitMeasure hours) {
      this.count = count;
      this.usd = usd;
      this.squared = squared;
      this.timed = timed;
      this.hours = hours;
    }

    BenefitMeasure count() {
      return count;
    }
  }

  /** The events of a group; null where none has a recorded cost. */
  static SeasonUnit of(SeasonTally tally, GroupKey key, Kind kind, long seed) {
    double n = tally.total(key, kind.count);
    double timed = tally.total(key, kind.timed);
    Double hours = timed > 0 ? (Double) (tally.total(key, kind.hours) / timed) : null;
    if (n == 0) {
      return null;
    }
    double mean = tally.total(key, kind.usd) / n;
    double squares = Math.max(0, tally.total(key, kind.squared) - n * mean * mean);
    double sd = n > 1 ? Math.sqrt(squares / (n - 1)) : 0;
    Random random = SeasonFit.seeded(seed, kind + " " + key.group());
    double[] means = new double[SeasonFits.DRAWS];
    means[0] = mean;
    for (int i = 1; i < means.length; i += 2) {
      double off = random.nextGaussian() * sd / Math.sqrt(n);
      means[i] = Math.max(0, mean + off);
      means[i + 1] = Math.max(0, mean - off);
    }
    return new SeasonUnit(means, sd, hours);
  }
}
