package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pondtally.analysis.CostLine.Stage;
import pondtally.history.DeviceHistory;
import pondtally.history.SiteHistory;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;

/**
 * What the parts of a device cost in this program, from devices with recorded lines, and the
 * devices whose own building cost is unknown. Dollars of the base year.
 */
public final class EstimatedTally implements Serializable {

  private static final long serialVersionUID = 1;

  /** A device whose building cost is unknown. */
  record Unknown(Install design, List<GroupKey> groups) implements Serializable {}

  private record Part(EstimatedUnit unit, String variant) implements Serializable {}

  private final Map<Part, EstimatedMedian> medians = new HashMap<>();
  private final List<Unknown> unknown = new ArrayList<>();

  /** Adds the devices of a cluster. */
  public void add(ClusterView cluster) {
    Map<Origin, MaterialLine> materials = new HashMap<>();
    cluster.history().records().materials().forEach(line -> materials.put(line.origin(), line));
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        DeviceCost cost = cluster.costOf(device);
        if (cost.built()) {
          learn(device.install(), parts(device.install(), cost, materials));
        } else {
          unknown.add(new Unknown(device.install(), cluster.groupsOf(device)));
        }
      }
    }
  }

  /** Recorded building dollars by part; none where no line tells what was bought. */
  private static Map<EstimatedUnit, Double> parts(
      Install design, DeviceCost cost, Map<Origin, MaterialLine> materials) {
    Map<EstimatedUnit, Double> parts = new EnumMap<>(EstimatedUnit.class);
    boolean itemized = false;
    for (CostLine line : cost.lines()) {
      if (line.stage() != Stage.BUILD || line.realUsd() == null) {
        continue;
      }
      MaterialLine material = materials.get(line.origin());
      itemized |= material != null;
      if (material != null) {
        parts.merge(EstimatedUnit.of(material.item()), line.realUsd(), Double::sum);
      } else if (line.origin().equals(design.origin())) {
        parts.merge(EstimatedUnit.WORK, line.realUsd(), Double::sum);
      }
    }
    return itemized ? parts : Map.of();
  }

  private void learn(Install design, Map<EstimatedUnit, Double> parts) {
    parts.forEach(
        (unit, usd) -> {
          Double quantity = unit.quantity(design);
          if (quantity != null && quantity > 0) {
            median(new Part(unit, unit.variant(design))).add(usd / quantity);
          }
        });
  }

  private EstimatedMedian median(Part part) {
    return medians.computeIfAbsent(part, p -> new EstimatedMedian());
  }

  /** Adds what another tally counted. */
  public void merge(EstimatedTally other) {
    other.medians.forEach((part, more) -> median(part).merge(more));
    unknown.addAll(other.unknown);
  }

  /** Devices whose building cost is unknown. */
  List<Unknown> unknown() {
    return unknown;
  }

  /**
   * Median unit costs times the quantities of a design; empty where its record does not tell a
   * quantity, or where fewer than three devices tell what a unit costs.
   */
  OptionalDouble estimateUsd(Install design) {
    double sum = 0;
    for (EstimatedUnit unit : EstimatedUnit.values()) {
      Double quantity = unit.quantity(design);
      if (quantity == null) {
        return OptionalDouble.empty();
      }
      if (quantity > 0) {
        EstimatedMedian median = medians.get(new Part(unit, unit.variant(design)));
        OptionalDouble cost = median == null ? OptionalDouble.empty() : median.value();
        if (cost.isEmpty()) {
          return OptionalDouble.empty();
        }
        sum += quantity * cost.getAsDouble();
      }
    }
    return OptionalDouble.of(sum);
  }
}
