package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import picocli.CommandLine.TypeConversionException;

/** What a run may use of the machine. */
class MachineTest {

  private static final long GIB = 1L << 30;

  @Test
  void sizesOfMemory() {
    Machine.Size size = new Machine.Size();
    assertEquals(4 * GIB, size.convert("4g"));
    assertEquals(1500L << 20, size.convert("1500M"));
    assertEquals(2 * GIB, size.convert("2 GB"));
    assertThrows(TypeConversionException.class, () -> size.convert("4"));
    assertThrows(TypeConversionException.class, () -> size.convert("-4g"));
  }

  @Test
  void memoryGrowsWithTheInputAndStaysWithinTheMachine() {
    assertEquals(2 * GIB, Heap.forInput(0, 16 * GIB));
    assertEquals(5 * GIB, Heap.forInput(2 * GIB, 16 * GIB));
    assertEquals(12 * GIB, Heap.forInput(100 * GIB, 16 * GIB));
    assertEquals(Machine.LEAST_BYTES, Heap.forInput(100 * GIB, 1 << 20));
    assertTrue(Heap.machineBytes() > 1 << 20);
  }

  @Test
  void tooLittleIsRefused() {
    assertEquals(2, Main.run("check", "x", "--memory", "lots"));
  }
}
