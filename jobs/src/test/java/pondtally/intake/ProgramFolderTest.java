package pondtally.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import pondtally.check.UserError;

@Tag("reliability")
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
  void linksAreNamedAndNotFollowed() throws IOException {
    touch("north/a.csv");
    Files.createSymbolicLink(folder.resolve("loop"), folder);
    Files.createSymbolicLink(folder.resolve("north/b.csv"), folder.resolve("north/a.csv"));
    List<InputFile> files = ProgramFolder.files(folder);
    assertEquals(
        List.of("loop", "north/a.csv", "north/b.csv"),
        files.stream().map(InputFile::path).toList());
    String link =
        "0 - notice file-not-read: Not read: it is a link to another place. Put the file itself here if it holds records.";
    assertEquals(List.of(link), Read.file(folder.resolve("north/b.csv")).findings());
    assertEquals(List.of(link), Read.file(folder.resolve("loop")).findings());
  }

  /** Whoever opens a pipe into which nobody writes waits for ever. */
  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void pipesAreToldAndNeverOpened() throws Exception {
    touch("north/a.csv");
    pipe("north/b.csv");
    pipe("north/c.xlsx");
    assertEquals(
        List.of("north/a.csv", "north/b.csv", "north/c.xlsx"),
        ProgramFolder.files(folder).stream().map(InputFile::path).toList());
    for (String name : List.of("b.csv", "c.xlsx")) {
      assertEquals(
          List.of(
              "0 - notice file-not-read: Not read: it is a named pipe or a device, not a file. Put a file here if there are records for it."),
          Read.file(folder.resolve("north").resolve(name)).findings());
    }
    for (String name : List.of("program.yaml", "aliases.csv", "north/columns.yaml")) {
      pipe(name);
      refused(
          "%s is a link, a named pipe or a device, and is not opened. Put the file itself there, or remove it.",
          name);
    }
  }

  private void pipe(String path) throws Exception {
    Process made = new ProcessBuilder("mkfifo", folder.resolve(path).toString()).start();
    assertEquals(0, made.waitFor());
  }

  private void refused(String message, String path) throws IOException {
    UserError error = assertThrows(UserError.class, () -> ProgramFolder.files(folder));
    assertEquals(message.formatted(path), error.getMessage());
    assertEquals(3, error.exitCode());
    Files.delete(folder.resolve(path));
  }

  /** The coordinator's own settings may lie elsewhere; a partner's may not. */
  @Test
  void linkedSettingsAreUsedOrRefusedAndNeverIgnored() throws IOException {
    touch("north/a.csv");
    Path elsewhere = Files.writeString(folder.resolve(".elsewhere"), "region: x");
    Files.createSymbolicLink(folder.resolve("program.yaml"), elsewhere);
    assertEquals(List.of("program.yaml"), ProgramFolder.open(folder).statements());
    Files.createSymbolicLink(folder.resolve("north/columns.yaml"), elsewhere);
    refused(
        "%s is a link, a named pipe or a device, and is not opened. Put the file itself there, or remove it.",
        "north/columns.yaml");
    touch("program.yml");
    refused(
        "%s is not used where it lies. Expected it as program.yaml in the program folder itself.",
        "program.yml");
  }

  /** As archives from other systems hold them: bytes that are no letters here. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aNameThatCannotBeAskedForIsNotCalledGone() throws Exception {
    touch("north/a.csv");
    String shell = "printf x > \"$(printf '%s/north/caf\\351.csv')\"".formatted(folder);
    assertEquals(0, new ProcessBuilder("sh", "-c", shell).start().waitFor());
    InputFile file = ProgramFolder.files(folder).get(1);
    assertEquals("north/caf\uFFFD.csv", file.path());
    String said = Read.file(Path.of(file.location())).findings().get(0);
    assertTrue(
        said.startsWith(
            "0 - set-aside file-unreadable: The file cannot be read: its name, or that of its folder, holds letters that this machine writes in another way"),
        said);
  }

  @Test
  void aProgramFolderThatIsALinkIsRead() throws IOException {
    touch("program/north/a.csv");
    Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("program"));
    List<InputFile> files = ProgramFolder.files(link);
    assertEquals(List.of("north/a.csv"), files.stream().map(InputFile::path).toList());
    assertEquals("north", files.get(0).partner());
  }

  @Test
  void awkwardNamesAreNames() throws IOException {
    List<String> names =
        List.of("north/..a..csv.csv", "north/CON.csv", "north/a\nb.csv", "north/nul .csv");
    for (String name : names) {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, "device_id,site_id,installed_on\nD1,S1,2024-05-01\n");
    }
    // What begins with a dot is hidden.
    assertEquals(
        List.of("north/CON.csv", "north/a\nb.csv", "north/nul .csv"),
        ProgramFolder.files(folder).stream().map(InputFile::path).toList());
    for (InputFile file : ProgramFolder.files(folder)) {
      assertEquals(
          List.of(),
          Read.file(Path.of(file.location())).findings().stream()
              .filter(said -> said.contains("file-"))
              .toList());
    }
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

  /** Such a name comes out of archives that were packed on another system. */
  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aBackslashInANameLeadsNowhere() throws IOException {
    Path program = Files.createDirectories(folder.resolve("program"));
    touch("outside.csv");
    touch("program/north/x\\..\\..\\..\\outside.csv");
    InputFile file = ProgramFolder.files(program).get(0);
    assertEquals("north/x\\..\\..\\..\\outside.csv", file.path());
    assertEquals(
        program.toRealPath(), Path.of(file.location()).getParent().getParent().toRealPath());
  }

  @Test
  void aReportInTheProgramFolderIsNoInput() throws IOException {
    touch("north/a.csv");
    touch("north/report-2025/program.xlsx");
    Files.writeString(
        folder.resolve("north/report-2025/run.json"), "{\n  \"program\" : \"pondtally\",");
    UserError error = assertThrows(UserError.class, () -> ProgramFolder.files(folder));
    assertEquals(3, error.exitCode());
    assertEquals(
        "north/report-2025 holds a report that pondtally wrote (run.json), which would be read as records. Move it out of the program folder, and run again.",
        error.getMessage());
    Files.writeString(folder.resolve("north/report-2025/run.json"), "{\"crew\": 7}");
    assertEquals(3, ProgramFolder.files(folder).size());
  }
}
