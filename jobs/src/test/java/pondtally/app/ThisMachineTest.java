package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Which machine it is: the same each time, another for another, fit for the name of a file. */
class ThisMachineTest {

  @Test
  void theNameFitsIntoThatOfAFile() {
    assertTrue(
        ThisMachine.name().matches("[A-Za-z0-9._-]{1,20}\\.[0-9a-f]{6}"), ThisMachine.name());
    assertTrue(ThisMachine.name().endsWith(ThisMachine.mark()));
    assertEquals("_.._b_r_", ThisMachine.readable(" /../b\u00fcr\u00f6 "));
    assertEquals("a".repeat(20), ThisMachine.readable("a".repeat(300)));
  }

  @Test
  void twoOfOneNameAreTold() {
    assertEquals(ThisMachine.mark("office", "1"), ThisMachine.mark("office", "1"));
    assertNotEquals(ThisMachine.mark("office", "1"), ThisMachine.mark("office", "2"));
    assertNotEquals(ThisMachine.mark("office", "1"), ThisMachine.mark("home", "1"));
  }
}
