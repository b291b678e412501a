package pondtally.analysis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.analysis.GroupKey.Grouping;

class ClusterPartsTest {

  private static final int MANY = 20_000;

  /** Every kind of empty and filled component turns up in some cluster. */
  private static ClusterPart part(int i) {
    GroupKey watershed = new GroupKey(Grouping.WATERSHED, "0101000" + i % 7);
    Effect shared =
        new Effect(
            i % 2 == 0,
            i / 3.0,
            i / 2.0,
            i % 4,
            i / 365.25,
            i % 3 == 0 ? null : i / 7.0,
            i % 5 == 0 ? null : -i / 9.0,
            i / 11.0);
    Effect other = new Effect(true, 1, 2, 3, 4, null, null, 5);
    List<EffectPart> effects =
        List.of(
            new EffectPart(GroupKey.ALL, shared),
            new EffectPart(new GroupKey(Grouping.PIPE, "12 in"), other),
            new EffectPart(watershed, shared));
    List<LifePart> lives = new ArrayList<>();
    for (int k = 0; k < i % 3; k++) {
      boolean failed = k == 1;
      lives.add(
          new LifePart(
              new Covariates("12 in", "pond-leveler", watershed.group(), "20" + i % 20, "met"),
              new FollowUp(k / 2.0, 100.5 + i, failed ? 200 + i : Double.POSITIVE_INFINITY),
              150.25 + i,
              failed));
    }
    double[] failures = new double[i % 4];
    Arrays.setAll(failures, k -> 10.5 * k + i);
    return new ClusterPart(
        "site " + i + " \u00e9",
        effects,
        lives,
        List.of(new RepeatPart(List.of(GroupKey.ALL, watershed), 0.5, 400 + i, failures)));
  }

  private static void assertSamePart(ClusterPart expected, ClusterPart read) {
    assertEquals(expected.cluster(), read.cluster());
    assertEquals(expected.effects(), read.effects());
    assertEquals(expected.lives(), read.lives());
    RepeatPart device = expected.devices().get(0);
    RepeatPart readDevice = read.devices().get(0);
    assertEquals(device.groups(), readDevice.groups());
    assertEquals(device.entryDays(), readDevice.entryDays());
    assertEquals(device.exitDays(), readDevice.exitDays());
    assertArrayEquals(device.failureDays(), readDevice.failureDays());
    assertEquals(expected.devices().size(), read.devices().size());
  }

  private static List<ClusterPart> all(ClusterParts parts) {
    List<ClusterPart> read = new ArrayList<>();
    parts.forEach(read::add);
    return read;
  }

  private static ClusterParts parts(int count) {
    ClusterParts parts = new ClusterParts();
    for (int i = 0; i < count; i++) {
      parts.add(part(i));
    }
    parts.close();
    return parts;
  }

  @Test
  void givesBackWhatWasAddedOverManyBlocksAndAfterItWasSent()
      throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(parts(MANY));
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      List<ClusterPart> read = all((ClusterParts) in.readObject());
      assertEquals(MANY, read.size());
      for (int i = 0; i < MANY; i++) {
        assertSamePart(part(i), read.get(i));
      }
    }
  }

  @Test
  void anEffectOfSeveralGroupsIsHeldOnce() {
    List<EffectPart> effects = all(parts(2)).get(1).effects();
    assertSame(effects.get(0).effect(), effects.get(2).effect());
  }

  @Test
  void noClusterIsNothing() {
    assertEquals(List.of(), all(parts(0)));
  }
}
