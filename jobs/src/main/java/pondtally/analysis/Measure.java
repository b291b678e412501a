package pondtally.analysis;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** What the cost of one unit is worked out for. */
public enum Measure {
  PER_PROPERTY(Effect::properties),
  PER_PROPERTY_YEAR(Effect::propertyYears),
  PER_ACRE_YEAR(Effect::acreYears),
  PER_REMOVAL_AVOIDED(Effect::removalsAvoided),
  PER_FUNCTIONAL_DEVICE_YEAR(Effect::functionalDeviceYears);

  /** All of them; asking for them anew makes a copy each time. */
  static final List<Measure> ALL = List.of(values());

  private final Function<Effect, Double> denominator;

  Measure(Function<Effect, Double> denominator) {
    this.denominator = denominator;
  }

  /** Units of outcome; null where not known. */
  Double denominator(Effect effect) {
    return denominator.apply(effect);
  }

  /** As written in result tables. */
  public String code() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
