package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;
import pondtally.history.FailureDating;
import pondtally.history.FailureDefinition;

class SettingsFileTest {

  @TempDir private Path folder;

  private ProgramSettings read(String yaml) throws IOException {
    Files.writeString(folder.resolve("program.yaml"), yaml);
    return SettingsFile.read(folder);
  }

  private String error(String yaml) {
    UserError error = assertThrows(UserError.class, () -> read(yaml));
    assertEquals(3, error.exitCode());
    return error.getMessage();
  }

  @Test
  void everythingHasADefault() {
    ProgramSettings settings = SettingsFile.read(folder);
    assertTrue(settings.asOf().isEmpty());
    assertEquals(8, settings.watershedDigits());
    assertEquals(FailureDefinition.FAILED, settings.failure());
    assertEquals(FailureDating.INTERVAL, settings.failureDated());
    assertEquals(0.07, settings.discountRate(), 0);
    assertTrue(settings.volunteerRateUsd().isEmpty());
  }

  @Test
  void settingsAreRead() throws IOException {
    ProgramSettings settings =
        read(
            """
            region: Upper Tamble
            as_of: 2025-12-31
            period: {from: 2024-07-01, to: 2025-06-30}
            failure: failed-or-reduced
            failure_dated: discovery
            volunteer_rate_usd: 33.49
            """);
    assertEquals("Upper Tamble", settings.region());
    assertEquals(LocalDate.of(2025, 12, 31).toEpochDay(), settings.asOf().getAsInt());
    assertEquals(LocalDate.of(2024, 7, 1).toEpochDay(), settings.periodFrom().getAsInt());
    assertEquals(FailureDefinition.FAILED_OR_REDUCED, settings.failure());
    assertEquals(FailureDating.DISCOVERY, settings.failureDated());
    assertEquals(33.49, settings.volunteerRateUsd().getAsDouble(), 0);
  }

  @Test
  void mistakesAreNamed() {
    assertTrue(error("regoin: x\n").contains("`regoin` is not a setting"));
    assertTrue(error("as_of: 31/12/2025\n").contains("expected a date such as 2025-12-31"));
    assertTrue(error("discount_rate: 7\n").contains("expected a number from 0.0 to 0.2"));
    assertTrue(error("failure: broken\n").contains("one of failed, failed-or-reduced"));
    assertTrue(
        error("period: {from: 2025-02-01, to: 2025-01-01}\n").contains("ends before it begins"));
    assertTrue(error("region: [\n").contains("not valid YAML"));
    assertTrue(error("- a list\n").contains("`key: value` lines"));
    assertTrue(error("watershed_digits: 40\n").contains("a whole number from 2 to 12"));
  }
}
