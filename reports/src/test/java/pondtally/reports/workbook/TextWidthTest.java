package pondtally.reports.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextWidthTest {

  /**
   * Expected: advance widths of Liberation Sans 2 Regular, whose widths are those of the workbook's
   * font, in widths of its digit, measured with the font itself. Never narrower, or text is cut; at
   * most a twelfth wider.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "32.2 | fewer than 5 devices: shown, not ranked",
        "31.2 | brackwen-farms/brackwen-records.xlsx",
        "52.8 | Upper Marrowfen and Lower Quorrel Volunteer Saturday Crew AB",
        "38.9 | all; dual 12 in; no pipe; single 12 in; smooth 12 in",
        "37.2 | UPPER MARROWFEN WATERSHED TRUST",
        "10.2 | illicit filling till",
        "11.0 | 99010101010"
      })
  void lettersAreWeighedAsTheyPrint(double measured, String text) {
    double width = TextWidth.of(text);
    assertTrue(width >= measured && width <= measured * 13 / 12, text + " " + width);
  }

  @ParameterizedTest
  @CsvSource({
    "one two, 20, 1",
    "fewer than five devices, 14, 2",
    "brackwen-farms/brackwen-records.xlsx, 30, 2",
    "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaa, 10, 3",
    "ab aaaaaaaaaaaaaaaaaaaa ab, 10, 4",
    "北部水系横断道路暗渠, 18, 1",
    "北部水系横断道路暗渠, 17, 2"
  })
  void linesBreakAfterSpacesHyphensAndSlashes(String text, double room, int lines) {
    assertEquals(lines, TextWidth.lines(text, room), text);
  }

  @ParameterizedTest
  @CsvSource({"short, 10, false", "just too long for it, 12, true", "北部水系横断道, 12, true"})
  void aTextThatDoesNotFitIsTooLong(String text, int width, boolean tooLong) {
    assertEquals(tooLong, Widths.isTooLong(text, width));
    assertFalse(Widths.isTooLong("", width));
  }
}
