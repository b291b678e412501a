package pondtally.reports.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GroupTextTest {

  @ParameterizedTest
  @CsvSource({
    "all, all, all devices",
    "pipe, dual 12 in, dual-wall 12 in",
    "pipe, smooth 4.5 in, smooth-wall 4.5 in",
    "pipe, unknown, pipe not recorded",
    "pipe, none, no pipe",
    "watershed, 99010203, 99010203",
    "watershed, coarser, code too short to place",
    "pipe-in-watershed, 99010203 / dual 12 in, '99010203, dual-wall 12 in'",
    "kind, fence-and-pipe, fence and pipe",
    "build, not-met, not built to specification",
    "cohort, 2021, installed in 2021"
  })
  void groupsReadAsWords(String grouping, String group, String expected) {
    assertEquals(expected, GroupText.label(grouping, group).replace('\u00a0', ' '));
  }

  @ParameterizedTest
  @CsvSource({"fence-dammed, fence dammed", "unknown, not recorded", "'', not recorded"})
  void codesReadAsWords(String code, String expected) {
    assertEquals(expected, GroupText.words(code));
  }
}
