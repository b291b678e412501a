package pondtally.sample;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Writes the sample: the program folder, and the lists that tests hold against it. */
public final class SampleGenerator {

  private SampleGenerator() {}

  /**
   * Writes both folders.
   *
   * @param arguments the program folder to write, and the folder for the tests' lists
   */
  public static void main(String[] arguments) {
    if (arguments.length != 2) {
      throw new IllegalArgumentException(
          "Give two folders: the sample's, and the one of its lists for tests.");
    }
    SampleProgram program = new SampleProgram();
    writeFolder(program, Path.of(arguments[0]));
    new FactFiles(program).write(Path.of(arguments[1]));
  }

  /** Writes partner files, settings and page. */
  static void writeFolder(SampleProgram program, Path folder) {
    Map<String, List<Sheet>> files = new TreeMap<>();
    for (Sheet sheet : program.sheets()) {
      files.computeIfAbsent(sheet.file(), file -> new ArrayList<>()).add(sheet);
    }
    files.forEach((file, sheets) -> writeFile(folder.resolve(file), sheets));
    CsvFile.save(folder.resolve("program.yaml"), ReadmeText.SETTINGS);
    CsvFile.save(folder.resolve("README.md"), new ReadmeFile(program).text());
  }

  private static void writeFile(Path path, List<Sheet> sheets) {
    if (sheets.get(0).isWorkbook()) {
      XlsxFile.write(path, sheets);
    } else {
      CsvFile.write(path, sheets.get(0));
    }
  }
}
