package pondtally.analysis;

import java.util.List;
import java.util.Map;
import pondtally.analysis.CostLine.Payment;
import pondtally.analysis.CostLine.Stage;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Origin;

/** Contributions to cost, to benefit and cost to date, and to who paid. */
final class ContributionCosts {

  private final ClusterView cluster;
  private final AnalysisSettings settings;
  private final ContributionSink sink;

  ContributionCosts(ClusterView cluster, AnalysisSettings settings, ContributionSink sink) {
    this.cluster = cluster;
    this.settings = settings;
    this.sink = sink;
  }

  void add() {
    BenefitCluster benefit = BenefitCluster.of(cluster, settings);
    Map<String, List<DamageRules.Part>> damage = DamageRules.parts(cluster);
    for (SiteHistory site : cluster.history().sites()) {
      boolean counts = benefit.counts(site.site().siteId());
      Map<String, Double> years = DamageShare.functionalYears(site.devices());
      for (DeviceHistory device : site.devices()) {
        costs(device);
        if (counts) {
          double own = years.get(device.deviceId());
          toDate(device, own, damage.get(site.site().siteId()));
        }
      }
    }
  }

  private void costs(DeviceHistory device) {
    DeviceCost cost = cluster.costOf(device);
    Origin installed = device.install().origin();
    if (2 * device.install().installedOn() < settings.endHalfDay()) {
      add(ContributionSubject.DEVICES, device, 1, installed, Years.ALL);
      double costed = cost.built() ? 1 : 0;
      add(ContributionSubject.DEVICES_COSTED, device, costed, installed, Years.ALL);
    }
    for (CostLine line : cost.lines()) {
      if (counts(line.day())) {
        counted(device, line);
      }
      paid(device, line);
    }
    for (DeviceCost.DatedHours hours : cost.volunteerHours()) {
      if (counts(hours.day())) {
        String year = year(hours.day());
        add(ContributionSubject.VOLUNTEER_HOURS, device, hours.hours(), hours.origin(), year);
      }
    }
  }

  private boolean counts(int day) {
    return 2L * day < settings.endHalfDay();
  }

  private String year(int day) {
    return Integer.toString(settings.fiscalYears().of(day));
  }

  private void counted(DeviceHistory device, CostLine line) {
    String year = year(line.day());
    Origin row = line.origin();
    if (line.realUsd() == null) {
      add(ContributionSubject.LINES_BEFORE_INDEX, device, 1, row, year);
      add(ContributionSubject.BEFORE_INDEX_NOMINAL_USD, device, line.nominalUsd(), row, year);
      return;
    }
    add(subject(line), device, line.realUsd(), row, year);
    if (line.indexProvisional()) {
      add(ContributionSubject.LINES_INDEX_PROVISIONAL, device, 1, row, year);
      add(ContributionSubject.INDEX_PROVISIONAL_USD, device, line.realUsd(), row, year);
    }
  }

  private static ContributionSubject subject(CostLine line) {
    if (line.payment() != Payment.CASH) {
      return ContributionSubject.IN_KIND_USD;
    }
    return line.stage() == Stage.BUILD
        ? ContributionSubject.BUILD_USD
        : ContributionSubject.UPKEEP_USD;
  }

  private void toDate(DeviceHistory device, double years, List<DamageRules.Part> damage) {
    for (CostLine line : cluster.costOf(device).lines()) {
      double usd = line.realUsd();
      add(ContributionSubject.TO_DATE_COST_USD, device, usd, line.origin(), null);
    }
    for (DamageRules.Part part : damage) {
      double usd = part.yearlyUsd() * years;
      add(ContributionSubject.TO_DATE_BENEFIT_USD, device, usd, part.origin(), null);
    }
  }

  private void paid(DeviceHistory device, CostLine line) {
    FundingRows.shares(line.payment(), line.payer(), line.matchFor())
        .forEach(
            (subject, funder) ->
                sink.payment(
                    subject, device, line.nominalUsd(), line.origin(), line.day(), funder));
  }

  private void add(
      ContributionSubject subject,
      DeviceHistory device,
      double amount,
      Origin origin,
      String year) {
    sink.device(subject, device, cluster.groupsOf(device), amount, origin, year, null);
  }
}
