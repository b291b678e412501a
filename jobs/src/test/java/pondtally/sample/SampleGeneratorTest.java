package pondtally.sample;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The committed sample is what the generator writes, to the byte: nobody edits it by hand. */
class SampleGeneratorTest {
  @TempDir static Path first;
  @TempDir static Path second;

  @BeforeAll
  static void writeTwice() {
    for (Path folder : new Path[] {first, second}) {
      SampleGenerator.main(
          new String[] {folder.resolve("sample").toString(), folder.resolve("lists").toString()});
    }
  }

  @Test
  void twoRunsGiveTheSameBytes() throws IOException {
    SortedMap<String, byte[]> once = files(first);
    SortedMap<String, byte[]> again = files(second);
    assertEquals(once.keySet(), again.keySet());
    once.forEach((name, bytes) -> assertArrayEquals(bytes, again.get(name), name));
  }

  @Test
  void committedSampleIsTheGenerators() throws IOException {
    assertSame(files(first.resolve("sample")), files(SampleFolder.PROGRAM));
  }

  @Test
  void committedListsAreTheGenerators() throws IOException {
    assertSame(files(first.resolve("lists")), files(SampleFolder.LISTS));
  }

  @Test
  void isOfModestSize() throws IOException {
    long bytes = files(SampleFolder.PROGRAM).values().stream().mapToLong(file -> file.length).sum();
    assertTrue(bytes < 1_000_000, bytes + " bytes");
  }

  /** Workbooks are compared part by part, since machines may compress the same part differently. */
  private static void assertSame(
      SortedMap<String, byte[]> written, SortedMap<String, byte[]> committed) throws IOException {
    assertEquals(written.keySet(), committed.keySet());
    for (Map.Entry<String, byte[]> file : written.entrySet()) {
      byte[] other = committed.get(file.getKey());
      if (file.getKey().endsWith(".xlsx")) {
        Map<String, byte[]> parts = XlsxFile.entries(file.getValue());
        Map<String, byte[]> others = XlsxFile.entries(other);
        assertEquals(parts.keySet(), others.keySet(), file.getKey());
        parts.forEach(
            (name, bytes) ->
                assertArrayEquals(bytes, others.get(name), file.getKey() + " " + name));
      } else {
        assertArrayEquals(file.getValue(), other, file.getKey());
      }
    }
  }

  private static SortedMap<String, byte[]> files(Path folder) throws IOException {
    SortedMap<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
      }
    }
    return files;
  }
}
