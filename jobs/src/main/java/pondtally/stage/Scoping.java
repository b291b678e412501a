package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import pondtally.analysis.AnalysisSettings;
import pondtally.analysis.ClusterView;
import pondtally.analysis.CostRules;
import pondtally.analysis.FunderTally;
import pondtally.analysis.FundingRows;
import pondtally.analysis.FundingTally;
import pondtally.analysis.Groups;
import pondtally.analysis.Scope;
import pondtally.check.KnownIds;
import pondtally.check.NearestIds;
import pondtally.check.ProgramChecks;
import pondtally.check.UserError;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Budget;

/**
 * Narrows each cluster to the scope of the report, and keeps of all clusters what the scope must
 * not narrow: who paid what part, every funder's dollars, and which ids and watersheds there are.
 */
final class Scoping implements Serializable {

  private static final long serialVersionUID = 1;
  private static final int NAMED = 8;

  private final Scope scope;
  private final FunderTally funders;
  private final FundingTally funding = new FundingTally();
  private final TreeSet<String> watersheds = new TreeSet<>();
  private final List<String> siteIds = new ArrayList<>();
  private final List<String> pondIds = new ArrayList<>();
  private final List<String> deviceIds = new ArrayList<>();
  private long devicesInScope;

  Scoping(Scope scope, AnalysisSettings settings) {
    this.scope = scope;
    funders = new FunderTally(settings);
  }

  /** The part of a cluster that is within the scope; null where none is. */
  ClusterView of(ClusterView whole, Groups groups, CostRules costs) {
    if (scope.isAll()) {
      funders.add(whole);
      return whole;
    }
    ClusterView here = new Scope(null, scope.watershed()).of(whole, groups, costs);
    if (here != null) {
      funders.add(here);
    }
    funding.add(whole);
    for (SiteHistory site : whole.history().sites()) {
      siteIds.add(site.site().siteId());
      pondIds.add(site.pondId());
      if (site.site().watershed() != null) {
        watersheds.add(site.site().watershed());
      }
      site.devices().stream().map(DeviceHistory::deviceId).forEach(deviceIds::add);
    }
    ClusterView narrower = scope.of(whole, groups, costs);
    if (narrower != null) {
      devicesInScope += narrower.history().sites().stream().mapToInt(s -> s.devices().size()).sum();
    }
    return narrower;
  }

  void merge(Scoping other) {
    funders.merge(other.funders);
    funding.merge(other.funding);
    watersheds.addAll(other.watersheds);
    siteIds.addAll(other.siteIds);
    pondIds.addAll(other.pondIds);
    deviceIds.addAll(other.deviceIds);
    devicesInScope += other.devicesInScope;
  }

  /** Who paid what part; a report about one funder tells that one's part alone. */
  List<FunderTally.Row> shares() {
    return funders.rows().stream()
        .filter(row -> scope.funder() == null || row.funder().equals(scope.funder()))
        .toList();
  }

  /** Every id of the program, to suggest from; {@code unscoped} where nothing was narrowed. */
  KnownIds known(KnownIds unscoped) {
    return scope.isAll()
        ? unscoped
        : new KnownIds(siteIds, pondIds.stream().distinct().toList(), deviceIds);
  }

  /**
   * The funding rows within the scope. A funder's rows count its match wherever it was given.
   * Awards and the program's own expenses are not divided among watersheds: there they are left
   * out.
   */
  List<FundingRows.Row> funding(
      FundingTally scoped, ProgramChecks.Checked program, AnalysisSettings settings) {
    if (scope.funder() != null) {
      return FundingRows.rows(funding, program.budgets(), program.expenses(), settings).stream()
          .filter(row -> row.funder().equals(scope.funder()))
          .toList();
    }
    return scope.watershed() == null
        ? FundingRows.rows(scoped, program.budgets(), program.expenses(), settings)
        : FundingRows.rows(scoped, List.of(), List.of(), settings);
  }

  /**
   * @throws UserError when the funder or watershed is not in the records, naming the nearest one
   */
  void requireKnown(List<Budget> budgets) {
    if (scope.funder() != null && !funders.funders().contains(scope.funder())) {
      List<String> names =
          Stream.concat(funders.funders().stream(), budgets.stream().map(Budget::funder))
              .distinct()
              .sorted()
              .toList();
      throw unknown("--funder", "funder who paid cash for a device", scope.funder(), names);
    }
    if (scope.watershed() != null
        && watersheds.stream().noneMatch(code -> code.startsWith(scope.watershed()))) {
      throw unknown("--watershed", "watershed", scope.watershed(), watersheds);
    }
    if (!scope.isAll() && devicesInScope == 0) {
      throw UserError.usage(
          "No device is within the scope of the report. Leave out --funder or --watershed, or name another.");
    }
  }

  private static UserError unknown(
      String option, String what, String name, Collection<String> known) {
    String near = NearestIds.of(known).suggestions(List.of(name)).get(name);
    String hint =
        near != null
            ? "The nearest is %s.".formatted(near)
            : "There are: %s%s."
                .formatted(
                    String.join(", ", known.stream().limit(NAMED).toList()),
                    known.size() > NAMED ? " and %s more".formatted(known.size() - NAMED) : "");
    return UserError.usage(
        "%s: the records name no %s \"%s\". %s".formatted(option, what, name, hint));
  }
}
