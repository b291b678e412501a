package pondtally.reports.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check} as somebody types it: what it prints where, and its exit codes. */
class CheckCommandSparkTest {

  @TempDir private Path folder;
  private Path program;
  private String out;
  private String err;

  @BeforeEach
  void twoPartnersWhoKnowOneDevice() throws IOException {
    program = folder.resolve("program");
    write(
        "north/sites.csv",
        "site_id,watershed,latitude,longitude,wetland_acres_before\nN1,01020304,45.10000,-110.5,2\n");
    write(
        "north/installs.csv",
        "device_id,site_id,installed_on,device_kind,install_cost_usd\n"
            + "N-7,N1,2023-05-02,pond-leveler,900\n");
    write(
        "north/revisits.csv",
        "device_id,visited_on,condition\nN-7,2023-09-01,working\nN-7,2024-09-01,fine\n");
    write(
        "south/sites.csv",
        "Site,Watershed,Lat,Long,wetland_acres_before\nMill,01020304,45.10030,-110.5,2\n");
    write(
        "south/installs.csv",
        "Device,Site,Installed,Kind,install_cost_usd\nS3,Mill,2023-05-04,pond-leveler,880\n");
    write("south/revisits.csv", "Device,Visited,Condition\nS3,2024-05-01,working\n");
  }

  private void write(String path, String text) throws IOException {
    Path file = program.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private int run(String... arguments) {
    PrintStream usualOut = System.out;
    PrintStream usualErr = System.err;
    ByteArrayOutputStream outBytes = new ByteArrayOutputStream();
    ByteArrayOutputStream errBytes = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(outBytes, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(errBytes, true, StandardCharsets.UTF_8));
      return Main.run(arguments);
    } finally {
      System.setOut(usualOut);
      System.setErr(usualErr);
      out = outBytes.toString(StandardCharsets.UTF_8);
      err = errBytes.toString(StandardCharsets.UTF_8);
    }
  }

  private JsonNode json() throws IOException {
    run("check", program.toString(), "--json");
    return new ObjectMapper().readTree(out);
  }

  private static List<String> issues(JsonNode json, String rule) {
    List<String> found = new ArrayList<>();
    for (JsonNode issue : json.get("issues")) {
      if (issue.get("rule").asText().equals(rule)) {
        found.add(
            "%s %s %s %s"
                .formatted(
                    issue.get("file").asText(),
                    issue.get("row").asText(),
                    issue.get("severity").asText(),
                    issue.get("suggestion").asText()));
      }
    }
    return found;
  }

  @Test
  void jsonAloneIsPrintedAndTheCodeTellsOfRowsSetAside() throws IOException {
    assertEquals(1, run("check", program.toString(), "--json"));
    JsonNode json = new ObjectMapper().readTree(out);
    assertEquals(
        "{\"read\":7,\"used\":6,\"changed\":0,\"set_aside\":1,\"duplicate\":0}",
        json.get("rows").toString());
    assertEquals(6, json.get("account").size());
    assertEquals(List.of("north/revisits.csv 3 set-aside "), issues(json, "unknown-code"));
    write("north/revisits.csv", "device_id,visited_on,condition\nN-7,2023-09-01,working\n");
    assertEquals(0, run("check", program.toString(), "--json"));
  }

  @Test
  void aFileThatCannotBeReadIsToldLastAndHasACodeOfItsOwn() throws IOException {
    write("north/areas.xlsx", "no workbook");
    assertEquals(3, run("check", program.toString()));
    assertTrue(out.contains("unknown-code"), out);
    assertTrue(
        err.contains(
            "pondtally: north/areas.xlsx: The file cannot be read: it is not a workbook, or it is"
                + " broken."),
        err);
    assertEquals(3, run("check", program.toString(), "--json"));
    assertEquals("7", new ObjectMapper().readTree(out).get("rows").get("read").asText());
    assertEquals(3, run("report", program.toString(), "--out", folder.resolve("r").toString()));
    assertFalse(Files.exists(folder.resolve("r")));
  }

  @Test
  void aPairIsShownUntilAliasesMergeIt() throws IOException {
    List<String> pair = List.of("south/installs.csv 2 notice site,Mill,N1 and device,S3,N-7");
    assertEquals(pair, issues(json(), "likely-duplicate"));
    write("aliases.csv", "kind,id,same_as\nsite,Mill,N1\ndevice,S3,N-7\ndevice,S33,N-7\n");
    JsonNode merged = json();
    assertEquals(List.of(), issues(merged, "likely-duplicate"));
    assertEquals(List.of("aliases.csv 4 notice "), issues(merged, "alias-unused"));
    assertEquals(List.of("south/installs.csv 2 set-aside "), issues(merged, "install-differs"));
    write("aliases.csv", "kind,id,same_as\nsite,Mil,N1\n");
    assertEquals(List.of("aliases.csv 2 notice Mill"), issues(json(), "alias-unused"));
  }

