package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.history.DesignQuantities;
import pondtally.history.DeviceHistory;
import pondtally.history.PipeType;
import pondtally.history.SiteHistory;
import pondtally.record.Action;
import pondtally.record.DeviceKind;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.MaterialLine;
import pondtally.record.PipeWall;
import pondtally.record.Visit;
import pondtally.stats.ExactSum;

/**
 * What a replacement and a repair take, by pipe type: replacements from the designs of devices in
 * service, repairs from what was bought for devices after they were built and not for a
 * replacement.
 */
public final class BuyingTally implements Serializable {

  private static final long serialVersionUID = 1;

  private final SortedMap<String, Needs> needs = new TreeMap<>();

  /** Quantities of one pipe type. */
  static final class Needs implements Serializable {
    private static final long serialVersionUID = 1;
    private final Map<MaterialItem, Long> designs = new EnumMap<>(MaterialItem.class);
    private final Map<MaterialItem, ExactSum> inDesigns = new EnumMap<>(MaterialItem.class);
    private final Map<MaterialItem, ExactSum> inRepairs = new EnumMap<>(MaterialItem.class);
    private long repairs;

    private void design(MaterialItem item, double quantity) {
      designs.merge(item, 1L, Long::sum);
      inDesigns.computeIfAbsent(item, i -> new ExactSum()).add(quantity);
    }

    private void merge(Needs other) {
      other.designs.forEach((item, n) -> designs.merge(item, n, Long::sum));
      merge(inDesigns, other.inDesigns);
      merge(inRepairs, other.inRepairs);
      repairs += other.repairs;
    }

    private static void merge(Map<MaterialItem, ExactSum> own, Map<MaterialItem, ExactSum> others) {
      others.forEach((item, more) -> own.computeIfAbsent(item, i -> new ExactSum()).merge(more));
    }

    /** Mean of the designs that tell; null where none does. */
    Double perReplacement(MaterialItem item) {
      Long n = designs.get(item);
      return n == null ? null : (Double) (inDesigns.get(item).result() / n);
    }

    long repairs() {
      return repairs;
    }

    double inRepairs(MaterialItem item) {
      ExactSum sum = inRepairs.get(item);
      return sum == null ? 0 : sum.result();
    }
  }

  /** Counts the designs in service, and the repairs with what was bought for them. */
  public void add(ClusterView cluster) {
    Map<String, List<Visit>> visits = new HashMap<>();
    Map<String, List<MaterialLine>> materials = new HashMap<>();
    for (Visit visit : cluster.history().records().visits()) {
      visits.computeIfAbsent(visit.deviceId(), d -> new ArrayList<>()).add(visit);
    }
    for (MaterialLine line : cluster.history().records().materials()) {
      materials.computeIfAbsent(line.deviceId(), d -> new ArrayList<>()).add(line);
    }
    for (SiteHistory site : cluster.history().sites()) {
      for (DeviceHistory device : site.devices()) {
        Install design = device.lives().get(device.lives().size() - 1).design();
        Needs own = needs(PipeType.of(design));
        if (device.endedOn() == null) {
          addDesign(own, design);
        }
        addRepairs(
            own,
            device.install(),
            visits.getOrDefault(device.deviceId(), List.of()),
            materials.getOrDefault(device.deviceId(), List.of()));
      }
    }
  }

  private static void addDesign(Needs own, Install design) {
    boolean piped =
        design.pipeWall() != PipeWall.NONE && design.deviceKind() != DeviceKind.CULVERT_FENCE;
    if (!piped && design.pipeLengthFt() == null) {
      own.design(MaterialItem.PIPE, 0);
      own.design(MaterialItem.COUPLER, 0);
    } else if (design.pipeLengthFt() != null) {
      double section = design.sectionLengthFt() == null ? 20 : design.sectionLengthFt();
      own.design(MaterialItem.PIPE, DesignQuantities.stockLengths(design.pipeLengthFt()));
      own.design(
          MaterialItem.COUPLER,
          DesignQuantities.couplers(DesignQuantities.sections(design.pipeLengthFt(), section)));
    }
    if (design.fenceDiameterFt() != null) {
      own.design(MaterialItem.FENCE_PANEL, DesignQuantities.panels(design.fenceDiameterFt()));
    }
  }

  private static void addRepairs(
      Needs own, Install install, List<Visit> visits, List<MaterialLine> lines) {
    own.repairs += visits.stream().filter(visit -> visit.action() == Action.REPAIRED).count();
    for (MaterialLine line : lines) {
      Integer day = line.purchasedOn();
      if (day != null && day > install.installedOn() && !forReplacement(day, visits)) {
        Double quantity = quantity(line);
        if (quantity != null) {
          own.inRepairs.computeIfAbsent(line.item(), i -> new ExactSum()).add(quantity);
        }
      }
    }
  }

  /** Whether the next repair or replacement on or after a day is a replacement. */
  private static boolean forReplacement(int day, List<Visit> visits) {
    return visits.stream()
        .filter(visit -> visit.visitedOn() >= day)
        .filter(visit -> Set.of(Action.REPAIRED, Action.REPLACED).contains(action(visit)))
        .min(Comparator.comparingInt(Visit::visitedOn))
        .map(visit -> visit.action() == Action.REPLACED)
        .orElse(false);
  }

  private static Action action(Visit visit) {
    return visit.action() == null ? Action.NONE : visit.action();
  }

  /** Lengths of pipe, couplers or panels; null for other items and for units that do not say. */
  private static Double quantity(MaterialLine line) {
    String unit = line.unit() == null ? "" : line.unit().strip().toLowerCase(Locale.ROOT);
    boolean feet = Set.of("ft", "foot", "feet", "'").contains(unit);
    return switch (line.item()) {
      case PIPE -> feet ? (Double) (line.quantity() / 20) : null;
      case COUPLER, FENCE_PANEL -> feet ? null : (Double) line.quantity();
      default -> null;
    };
  }

  private Needs needs(String pipe) {
    return needs.computeIfAbsent(pipe, p -> new Needs());
  }

  /** Adds what another tally counted. */
  public void merge(BuyingTally other) {
    other.needs.forEach((pipe, more) -> needs(pipe).merge(more));
  }

  /** Quantities by pipe type. */
  SortedMap<String, Needs> needs() {
    return needs;
  }
}
