package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values that hold what nobody sees are refused or told, never read as if nothing were there. */
class UnseenCharactersTest {

  @TempDir Path folder;

  private Read installs(String... rows) throws IOException {
    String headings = "device_id,site_id,installed_on,pipe_wall,pipe_length_ft,crew\n";
    return Read.text(folder, "installs.csv", headings + String.join("\n", rows) + "\n");
  }

  @Test
  void controlsInsideAValueAreRefused() throws IOException {
    Read read =
        installs(
            "D1,S1,2024-05-01,dual,7\u001d\u001dfeet,A",
            "D2,S1,2024\u0001-05-01,dual,7,A",
            "D3,S1,2024-05-01,du\u0002al,7,A",
            "D\u00034,S1,2024-05-01,dual,7,A");
    assertEquals(
        List.of(
            "2 pipe_length_ft changed unseen-characters: \"7\\u001d\\u001dfeet\" holds 2 characters"
                + " that cannot be seen, shown here as \\u001d and the like. Empty the cell and type"
                + " the value anew. Value left out; the row counts without it.",
            "3 installed_on set-aside unseen-characters: \"2024\\u0001-05-01\" holds a character"
                + " that cannot be seen, shown here as \\u0001. Empty the cell and type the value"
                + " anew. Row set aside.",
            "4 pipe_wall changed unseen-characters: \"du\\u0002al\" holds a character that cannot"
                + " be seen, shown here as \\u0002. Empty the cell and type the value anew. Value"
                + " left out; the row counts without it.",
            "5 device_id set-aside unseen-characters: \"D\\u00034\" holds a character that cannot"
                + " be seen, shown here as \\u0003. Empty the cell and type the value anew. Row set"
                + " aside."),
        read.findings());
    assertEquals("4=0+2+2", read.counts());
  }

  /** Marks of direction come with what is copied from other programs; nothing was lost. */
  @Test
  void whatCameWithACopyIsSuggestedWithoutIt() throws IOException {
    Read read = installs("D\u200b1,S1,\u200e5/\u200e1/\u200e2024,dual,7\u200b2,A");
    assertEquals(
        List.of("D1", "5/1/2024", "72"),
        read.report().findings().stream().map(finding -> finding.suggestion()).toList());
  }

  @Test
  void lineBreaksAreWhiteSpaceThatIsToldAndNoPartOfAnId() throws IOException {
    Read read =
        installs(
            "D1,S1,2024-05-01,dual,\"7\nft\",\"A,\nsecond crew\"",
            "D2,\"S1\nS2\",2024-05-01,dual,7,A");
    assertEquals(
        List.of(
            "2 pipe_length_ft changed number-from-text: \"7\\nft\" is read as 7. -> 7",
            "3 site_id set-aside unseen-characters: \"S1\\nS2\" holds a line break or tab inside."
                + " Expected one id, on one line. Row set aside."),
        read.findings());
  }

  @Test
  void aNameIsKeptAndTold() throws IOException {
    Read read = installs("D1,S1,2024-05-01,dual,7,North\u200b crew");
    assertEquals(
        List.of(
            "2 crew notice unseen-characters: \"North\\u200b crew\" holds a character that cannot"
                + " be seen, shown here as \\u200b, so it is not the same as the name without. Kept"
                + " as it stands. -> North crew"),
        read.findings());
    assertEquals("1=1+0+0", read.counts());
  }
}