  @Test
  void aPairIsPrintedForTheCoordinator() throws IOException {
    assertEquals(1, run("check", program.toString()));
    assertTrue(
        out.contains(
            """
            To look at, likely-duplicate: 1 issue
              south/installs.csv, row 2, "Device": "S3"
                Device "S3" may be the same as device "N-7" (north/installs.csv, row 2): both pond-leveler,
                installed on 2023-05-04 and 2023-05-02, at sites "Mill" and "N1", 33 meters apart. Both count as
                devices until you decide. If they are one, write what is suggested into aliases.csv in the
                program folder (its columns: kind,id,same_as); if they are two, nothing need be done.
                Suggested: site,Mill,N1 and device,S3,N-7
            """),
        out);
    write("aliases.csv", "kind,id,same_as\nsite,Mill,N1\ndevice,S3,N-7\n");
    run("check", program.toString());
    assertFalse(out.contains("likely-duplicate"), out);
  }

  @Test
  void everythingThatDecidesStandsInRunJson() throws Exception {
    write("aliases.csv", "kind,id,same_as\nsite,Mill,N1\ndevice,S3,N-7\n");
    write("south/columns.yaml", "partner: South Crew\n");
    write("program.yaml", "region: Anywhere\n");
    Path report = folder.resolve("report");
    assertEquals(
        0, run("report", program.toString(), "--out", report.toString(), "--tables-only"), err);
    Map<String, String> sums = new TreeMap<>();
    for (JsonNode input :
        new ObjectMapper().readTree(report.resolve("run.json").toFile()).get("inputs")) {
      sums.put(input.get("file").asText(), input.get("sha256").asText());
    }
    assertEquals(9, sums.size());
    for (String path :
        List.of("aliases.csv", "program.yaml", "south/columns.yaml", "north/sites.csv")) {
      byte[] bytes = Files.readAllBytes(program.resolve(path));
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
      assertEquals(HexFormat.of().formatHex(sum), sums.get(path), path);
    }
  }

  @Test
  void whatWouldBeLostWhereItLiesStopsTheRun() throws IOException {
    write("north/aliases.csv", "kind,id,same_as\nsite,A,B\n");
    assertEquals(3, run("check", program.toString()));
    assertEquals(
        "pondtally: north/aliases.csv is not used where it lies. Expected it as aliases.csv in the"
            + " program folder itself.\n",
        err);
  }

  @Test
  void aSuggestionIsPrintedOrWrittenAndThenRead() throws IOException {
    assertEquals(0, run("check", program.toString(), "--suggest"));
    assertTrue(out.contains("south/columns.yaml"), out);
    assertEquals("", err);
    assertEquals(
        0, run("check", program.toString(), "--suggest", "--out", program.toString()), err);
    assertTrue(Files.isRegularFile(program.resolve("south/columns.yaml")));
    assertEquals(1, run("check", program.toString()), "the suggestion is itself a sound map");
    assertEquals("", err);
    assertEquals(4, run("check", program.toString(), "--suggest", "--out", program.toString()));
    assertTrue(err.contains("--replace"), err);
    assertEquals(
        0, run("check", program.toString(), "--suggest", "--out", program.toString(), "--replace"));
  }

  @Test
  void optionsThatDoNotGoTogetherAreNamed() {
    misuse("--out and --replace go with --suggest. Add it, or leave them out.", "--out", "x");
    misuse("--out and --replace go with --suggest. Add it, or leave them out.", "--replace");
    misuse(
        "--suggest and --json do not go together. Leave one of them out.", "--suggest", "--json");
    misuse("--replace goes with --out. Add it, or leave --replace out.", "--suggest", "--replace");
    assertEquals(2, run("check"));
    assertTrue(err.contains("FOLDER"), err);
    assertEquals(2, run("check", program.toString(), "--jsn"));
    assertTrue(err.contains("--json"), err);
  }

  private void misuse(String message, String... options) {
    List<String> arguments = new ArrayList<>(List.of("check", program.toString()));
    arguments.addAll(List.of(options));
    assertEquals(2, run(arguments.toArray(String[]::new)), message);
    assertEquals("pondtally: " + message + "\n", err);
    assertEquals("", out);
  }

  @Test
  void theReadableListEndsWithTheAccount() {
    assertEquals(1, run("check", program.toString()));
    assertFalse(out.contains("\u001b"), "no colors in a file");
    assertTrue(out.startsWith("Rows set aside, unknown-code: 1 issue\n"), out);
    assertTrue(
        out.endsWith(
            """

            Rows by partner      read      used   changed set aside duplicate
            north                   4         3         0         1         0
            south                   3         3         0         0         0
            7 rows read = 6 used + 0 used with a change + 1 set aside + 0 duplicate.
            """),
        out);
    assertEquals("", err);
  }
}
