package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.record.Install;
import pondtally.record.Visit;

/** Which table a file holds, and what is said of headings that fit none. */
class HeadingsTest {

  @TempDir Path folder;

  private Read visits(String content) throws IOException {
    return Read.text(folder, "revisits.csv", content);
  }

  @Test
  void theHeadingsTellTheTableWhereTheNameDoesNot() throws IOException {
    Read read = Read.text(folder, "north 2024.csv", "Tag,Site,Install date\nD1,S1,2024-01-01\n");
    assertEquals("installs", read.report().table());
    assertEquals("D1", read.only(Install.class).deviceId());
  }

  @Test
  void aNameThatDiffersFromTheHeadingsIsNoticed() throws IOException {
    Read read =
        Read.text(
            folder, "materials.csv", "device_id,visited_on,condition\nD1,2024-01-01,working\n");
    assertEquals("revisits", read.report().table());
    assertEquals(
        List.of(
            "0 - notice name-and-headings-differ: The name says materials, but the headings are"
                + " those of revisits; it was read as revisits."),
        read.findings());
  }

  @Test
  void aFileOfNoTableIsReported() throws IOException {
    Read read = Read.text(folder, "phones.csv", "Who,When\nA,B\n");
    assertNull(read.report().table());
    assertEquals(
        List.of(
            "0 - notice unrecognised-table: Neither the name nor the headings tell which table"
                + " this is. Expected a name of the file that begins with one of sites, installs,"
                + " materials, revisits, removals, properties, areas, prices, budgets, expenses,"
                + " requests, or the headings of one of them. If it holds records, rename it or name"
                + " its table in columns.yaml (check --suggest begins one). Its 2 rows were not read."),
        read.findings());
    assertEquals("0=0+0+0", read.counts());
  }

  @Test
  void aFileThatIsLikelyATableIsSetAside() throws IOException {
    Read read = Read.text(folder, "log.csv", "device_id,visited_on,found it\nD1,2024-01-01,ok\n");
    assertEquals("2=0+0+2", read.counts());
    assertEquals(List.of("0 unrecognised-table"), read.rules());
  }

  @Test
  void unknownColumnsAreNoticedWithANearName() throws IOException {
    Read read = visits("device_id,visited_on,condition,caus,Weather\nD1,2024-01-01,working,ice,\n");
    assertNull(((Visit) read.records().get(0)).cause());
    assertEquals(
        List.of(
            "0 caus notice unknown-column: \"caus\" is no heading of the table revisits. 1 cell"
                + " below it was not read. -> cause",
            "0 Weather notice unknown-column: \"Weather\" is no heading of the table revisits."
                + " Nothing stands below it."),
        read.findings());
  }

  @Test
  void columnsWithoutHeadingAreNoticed() throws IOException {
    Read read = visits("device_id,,visited_on,condition,\nD1,x,2024-01-01,working,\n");
    assertEquals("1=1+0+0", read.counts());
    assertEquals(
        List.of("0  notice unknown-column: Column B has no heading. 1 cell in it was not read."),
        read.findings());
  }

  @Test
  void aMissingColumnSetsAllRowsAsideAtOnce() throws IOException {
    Read read = visits("device_id,visited_on,notes\nD1,2024-01-01,x\nD2,2024-01-01,y\n");
    assertEquals("2=0+0+2", read.counts());
    assertEquals(
        List.of(
            "0 - set-aside missing-column: The table revisits needs condition, and row 1 has no"
                + " such heading. Add the column, or say in columns.yaml which heading it has. 2"
                + " rows set aside."),
        read.findings());
  }
}
