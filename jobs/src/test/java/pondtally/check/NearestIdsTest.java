package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NearestIdsTest {

  private static String nearest(String unknown, String... known) {
    return NearestIds.of(List.of(known)).suggestions(List.of(unknown)).getOrDefault(unknown, "");
  }

  @Test
  void marksCaseSpacesAndLeadingZerosComeFirst() {
    assertEquals("NW-012", nearest("nw 12", "NW-012", "NW-12B", "NW-112"));
    assertEquals("NW-012", nearest("NW012", "NW-012", "NW0121"));
    assertEquals("NW-012", nearest("NW-0012", "NW-012", "NW-0013"));
    assertEquals("7", nearest("007", "7", "70"));
    assertEquals("Elm Brook 3", nearest("elm_brook-03", "Elm Brook 3", "Elm Brook 30"));
  }

  @Test
  void twoThatReadAlikeAreBothNamed() {
    assertEquals("NW-12 or nw12", nearest("NW 12", "NW-12", "nw12"));
  }

  @Test
  void zerosWithinANumberAreNoPadding() {
    assertEquals("", nearest("A100", "A1", "B2"));
    assertEquals("100", NearestIds.plain("0100"));
    assertEquals("a10b2", NearestIds.plain("A-010 b.02"));
    assertEquals("0", NearestIds.plain("000"));
  }

  @Test
  void oneSlipOfEachKind() {
    assertEquals("SITE-A4", nearest("SITE-4A", "SITE-A4", "SITE-B9")); // exchanged
    assertEquals("MILLRUN", nearest("MILRUN", "MILLRUN", "OTHER")); // missing
    assertEquals("MILLRUN", nearest("MILLLRUN", "MILLRUN", "OTHER")); // too many
    assertEquals("NW-012", nearest("NW-O12", "NW-012", "SE-777")); // letter O for zero
  }

  @Test
  void fewerSlipsWin() {
    assertEquals("ALDER", nearest("ALDR", "ALDER", "ALBR77"));
    assertEquals("ALDERBROOK", nearest("ALDERBROKO", "ALDERBROOK", "ALDERBRO"));
  }

  @Test
  void twoSlipsOnlyInIdsOfFiveOrMore() {
    assertEquals("HOLLOW", nearest("HALLOV", "HOLLOW"));
    assertEquals("", nearest("AB12", "AC13"));
    assertEquals("", nearest("A1", "A2"));
    assertEquals("", nearest("HOLLOW", "HALLXX7"));
  }

  @Test
  void twoEquallyNearAreBothNamedAndThreeSayNothing() {
    assertEquals("NW-013 or NW-023", nearest("NW-033", "NW-013", "NW-023", "SE-999"));
    assertEquals("", nearest("NW-033", "NW-013", "NW-023", "NW-043"));
  }

  @Test
  void marksAloneAreLikeNothing() {
    assertEquals("", nearest("--", "..", "A"));
  }

  @Test
  void manyUnknownIdsAtOnce() {
    assertEquals(
        Map.of("d-7", "D7", "MILRUN", "MILLRUN"),
        NearestIds.of(List.of("MILLRUN", "D7", "D8")).suggestions(List.of("d-7", "MILRUN", "ZZZ")));
  }

  @Test
  void thousandsOfUnknownIdsAreAnotherWayOfWriting() {
    List<String> unknown = IntStream.range(0, 2001).mapToObj(i -> "north-" + i).toList();
    Map<String, String> found =
        NearestIds.of(List.of("North 7", "north-9999")).suggestions(unknown);
    assertEquals(Map.of("north-7", "North 7"), found);
  }

  /** Against the definition: every known string compared in full, over a small alphabet. */
  @Test
  void walkAgreesWithComparingEveryPair() {
    Random random = new Random(20251231);
    for (int round = 0; round < 300; round++) {
      List<String> known = IntStream.range(0, 40).mapToObj(i -> word(random)).toList();
      String id = word(random);
      String[] sorted = known.stream().sorted().distinct().toArray(String[]::new);
      assertEquals(nearestByDefinition(known, id, 2), new SlipSearch(sorted, id).nearest(2), id);
    }
  }

  private static String word(Random random) {
    StringBuilder word = new StringBuilder();
    int length = random.nextInt(9);
    for (int i = 0; i < length; i++) {
      word.append("abc".charAt(random.nextInt(3)));
    }
    return word.toString();
  }

  private static TreeSet<String> nearestByDefinition(List<String> known, String id, int limit) {
    TreeSet<String> best = new TreeSet<>();
    int smallest = limit;
    for (String candidate : known) {
      int distance = distance(candidate, id);
      if (distance < smallest) {
        best.clear();
        smallest = distance;
      }
      if (distance <= smallest) {
        best.add(candidate);
      }
    }
    return best;
  }

  /** By recursion on the last letters, as the distance is defined. */
  private static int distance(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String a1 = a.substring(0, a.length() - 1);
    String b1 = b.substring(0, b.length() - 1);
    boolean same = a.charAt(a1.length()) == b.charAt(b1.length());
    List<Integer> ways = new ArrayList<>();
    if (same) {
      return distance(a1, b1);
    }
    ways.add(distance(a1, b1) + 1);
    ways.add(distance(a1, b) + 1);
    ways.add(distance(a, b1) + 1);
    boolean exchanged =
        !a1.isEmpty()
            && !b1.isEmpty()
            && a.charAt(a1.length()) == b1.charAt(b1.length() - 1)
            && a1.charAt(a1.length() - 1) == b.charAt(b1.length());
    if (exchanged) {
      ways.add(distance(a1.substring(0, a1.length() - 1), b1.substring(0, b1.length() - 1)) + 1);
    }
    return ways.stream().min(Integer::compare).orElseThrow();
  }
}
