package pondtally.analysis;

import java.util.List;
import java.util.function.Consumer;
import pondtally.history.DeviceHistory;
import pondtally.record.Origin;

/** Takes the contributions of one cluster; one of zero says nothing and is left out. */
final class ContributionSink {

  private final Consumer<Contribution> into;
  private List<GroupKey> lastKeys;
  private ContributionGroups lastGroups;

  ContributionSink(Consumer<Contribution> into) {
    this.into = into;
  }

  /** What a row adds to a figure of a device. */
  void device(
      ContributionSubject subject,
      DeviceHistory device,
      List<GroupKey> keys,
      double amount,
      Origin origin,
      String year,
      String part) {
    add(
        new Contribution(
            subject,
            device.siteId(),
            device.deviceId(),
            amount,
            origin,
            0,
            year,
            part,
            groups(keys)));
  }

  /** What a row adds to a figure of a site, a pond or a property. */
  void site(
      ContributionSubject subject,
      String siteId,
      ContributionGroups groups,
      Double amount,
      Origin origin,
      String year,
      String part) {
    if (amount != null) {
      add(new Contribution(subject, siteId, null, amount, origin, 0, year, part, groups));
    }
  }

  /** What a row adds to what a funder paid or may claim. */
  void payment(
      ContributionSubject subject,
      DeviceHistory device,
      double nominalUsd,
      Origin origin,
      int day,
      String funder) {
    add(
        new Contribution(
            subject,
            device.siteId(),
            device.deviceId(),
            nominalUsd,
            origin,
            day,
            null,
            funder,
            ContributionGroups.NONE));
  }

  /** The contributions of a device come one after another. */
  private ContributionGroups groups(List<GroupKey> keys) {
    if (keys != lastKeys) {
      lastKeys = keys;
      lastGroups = ContributionGroups.of(keys);
    }
    return lastGroups;
  }

  private void add(Contribution contribution) {
    if (contribution.amount() != 0) {
      into.accept(contribution);
    }
  }
}
