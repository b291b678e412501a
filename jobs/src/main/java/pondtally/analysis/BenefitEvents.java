package pondtally.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pondtally.analysis.CostLine.Stage;
import pondtally.history.FailureDefinition;
import pondtally.record.Action;
import pondtally.record.Condition;
import pondtally.record.Origin;
import pondtally.record.Visit;

/**
 * What visits, repairs and replacements of one device cost. Later purchases and installs belong to
 * the first repair or replacement on or after their day, else to the last before it, else to visits
 * in general. A removal is none of these. Common practice, no source.
 */
final class BenefitEvents {

  private enum Kind {
    VISIT(
        BenefitMeasure.VISITS,
        BenefitMeasure.VISIT_USD,
        BenefitMeasure.VISIT_LABOR_USD,
        BenefitMeasure.VISIT_USD_SQUARED,
        BenefitMeasure.VISITS_TIMED,
        BenefitMeasure.VISIT_HOURS),
    REPAIR(
        BenefitMeasure.REPAIRS,
        BenefitMeasure.REPAIR_USD,
        BenefitMeasure.REPAIR_LABOR_USD,
        BenefitMeasure.REPAIR_USD_SQUARED,
        BenefitMeasure.REPAIRS_TIMED,
        BenefitMeasure.REPAIR_HOURS),
    REPLACEMENT(
        BenefitMeasure.REPLACEMENTS,
        BenefitMeasure.REPLACEMENT_USD,
        BenefitMeasure.REPLACEMENT_LABOR_USD,
        BenefitMeasure.REPLACEMENT_USD_SQUARED,
        BenefitMeasure.REPLACEMENTS_TIMED,
        BenefitMeasure.REPLACEMENT_HOURS);

    private final BenefitMeasure count;
    private final BenefitMeasure usd;
    private final BenefitMeasure labor;
    private final BenefitMeasure squared;
    private final BenefitMeasure timed;
    private final BenefitMeasure hours;

    Kind(
        BenefitMeasure count,
        BenefitMeasure usd,
        BenefitMeasure labor,
        BenefitMeasure squared,
        BenefitMeasure timed,
        BenefitMeasure hours) {
      this.count = count;
      this.usd = usd;
      this.labor = labor;
      this.squared = squared;
      this.timed = timed;
      this.hours = hours;
    }
  }

  private static final class Event {
    private final Kind kind;
    private final int day;
    private final double laborUsd;
    private final Double hours;
    private double usd;
    private boolean known;
    private boolean unknown;

    Event(Kind kind, int day, double laborUsd, Double hours) {
      this.kind = kind;
      this.day = day;
      this.laborUsd = laborUsd;
      this.hours = hours;
    }

    private void add(CostLine line) {
      known = true;
      unknown |= line.realUsd() == null;
      usd += line.realUsd() == null ? 0 : line.realUsd();
    }
  }

  private final List<Event> events = new ArrayList<>();
  private final Map<Origin, Event> byVisit = new HashMap<>();

  private BenefitEvents(List<Visit> visits, AnalysisSettings settings) {
    for (Visit visit : visits) {
      Kind kind = kind(visit, settings.rules().failure());
      if (kind != null) {
        double labor = visit.hours() == null ? 0 : visit.hours() * settings.laborRateUsd();
        Event event = new Event(kind, visit.visitedOn(), labor, hours(visit));
        byVisit.put(visit.origin(), event);
        events.add(event);
      }
    }
    events.sort(Comparator.comparingInt(event -> event.day));
  }

  /** Adds counts and costs of the events of a device. */
  static void add(
      List<Visit> visits, DeviceCost cost, AnalysisSettings settings, BenefitAmounts into) {
    BenefitEvents own = new BenefitEvents(visits, settings);
    for (CostLine line : cost.lines()) {
      if (line.stage() == Stage.UPKEEP) {
        own.assign(line, visits, into);
      }
    }
    for (Event event : own.events) {
      if (event.known && !event.unknown) {
        into.add(event.kind.count, 1);
        into.add(event.kind.usd, event.usd);
        into.add(event.kind.labor, event.laborUsd);
        into.add(event.kind.squared, event.usd * event.usd);
      }
      if (event.hours != null) {
        into.add(event.kind.timed, 1);
        into.add(event.kind.hours, event.hours);
      }
    }
  }

  /** Hours at a visit, paid and given; null where neither is recorded. */
  private static Double hours(Visit visit) {
    if (visit.hours() == null && visit.volunteerHours() == null) {
      return null;
    }
    return (visit.hours() == null ? 0 : visit.hours())
        + (visit.volunteerHours() == null ? 0 : visit.volunteerHours());
  }

  private void assign(CostLine line, List<Visit> visits, BenefitAmounts into) {
    Event own = byVisit.get(line.origin());
    if (own != null) {
      own.add(line);
    } else if (!isOf(visits, line)) {
      Event event = eventFor(line.day());
      if (event != null) {
        event.add(line);
      } else if (line.realUsd() != null) {
        into.add(BenefitMeasure.VISIT_USD, line.realUsd());
      }
    }
  }

  private static boolean isOf(List<Visit> visits, CostLine line) {
    for (Visit visit : visits) {
      if (visit.origin().equals(line.origin())) {
        return true;
      }
    }
    return false;
  }

  /** The repair or replacement that something bought on a day was for; null where there is none. */
  private Event eventFor(int day) {
    Event before = null;
    for (Event event : events) {
      if (event.kind != Kind.VISIT) {
        if (event.day >= day) {
          return event;
        }
        before = event;
      }
    }
    return before;
  }

  private static Kind kind(Visit visit, FailureDefinition failure) {
    if (visit.action() == Action.REMOVED) {
      return null;
    }
    if (visit.action() == Action.REPLACED) {
      return Kind.REPLACEMENT;
    }
    boolean failed =
        visit.condition() == Condition.FAILED
            || (visit.condition() == Condition.REDUCED
                && failure == FailureDefinition.FAILED_OR_REDUCED);
    boolean mended = visit.action() == Action.CLEANED || visit.action() == Action.REPAIRED;
    return failed && mended ? Kind.REPAIR : Kind.VISIT;
  }
}
