package pondtally.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.spark.SparkEnv;
import org.junit.jupiter.api.Test;

/** Each session keeps what it spills in its own folder, and leaves none. */
class SessionSparkTest {

  @Test
  void aSecondSessionHasAFolderOfItsOwn() {
    Path first = used();
    Path second = used();
    assertFalse(Files.exists(first), "first");
    assertFalse(Files.exists(second), "second");
  }

  private static Path used() {
    try (Session session = Session.local(1)) {
      List<Integer> numbers = List.of(3, 1, 2);
      assertEquals(3, session.spark().parallelize(numbers).sortBy(n -> n, true, 2).count());
      for (java.io.File place : SparkEnv.get().blockManager().diskBlockManager().localDirs()) {
        assertTrue(place.toPath().startsWith(session.scratch()), place.toString());
      }
      return session.scratch();
    }
  }
}
