package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Under a default locale whose digits and separators differ from ours. */
class NumberTextTest {

  private final Locale before = Locale.getDefault();

  @BeforeEach
  void arabicMachine() {
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
  }

  @AfterEach
  void restore() {
    Locale.setDefault(before);
  }

  @Test
  void countsAgreeWithTheirNoun() {
    assertEquals("1,234,567", NumberText.count(1_234_567));
    assertEquals("1\u00a0failure", NumberText.count(1, "failures"));
    assertEquals("0\u00a0failures", NumberText.count(0, "failures"));
    assertEquals("1\u00a0life", NumberText.count(1, "lives"));
    assertEquals("1\u00a0property", NumberText.count(1, "properties"));
    assertEquals("2\u00a0device-years", NumberText.count(2, "device-years"));
  }

  @Test
  void dollarsAreWholeAndCarryTheirSignInFront() {
    assertEquals("$1,235", NumberText.dollars(1234.5));
    assertEquals("\u2212$1,235", NumberText.dollars(-1234.5));
    assertEquals("$0", NumberText.dollars(-0.2));
  }

  @Test
  void onlyNothingIsZeroAndOnlyEverythingIsAHundred() {
    assertEquals("0%", NumberText.percent(0));
    assertEquals("under\u00a00.1%", NumberText.percent(0.0004));
    assertEquals("8.4%", NumberText.percent(0.084));
    assertEquals("10%", NumberText.percent(0.0996));
    assertEquals("84%", NumberText.percent(0.842));
    assertEquals("over\u00a099%", NumberText.percent(0.998));
    assertEquals("100%", NumberText.percent(1));
    assertEquals("0\u00a0of\u00a0100", NumberText.ofHundred(0));
    assertEquals("fewer than\u00a01\u00a0of\u00a0100", NumberText.ofHundred(0.004));
    assertEquals("more than\u00a099\u00a0of\u00a0100", NumberText.ofHundred(0.997));
    assertEquals("100\u00a0of\u00a0100", NumberText.ofHundred(1));
  }

  @Test
  void measuresKeepTheirUnit() {
    assertEquals("1\u00a0year", NumberText.years(1));
    assertEquals("2.5\u00a0years", NumberText.years(2.5));
    assertEquals("12.3\u00a0acres", NumberText.acres(12.34));
    assertEquals("345\u00a0acres", NumberText.acres(345.4));
    assertEquals("1.0\u00a0acre", NumberText.acres(0.98));
    assertEquals("\u22120.4\u00a0acre-years", NumberText.acreYears(-0.4));
    assertEquals("2.7", NumberText.rate(2.737));
    assertEquals("0.85", NumberText.ratio(0.849));
  }

  @Test
  void missingIsAWord() {
    assertEquals("not known", Missing.orNotKnown(OptionalDouble.empty(), NumberText::dollars));
    assertEquals("$7", Missing.orNotKnown(OptionalDouble.of(7), NumberText::dollars));
  }

  @Test
  void datesAreEnglishEverywhere() {
    assertEquals("March\u00a012,\u00a02025", DateText.readable("2025-03-12"));
    assertEquals("not known", DateText.readable(""));
  }
}
