package pondtally.stats;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Robust variance of a {@link MeanCumulative}: Σ over clusters of ψ², with ψ(t) the sum over a
 * cluster's devices and event times u ≤ t of Y(u)/n(u)·(d − D(u)/n(u)); Y whether the device is at
 * risk, d its own events, D all events among n at risk. Source: Lawless &amp; Nadeau 1995; with one
 * device to a cluster it is theirs, with more it also holds where devices of a cluster fail
 * together. Needs many clusters; with few it is too small.
 *
 * <p>The second of two passes, mergeable and the same to the last bit in any order. Between its own
 * events and ends ψ is C − m·B(t), with B(t) = Σ D/n² and m devices at risk, so that a cluster only
 * adds C², C·m and m² where one of them changes, whatever the number of rows. Values are scaled by
 * the number of devices before {@link ExactSum}'s rounding.
 */
public final class RepeatSpread implements Serializable {
  private static final long serialVersionUID = 1;
  private static final int PARTS = 3;

  private final double scale;
  private final double[] times;
  private final double[] perEvent;
  private final double[] drift;
  private final ExactCells changes;

  private RepeatSpread(MeanCumulative mean) {
    int rows = mean.rows();
    this.scale = mean.devices();
    this.times = new double[rows];
    this.perEvent = new double[rows];
    this.drift = new double[rows];
    this.changes = new ExactCells(PARTS * rows);
    for (int row = 0; row < rows; row++) {
      times[row] = mean.time(row);
      perEvent[row] = scale / mean.atRisk(row);
      drift[row] = scale * mean.poissonVariance(row);
    }
  }

  static RepeatSpread of(MeanCumulative mean) {
    return new RepeatSpread(mean);
  }

  /**
   * Adds one cluster: all devices that may fail together, such as those of one pond. Returns this.
   *
   * @param devices among those of the first pass
   * @throws IllegalArgumentException for an event that the first pass did not see
   */
  public RepeatSpread add(List<RepeatHistory> devices) {
    List<Change> cluster = new ArrayList<>();
    for (RepeatHistory device : devices) {
      addSpan(cluster, device);
      for (double time : device.eventTimes()) {
        int row = rowAtOrBefore(time);
        if (row < 0 || times[row] != time) {
          throw new IllegalArgumentException("event at " + time + " was not in the first pass");
        }
        cluster.add(new Change(row, perEvent[row], 0));
      }
    }
    cluster.sort(Change.ORDER);
    addSteps(cluster);
    return this;
  }

  private void addSpan(List<Change> cluster, RepeatHistory device) {
    int before = rowAtOrBefore(device.entry());
    int last = rowAtOrBefore(device.exit());
    if (before < last) {
      cluster.add(new Change(before + 1, before < 0 ? 0 : drift[before], 1));
      cluster.add(new Change(last + 1, -drift[last], -1));
    }
  }

  private void addSteps(List<Change> cluster) {
    double constant = 0;
    int atRisk = 0;
    for (int i = 0; i < cluster.size(); i++) {
      Change change = cluster.get(i);
      constant += change.constant;
      atRisk += change.atRisk;
      boolean stepEnds = i + 1 == cluster.size() || cluster.get(i + 1).row > change.row;
      if (stepEnds && change.row < times.length) {
        int end = i + 1 == cluster.size() ? times.length : cluster.get(i + 1).row;
        addStep(change.row, end, constant, atRisk);
      }
    }
  }

  private void addStep(int from, int to, double constant, double atRisk) {
    addPart(0, from, to, constant * constant);
    addPart(1, from, to, constant * atRisk);
    addPart(2, from, to, atRisk * atRisk);
  }

  private void addPart(int part, int from, int to, double value) {
    if (value == 0) {
      return;
    }
    changes.add(cell(from, part), new ExactSum().add(value));
    if (to < times.length) {
      changes.add(cell(to, part), new ExactSum().add(value, -1));
    }
  }

  /** The parts of a row lie beside each other, since they change together. */
  private static int cell(int row, int part) {
    return PARTS * row + part;
  }

  /** Adds all clusters of another second pass over the same first. Returns this. */
  public RepeatSpread merge(RepeatSpread other) {
    if (other.scale != scale || other.times.length != times.length) {
      throw new IllegalArgumentException("second passes over different first passes");
    }
    changes.merge(other.changes);
    return this;
  }

  /** Robust variance of M at each row. */
  public double[] variances() {
    ExactCells sums = changes.copy();
    double[] variances = new double[times.length];
    for (int row = 0; row < times.length; row++) {
      for (int part = 0; part < PARTS && row > 0; part++) {
        sums.addCell(cell(row, part), cell(row - 1, part));
      }
      double b = drift[row];
      double squares =
          sums.result(cell(row, 0))
              - 2 * b * sums.result(cell(row, 1))
              + b * b * sums.result(cell(row, 2));
      variances[row] = Math.max(0, squares) / (scale * scale);
    }
    return variances;
  }

  private int rowAtOrBefore(double t) {
    int at = Arrays.binarySearch(times, t);
    return at >= 0 ? at : -at - 2;
  }

  /** From a row on, ψ's constant and the number of devices at risk change by so much. */
  private record Change(int row, double constant, int atRisk) {
    static final Comparator<Change> ORDER =
        Comparator.comparingInt(Change::row)
            .thenComparingDouble(Change::constant)
            .thenComparingInt(Change::atRisk);
  }
}
