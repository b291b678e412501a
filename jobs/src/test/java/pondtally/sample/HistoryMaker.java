package pondtally.sample;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Lives one device through: true failures, true ends, and what visits at irregular gaps saw of
 * them.
 */
final class HistoryMaker {
  private static final Set<String> CLEANABLE =
      Set.of("fence-dammed", "pipe-plugged", "new-dam-downstream", "ice");
  private static final Set<Month> WINTER =
      EnumSet.of(Month.DECEMBER, Month.JANUARY, Month.FEBRUARY);
  private static final double DAYS_PER_YEAR = 365.25;

  private final Device device;
  private final Draw truth;
  private final Draw people;
  private final List<Visit> visits = new ArrayList<>();
  private final List<History.Life> lives = new ArrayList<>();
  private SampleTruth.Pipe pipe;
  private LocalDate lifeStart;
  private double failureAge;
  private String cause;
  private LocalDate end;
  private LocalDate retiredOn;
  private String retiredReason = "";
  private boolean ended;

  private HistoryMaker(Device device) {
    this.device = device;
    this.truth = Draw.of("truth", device.id());
    this.people = Draw.of("people", device.id());
    this.pipe = device.pipe();
  }

  static History of(Device device) {
    return new HistoryMaker(device).run();
  }

  private History run() {
    startLife(
        device.installedOn(),
        (double) ChronoUnit.DAYS.between(device.installedOn(), device.entry()));
    String endReason = truth.weighted(SampleTruth.END_PER_YEAR);
    end = endAfter(device.entry());
    visitBeforeEntry();
    LocalDate day = nextDay(device.entry(), true);
    while (!day.isAfter(device.lastFollowUp()) && !ended) {
      if (!day.isBefore(end) && !failedBy(end)) {
        retire(endReason, day);
      } else {
        visit(day);
        day = nextDay(day, false);
      }
    }
    return new History(
        device, visits, retiredOn, retiredReason, lives, lifeStart.plusDays((long) failureAge));
  }

  /**
   * A device that the program follows late may have been looked at before, and was then working.
   */
  private void visitBeforeEntry() {
    long days = ChronoUnit.DAYS.between(device.installedOn(), device.entry());
    if (days > 200 && people.chance(0.5)) {
      LocalDate day = device.installedOn().plusDays(people.between(60, (int) days - 60));
      visits.add(new Visit(day, "working", "", "none", null));
    }
  }

  private LocalDate endAfter(LocalDate day) {
    double rate =
        SampleTruth.END_PER_YEAR.values().stream().sorted().mapToDouble(Double::doubleValue).sum();
    return day.plusDays(1 + (long) truth.exponential(rate / DAYS_PER_YEAR));
  }

  private void startLife(LocalDate on, double reachedAge) {
    lifeStart = on;
    failureAge = Math.max(reachedAge + 1, truth.failureAge(pipe, device.hazard(), reachedAge));
    cause = truth.weighted(SampleTruth.causes(pipe));
    lives.add(new History.Life(lives.size() + 1, pipe, on, failureAge, cause));
  }

  private boolean failedBy(LocalDate day) {
    return ChronoUnit.DAYS.between(lifeStart, day) >= failureAge;
  }

  private void visit(LocalDate day) {
    if (failedBy(day)) {
      visitFailed(day);
    } else if (reducedBy(day)) {
      visits.add(new Visit(day, "reduced", cause, people.chance(0.5) ? "cleaned" : "none", null));
    } else {
      String action = List.of("none", "cleaned", "repaired").get(people.weighted(0.78, 0.18, 0.04));
      visits.add(new Visit(day, "working", "", action, null));
    }
  }

  /** A partly blocked device is seen only near its failure, and not always. */
  private boolean reducedBy(LocalDate day) {
    double daysLeft = failureAge - ChronoUnit.DAYS.between(lifeStart, day);
    return people.chance(daysLeft < 150 ? 0.12 : 0.0005);
  }

  private void visitFailed(LocalDate day) {
    String action = remedy();
    SampleTruth.Pipe design = null;
    String found = cause;
    switch (action) {
      case "cleaned", "repaired" -> goOn(day);
      case "replaced" -> {
        design = newDesign();
        pipe = design == null ? pipe : design;
        startLife(day, 0);
      }
      case "removed" -> ended = true;
      default -> {}
    }
    if (!end.isAfter(day)) {
      end = endAfter(day); // nobody ends what already lies broken
    }
    visits.add(new Visit(day, "failed", found, action, design));
  }

  private String remedy() {
    if (cause.equals("washed-out")) {
      return people.chance(0.7) ? "replaced" : "removed";
    }
    double clean = CLEANABLE.contains(cause) ? 0.55 : 0;
    List<String> actions = List.of("cleaned", "repaired", "replaced", "none", "removed");
    return actions.get(people.weighted(clean, 0.75 - clean, 0.12, 0.10, 0.03));
  }

  /** Repair does not make a device young: its age goes on. */
  private void goOn(LocalDate day) {
    double age = ChronoUnit.DAYS.between(lifeStart, day);
    failureAge = Math.max(age + 1, truth.failureAge(pipe, device.hazard(), age));
    cause = truth.weighted(SampleTruth.causes(pipe));
  }

  private SampleTruth.Pipe newDesign() {
    boolean single = pipe == SampleTruth.Pipe.SINGLE_10 || pipe == SampleTruth.Pipe.SINGLE_12;
    return single && people.chance(0.8) ? SampleTruth.Pipe.DUAL_12 : null;
  }

  /**
   * The end becomes known by the owner's own date, by a visit that finds it, or by the crew that
   * takes it out.
   */
  private void retire(String reason, LocalDate seenOn) {
    ended = true;
    int how = people.weighted(0.55, 0.3, 0.15);
    if (how == 0) {
      retiredOn = end;
      retiredReason = reason;
    } else if (how == 1) {
      visits.add(new Visit(seenOn, "retired", "", "none", null));
      retiredOn = people.chance(0.6) ? seenOn : null;
      retiredReason = retiredOn == null ? "" : reason;
    } else {
      visits.add(new Visit(seenOn, "working", "", "removed", null));
    }
  }

  private LocalDate nextDay(LocalDate from, boolean first) {
    double gap = people.lognormal(device.site().partner().medianVisitGapDays, 0.5);
    long days = Math.round(Math.max(first ? 25 : 60, Math.min(425, first ? 0.6 * gap : gap)));
    LocalDate day = from.plusDays(days);
    if (WINTER.contains(day.getMonth()) && people.chance(0.8)) {
      int year = day.getMonth() == Month.DECEMBER ? day.getYear() + 1 : day.getYear();
      return LocalDate.of(year, people.between(3, 4), people.between(5, 28));
    }
    return day;
  }
}
