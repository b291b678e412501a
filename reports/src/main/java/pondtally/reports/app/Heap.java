package pondtally.reports.app;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;

/** How much memory the second Java machine gets. */
final class Heap {

  private static final long LEAST_BYTES = 2L << 30;
  private static final long BYTES_PER_INPUT_BYTE = 2;
  private static final long BASE_BYTES = 1L << 30;

  private Heap() {}

  /** Bytes for an input of that size, within what the machine has. */
  static long forInput(long inputBytes, long machineBytes) {
    long wanted = BASE_BYTES + BYTES_PER_INPUT_BYTE * inputBytes;
    return Math.min(Math.max(wanted, LEAST_BYTES), most(machineBytes));
  }

  /** The most that a run takes unasked: three quarters of the machine's memory. */
  static long most(long machineBytes) {
    return Math.max(Machine.LEAST_BYTES, machineBytes / 4 * 3);
  }

  /** Memory of this machine, or of the container it is in. */
  static long machineBytes() {
    return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getTotalMemorySize();
  }
}
