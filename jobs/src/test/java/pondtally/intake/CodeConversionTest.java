package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.record.Install;
import pondtally.record.PipeWall;
import pondtally.record.Site;

/** Codes, counts, yes and no, and what one of two columns must hold. */
class CodeConversionTest {

  @TempDir Path folder;

  private Read install(String field, String... values) throws IOException {
    StringBuilder text = new StringBuilder("device_id\tsite_id\tinstalled_on\t" + field + "\n");
    int row = 0;
    for (String value : values) {
      text.append("D%d\tS1\t2024-05-01\t%s\n".formatted(++row, value));
    }
    return Read.text(folder, "installs.tsv", text.toString());
  }

  @Test
  void wholeNumbersHaveNoFraction() throws IOException {
    Read read = install("weights", "4", "4.0", "4.5");
    assertEquals(4, ((Install) read.records().get(1)).weights());
    assertEquals(
        List.of(
            "4 weights changed unreadable-number: \"4.5\" is not a whole number. Expected a whole"
                + " number. Value left out; the row counts without it."),
        read.findings());
  }

  @Test
  void codesAreFoldedButNeverGuessed() throws IOException {
    Read read = install("pipe_wall", "dual", "Dual", "duel");
    assertEquals(PipeWall.DUAL, ((Install) read.records().get(1)).pipeWall());
    assertNull(((Install) read.records().get(2)).pipeWall());
    assertEquals(
        List.of(
            "3 pipe_wall changed code-mapped: \"Dual\" is read as dual. -> dual",
            "4 pipe_wall changed unknown-code: \"duel\" is no known code. Expected one of: single,"
                + " dual, smooth, none. Value left out; the row counts without it. -> dual"),
        read.findings());
    assertEquals(PipeWall.NONE, install("pipe_wall", "none").only(Install.class).pipeWall());
  }

  @Test
  void yesAndNoHaveFewSpellings() throws IOException {
    Read read = install("gas_holes", "yes", "no", "Y", "FALSE", "x", "maybe");
    assertEquals("6=2+4+0", read.counts());
    assertEquals(
        "4 gas_holes changed code-mapped: \"Y\" is read as yes. -> yes", read.findings().get(0));
    assertEquals(
        "7 gas_holes changed unknown-code: \"maybe\" is neither yes nor no. Expected yes or no."
            + " Value left out; the row counts without it.",
        read.findings().get(3));
  }

  @Test
  void hydrologicUnitCodesStayText() throws IOException {
    Read read =
        Read.text(
            folder,
            "sites.csv",
            "site_id,HUC\nS1,09010203\nS2,9010203\nS3,99010203.0\nS4,9.9E+10\nS5,Ostel Brook\n");
    assertEquals(
        List.of("09010203", "9010203", "99010203", "null", "Ostel Brook"),
        read.records().stream().map(r -> String.valueOf(((Site) r).watershed())).toList());
    assertEquals(
        List.of(
            "3 watershed notice lost-leading-zero: \"9010203\" has an odd number of digits;"
                + " hydrologic unit codes have 2 to 12, an even number of them. Was a leading zero"
                + " lost? Kept as it stands. -> 09010203",
            "4 watershed changed number-from-text: \"99010203.0\" is read as 99010203. -> 99010203",
            "5 watershed changed digits-lost: \"9.9E+10\" is a code that a spreadsheet rounded"
                + " away. Expected all its digits, in a cell formatted as text. Value left out; the"
                + " row counts without it."),
        read.findings());
  }

  @Test
  void oneOfTwoCostsIsNeeded() throws IOException {
    Read read =
        Read.text(
            folder,
            "materials.csv",
            """
            device_id,item,quantity,unit_cost_usd,total_cost_usd
            D1,pipe,1,,9
            D1,pipe,1,,
            D1,pipe,1,x1,
            """);
    assertEquals("3=1+0+2", read.counts());
    assertEquals(
        "3 - set-aside missing-required: The row needs \"unit_cost_usd\" or"
            + " \"total_cost_usd\", and nothing that can be used stands there. Write one of them. Row"
            + " set aside.",
        read.findings().get(0));
  }
}
