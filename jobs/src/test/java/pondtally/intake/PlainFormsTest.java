package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.SplittableRandom;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;

/** The fast readers of plain dates and numbers, against the Java library and Apache POI. */
class PlainFormsTest {

  @Test
  void everyDayOfTwoCenturiesIsThatOfTheJavaLibrary() {
    LocalDate end = LocalDate.of(2101, 1, 1);
    for (LocalDate day = LocalDate.of(1899, 1, 1); day.isBefore(end); day = day.plusDays(1)) {
      assertEquals((int) day.toEpochDay(), IsoDay.parse(day.toString()));
    }
  }

  @Test
  void daysThatAreNotAreThoseOfTheJavaLibrary() {
    for (int year : new int[] {1900, 2000, 2023, 2024, 2100}) {
      for (int month = 0; month <= 13; month++) {
        for (int day = 0; day <= 32; day++) {
          assertEquals(library(year, month, day), IsoDay.of(year, month, day));
        }
      }
    }
  }

  private static int library(int year, int month, int day) {
    try {
      return (int) LocalDate.of(year, month, day).toEpochDay();
    } catch (DateTimeException e) {
      return IsoDay.NONE;
    }
  }

  @Test
  void otherFormsAreNoIsoDates() {
    for (String text :
        new String[] {"", "2024-1-01", "2024/01/01", "2024-01-0a", "2024-01-:1", "+024-01-01"}) {
      assertEquals(IsoDay.NONE, IsoDay.parse(text), text);
    }
  }

  @Test
  void numbersAreThoseOfTheJavaLibraryToTheLastBit() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 200_000; i++) {
      String digits = Long.toString(random.nextLong(1L << (1 + random.nextInt(62))));
      int point = random.nextInt(digits.length() + 1);
      String text =
          (random.nextBoolean() ? "-" : "")
              + digits.substring(0, point)
              + (random.nextInt(3) > 0 ? "." : "")
              + digits.substring(point);
      double expected = Double.parseDouble(text);
      assertEquals(expected, PlainNumber.parse(text), 0, text);
    }
  }

  @Test
  void otherFormsAreNoPlainNumbers() {
    for (String text :
        new String[] {"-", ".", "1.2.3", "1e3", "0x1", "NaN", "1 2", "١", "--1", "1-"}) {
      assertTrue(Double.isNaN(PlainNumber.parse(text)), text);
    }
  }

  /** ISO/IEC 29500-1, 18.17.4.1, as Apache POI has it. */
  @Test
  void serialNumbersAreThoseOfPoi() {
    for (int serial = 61; serial < 80_000; serial += 7) {
      assertEquals(
          DateUtil.getLocalDateTime(serial, false).toLocalDate().toString(),
          SerialDay.text(serial, false));
      assertEquals(
          DateUtil.getLocalDateTime(serial, true).toLocalDate().toString(),
          SerialDay.text(serial, true));
    }
    assertEquals("2024-05-01 06:30", SerialDay.text(45413 + 6.5 / 24, false));
    assertEquals("1900-02-28", SerialDay.text(59, false));
  }
}
