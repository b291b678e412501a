package pondtally.stage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PackedRowsTest {

  /** A record with every kind of empty and filled component. */
  record Row(String name, int number, Double amount, Boolean flag) {}

  private static Row row(int i) {
    return new Row(
        "row \u00e9 " + "x".repeat(i % 50),
        -i,
        i % 3 == 0 ? null : i / 7.0,
        i % 2 == 0 ? null : i % 5 == 0);
  }

  private static PackedRows<Row> rows(int from, int to) {
    PackedRows<Row> rows = new PackedRows<>(Row.class);
    for (int i = from; i < to; i++) {
      rows.add(row(i));
    }
    return rows;
  }

  private static List<Row> expected(int to) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < to; i++) {
      rows.add(row(i));
    }
    return rows;
  }

  @Test
  void givesBackWhatWasAddedOverManyChunks() {
    assertEquals(expected(100_000), rows(0, 100_000));
    assertEquals(List.of(), rows(0, 0));
  }

  @Test
  void mergesInOrderAndGoesOnFilling() {
    PackedRows<Row> rows = rows(0, 40_000);
    rows.merge(rows(40_000, 40_007));
    rows.merge(rows(0, 0));
    for (int i = 40_007; i < 60_000; i++) {
      rows.add(row(i));
    }
    assertEquals(expected(60_000), rows);
    assertThrows(IndexOutOfBoundsException.class, () -> rows.get(60_000));
    assertThrows(IndexOutOfBoundsException.class, () -> rows.get(-1));
  }

  /** Enough for a file: 300,000 rows of some 45 bytes. */
  @Test
  void aLongListIsReadInAnyOrderAndByManyAtOnce() {
    PackedRows<Row> rows = rows(0, 150_000);
    rows.merge(rows(150_000, 300_000));
    rows.add(row(300_000));
    rows.close();
    IntStream.rangeClosed(0, 300_000)
        .parallel()
        .map(i -> (int) (i * 7919L % 300_001))
        .forEach(i -> assertEquals(row(i), rows.get(i)));
    assertEquals(expected(300_001), rows);
  }

  @Test
  void aLongListTravelsAsItIs() throws IOException, ClassNotFoundException {
    assertEquals(expected(250_000), sent(rows(0, 250_000)));
  }

  @Test
  void travelsAsItIs() throws IOException, ClassNotFoundException {
    assertEquals(expected(30_000), sent(rows(0, 30_000)));
  }

  private static Object sent(PackedRows<Row> rows) throws IOException, ClassNotFoundException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(rows);
    }
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      return in.readObject();
    }
  }
}
