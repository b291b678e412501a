package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;

class ProgramFolderTest {

  @TempDir Path folder;

  private void touch(String path) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "x");
  }

  @Test
  void filesAreSortedAndKnowTheirPartner() throws IOException {
    for (String path :
        List.of(
            "south/b.csv",
            "north/2024/deep/c.XLSX",
            "north/a.tsv",
            "prices.csv",
            "program.yaml",
            "README.md",
            "north/~$c.xlsx",
            "north/.hidden/x.csv",
            "north/.DS_Store",
            "south/plan.pdf",
            "south/old.xls")) {
      touch(path);
    }
    List<InputFile> files = ProgramFolder.files(folder);
    assertEquals(
        List.of(
            "0 north/2024/deep/c.XLSX north true",
            "1 north/a.tsv north true",
            "2 prices.csv  true",
            "3 south/b.csv south true",
            "4 south/old.xls south false",
            "5 south/plan.pdf south false"),
        files.stream()
            .map(
                file ->
                    file.index()
                        + " "
                        + file.path()
                        + " "
                        + file.partner()
                        + " "
                        + ProgramFolder.isRead(file))
            .toList());
  }

  @Test
  void filesOfOtherKindsAreReportedNotRead() throws IOException {
    touch("south/plan.pdf");
    assertEquals(
        List.of(
            "0 - notice file-not-read: Not read: expected a .csv, .tsv or .xlsx file. Save it as"
                + " one of these if it holds records."),
        Read.file(folder.resolve("south/plan.pdf")).findings());
  }

  @Test
  void linksAreNotFollowed() throws IOException {
    touch("north/a.csv");
    Files.createSymbolicLink(folder.resolve("loop"), folder);
    Files.createSymbolicLink(folder.resolve("north/b.csv"), folder.resolve("north/a.csv"));
    assertEquals(1, ProgramFolder.files(folder).size());
  }

  @Test
  void aFolderWithoutRecordsStopsTheRunInOneSentence() throws IOException {
    UserError absent =
        assertThrows(UserError.class, () -> ProgramFolder.files(Path.of("no-such-folder")));
    assertEquals(
        "There is no folder no-such-folder. Expected the folder that holds the partners' files.",
        absent.getMessage());
    assertEquals(3, absent.exitCode());
    touch("plan.pdf");
    assertEquals(
        "There is no .csv, .tsv or .xlsx file in %s or in a folder below it.".formatted(folder),
        assertThrows(UserError.class, () -> ProgramFolder.files(folder)).getMessage());
    assertEquals(
        "plan.pdf is a file. Expected the folder that holds the partners' files.",
        assertThrows(UserError.class, () -> ProgramFolder.files(folder.resolve("plan.pdf")))
            .getMessage()
            .replace(folder + "/", ""));
  }
}
