package pondtally.analysis;

/** An amount of each measure; starts at zero. */
final class BenefitAmounts {

  private final double[] amounts = new double[BenefitMeasure.ALL.size()];

  double get(BenefitMeasure measure) {
    return amounts[measure.ordinal()];
  }

  double get(int measure) {
    return amounts[measure];
  }

  void add(BenefitMeasure measure, double amount) {
    amounts[measure.ordinal()] += amount;
  }

  void add(BenefitAmounts other) {
    for (int i = 0; i < amounts.length; i++) {
      amounts[i] += other.amounts[i];
    }
  }
}
