package pondtally.analysis;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import pondtally.analysis.WorklistAnalysis.Judged;

/**
 * Where in the worklist each device stands, found with three numbers a device: the devices
 * themselves may be many and lie packed.
 */
final class WorklistOrder {

  /** Stands for what is unknown, which comes last. */
  private static final double UNKNOWN = Double.NEGATIVE_INFINITY;

  private final byte[] blocks;
  private final double[] stakes;
  private final double[] chances;

  private WorklistOrder(int devices) {
    blocks = new byte[devices];
    stakes = new double[devices];
    chances = new double[devices];
  }

  /** Places in the list of devices, the first of the worklist first. */
  static int[] of(List<WorklistDevice> devices, WorklistAnalysis analysis) {
    WorklistOrder order = new WorklistOrder(devices.size());
    int place = 0;
    for (WorklistDevice device : devices) {
      order.set(place++, analysis.judge(device));
    }
    return order.sorted(devices);
  }

  private void set(int place, Judged judged) {
    blocks[place] = (byte) judged.block().ordinal();
    stakes[place] = known(judged.atStake());
    chances[place] = known(judged.chance());
  }

  private static double known(Double value) {
    return value == null ? UNKNOWN : value;
  }

  private int[] sorted(List<WorklistDevice> devices) {
    Integer[] places = new Integer[blocks.length];
    Arrays.setAll(places, i -> i);
    Arrays.sort(places, this::compare);
    int from = 0;
    for (int to = 1; to <= places.length; to++) {
      if (to == places.length || compare(places[from], places[to]) != 0) {
        sortById(places, from, to, devices);
        from = to;
      }
    }
    return Arrays.stream(places).mapToInt(Integer::intValue).toArray();
  }

  private int compare(int a, int b) {
    int order = Byte.compare(blocks[a], blocks[b]);
    order = order != 0 ? order : Double.compare(stakes[b], stakes[a]);
    return order != 0 ? order : Double.compare(chances[b], chances[a]);
  }

  private record Tied(int place, String deviceId) {}

  /** Orders what is worth the same; each device is asked for once. */
  private static void sortById(Integer[] places, int from, int to, List<WorklistDevice> devices) {
    if (to - from < 2) {
      return;
    }
    Tied[] tied = new Tied[to - from];
    Arrays.setAll(tied, i -> new Tied(places[from + i], devices.get(places[from + i]).deviceId()));
    Arrays.sort(tied, Comparator.comparing(Tied::deviceId));
    for (int i = 0; i < tied.length; i++) {
      places[from + i] = tied[i].place();
    }
  }
}
