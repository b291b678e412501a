package pondtally.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import pondtally.record.ClusterRecords;

/** A cluster's histories as a whole. */
class HistoriesTest {

  @Test
  void theyKeepTheRowsTheyWereMadeFrom() {
    ClusterRecords records = RandomRows.of(5).records();
    assertSame(records, Histories.of(records, Rows.RULES).records());
  }

  @Test
  void withoutRowsThereIsNoHistory() {
    ClusterRecords none =
        new ClusterRecords(
            "s1", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(),
            List.of());
    ClusterHistory cluster = Histories.of(none, Rows.RULES);
    assertEquals(List.of(), cluster.sites());
    assertEquals(List.of(), cluster.ponds());
    assertEquals(List.of(), cluster.properties());
  }

  @Test
  void theyComeBackEqualFromTheWire() throws IOException, ClassNotFoundException {
    for (long seed = 0; seed < 50; seed++) {
      ClusterHistory cluster = RandomRows.of(seed).history();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
        out.writeObject(cluster);
      }
      try (ObjectInputStream in =
          new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
        assertEquals(cluster, in.readObject());
      }
    }
  }
}
