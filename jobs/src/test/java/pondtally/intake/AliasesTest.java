package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.SheetReport;
import pondtally.check.UserError;
import pondtally.record.Install;
import pondtally.record.Sourced;

class AliasesTest {

  @TempDir Path program;

  private List<InputFile> files(String aliases) throws IOException {
    Files.createDirectories(program.resolve("north"));
    Files.writeString(program.resolve("aliases.csv"), aliases);
    Files.writeString(
        program.resolve("north/installs.csv"),
        """
        device_id,site_id,installed_on
        B-12,S1,2024-05-01
        B12,Mill,2024-05-02
        C3,S1,2024-05-03
        """);
    return ProgramFolder.files(program);
  }

  @Test
  void idsAreMergedAndTold() throws IOException {
    InputFile file =
        files("kind,id,same_as\ndevice,B-12,B12\ndevice,B12,B0012\nsite,Mill,S1\n").get(0);
    List<Sourced> records = new ArrayList<>();
    List<SheetReport> reports = PartnerFileReader.read(file, Read.SETTINGS, records::add);
    assertEquals(
        List.of("B0012 S1", "B0012 S1", "C3 S1"),
        records.stream()
            .map(row -> ((Install) row).deviceId() + " " + ((Install) row).siteId())
            .toList());
    assertEquals(
        List.of(
            "0 device_id changed id-merged: aliases.csv says that \"B-12\" is the same as \"B0012\":"
                + " 1 row.",
            "0 device_id changed id-merged: aliases.csv says that \"B12\" is the same as \"B0012\":"
                + " 1 row.",
            "0 site_id changed id-merged: aliases.csv says that \"Mill\" is the same as \"S1\": 1"
                + " row."),
        new Read(reports, records).findings());
    assertEquals("3=1+2+0", new Read(reports, records).counts());
  }

  private String error(String aliases) {
    return assertThrows(UserError.class, () -> files(aliases)).getMessage();
  }

  @Test
  void slipsAreNamed() {
    assertEquals(
        "aliases.csv, line 2: \"devise\" is no kind of id. Did you mean device? Expected one of:"
            + " site, device, pond, property.",
        error("kind,id,same_as\ndevise,A,B\n"));
    assertEquals(
        "aliases.csv, line 1: expected three cells, kind,id,same_as, as device,B-12,B12.",
        error("device,A\n"));
    assertEquals(
        "aliases.csv, line 2: \"A\" is the same as \"B\" already.",
        error("device,A,B\ndevice,A,C\n"));
    assertEquals(
        "aliases.csv: \"A\" leads back to itself. Expected one id of them that is not in the column"
            + " id.",
        error("device,A,B\ndevice,B,A\n"));
  }
}
