package pondtally.analysis;

import java.io.Serializable;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Service lives by covariates and follow-up, counted. */
public final class HazardTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final HashMap<Covariates, HashMap<Span, Long>> lives = new HashMap<>();

  /** Follow-up of a life, ages in days. */
  record Span(double entryDays, double exitDays, boolean failed) implements Serializable {}

  /** Counts lives. */
  void add(List<LifePart> parts) {
    for (LifePart life : parts) {
      lives
          .computeIfAbsent(life.covariates(), k -> new HashMap<>())
          .merge(
              new Span(life.followUp().entryDays(), life.exitDays(), life.failed()), 1L, Long::sum);
    }
  }

  /** Adds what another tally counted. */
  void merge(HazardTally other) {
    other.lives.forEach(
        (covariates, spans) -> {
          Map<Span, Long> own = lives.computeIfAbsent(covariates, k -> new HashMap<>());
          spans.forEach((span, count) -> own.merge(span, count, Long::sum));
        });
  }

  /** Counts by covariates and follow-up, in no order. */
  Map<Covariates, ? extends Map<Span, Long>> lives() {
    return lives;
  }
}
