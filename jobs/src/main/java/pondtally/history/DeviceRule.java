package pondtally.history;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pondtally.record.Install;
import pondtally.record.Visit;

/** Puts the history of one device together from its install rows and visits. */
final class DeviceRule {

  private DeviceRule() {}

  /**
   * @param installs at least one, in any order
   * @param visits in any order
   */
  static DeviceHistory history(List<Install> installs, List<Visit> visits, HistoryRules rules) {
    List<Service> services = ServiceRule.lives(installs, SameDayRule.inspections(visits));
    List<LifeRule.Observed> observed = observe(services, rules.failure());
    Service last = services.get(services.size() - 1);
    DeviceState state = StateRule.of(services, rules);
    return new DeviceHistory(
        services.get(0).design(),
        entryOn(observed),
        lastVisitOn(services),
        last.endedOn(),
        last.endReason(),
        EndRule.failedAtEnd(last, rules.failure()),
        observed.stream().map(LifeRule.Observed::life).toList(),
        failures(observed),
        state,
        united(observed, LifeRule.Observed::verified),
        united(observed, LifeRule.Observed::functional),
        knownGoodOn(observed, state, rules));
  }

  private static List<LifeRule.Observed> observe(
      List<Service> services, FailureDefinition failure) {
    List<LifeRule.Observed> observed = new ArrayList<>(services.size());
    Install first = services.get(0).design();
    int leftOn = Integer.MIN_VALUE;
    for (Service service : services) {
      // Lives do not overlap: a failure found and put right on the day of entry takes one day.
      int openedOn = Math.max(service.openedOn(), leftOn);
      observed.add(LifeRule.observe(observed.size(), service, openedOn, first, failure));
      leftOn = observed.get(observed.size() - 1).life().leftOn();
    }
    return observed;
  }

  /** Entry of the first life that was followed; where none was, of the last. */
  private static int entryOn(List<LifeRule.Observed> observed) {
    for (LifeRule.Observed one : observed) {
      if (one.life().followed()) {
        return one.life().entryOn();
      }
    }
    return observed.get(observed.size() - 1).life().entryOn();
  }

  private static Integer lastVisitOn(List<Service> services) {
    for (int i = services.size() - 1; i >= 0; i--) {
      if (services.get(i).lastVisitOn() != null) {
        return services.get(i).lastVisitOn();
      }
    }
    return null;
  }

  private static List<Failure> failures(List<LifeRule.Observed> observed) {
    if (observed.size() == 1) {
      return observed.get(0).failures();
    }
    return observed.stream().flatMap(one -> one.failures().stream()).toList();
  }

  private static Stretches united(
      List<LifeRule.Observed> observed, Function<LifeRule.Observed, Stretches> part) {
    return observed.size() == 1
        ? part.apply(observed.get(0))
        : Stretches.union(observed.stream().map(part).toList());
  }

  private static Integer knownGoodOn(
      List<LifeRule.Observed> observed, DeviceState state, HistoryRules rules) {
    if (state == DeviceState.FAILED || state == DeviceState.RETIRED) {
      return null;
    }
    int knownGoodOn = observed.get(observed.size() - 1).knownGoodOn();
    return Math.min(knownGoodOn, HalfDays.startOf(rules.asOf()));
  }
}
