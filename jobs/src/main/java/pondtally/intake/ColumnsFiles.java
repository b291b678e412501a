package pondtally.intake;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pondtally.check.UserError;

/** The {@code columns.yaml} of each partner's folder. */
final class ColumnsFiles {

  private final Map<String, ColumnsMap> byFolder = new HashMap<>();
  private final ColumnsMap others;
  private final Map<String, String> pathByFolder = new HashMap<>();

  /**
   * Reads them.
   *
   * @param paths where they lie below the program folder
   * @param aliases the id that counts, by field and by the id that is written
   */
  ColumnsFiles(Path folder, List<String> paths, Map<String, Map<String, String>> aliases) {
    others = ColumnsMap.NONE.with(aliases);
    for (String path : paths) {
      String partner = folderOf(path);
      if (partner.length() < path.lastIndexOf('/')) {
        throw UserError.input(
            "%s lies too deep. Expected it in the partner's folder, %s, with the sub-folder in its patterns, as files: \"2024/*.csv\"."
                .formatted(path, partner));
      }
      String other = pathByFolder.put(partner, path);
      if (other != null) {
        throw UserError.input(
            "%s and %s are in one folder. Expected one of them.".formatted(other, path));
      }
      byFolder.put(partner, ColumnsFile.read(folder.resolve(path), path).with(aliases));
    }
  }

  static boolean isOne(String name) {
    return List.of("columns.yaml", "columns.yml").contains(name.toLowerCase(Locale.ROOT));
  }

  /** First folder of a path; empty: it lies in the program folder itself. */
  static String folderOf(String path) {
    int slash = path.indexOf('/');
    return slash < 0 ? "" : path.substring(0, slash);
  }

  /** What is stated about the files of a folder. */
  ColumnsMap of(String partnerFolder) {
    return byFolder.getOrDefault(partnerFolder, others);
  }

  /** Stops at an entry that is about no file: it would be lost in silence. */
  void requireFiles(List<InputFile> files) {
    byFolder.forEach(
        (folder, map) -> {
          for (ColumnsMap.Entry entry : map.entries()) {
            if (files.stream().noneMatch(file -> isAbout(file, folder, entry))) {
              throw UserError.input(
                  "%s, line %s: no file here is called `%s`. Expected a file name, in which * may stand for any text; %s."
                      .formatted(
                          pathByFolder.get(folder),
                          entry.line(),
                          entry.files(),
                          there(files, folder)));
            }
          }
        });
  }

  private static boolean isAbout(InputFile file, String folder, ColumnsMap.Entry entry) {
    return folderOf(file.path()).equals(folder) && entry.fitsFile(file.path());
  }

  private static String there(List<InputFile> files, String folder) {
    List<String> names =
        files.stream()
            .map(InputFile::path)
            .filter(path -> folderOf(path).equals(folder))
            .map(path -> path.substring(folder.isEmpty() ? 0 : folder.length() + 1))
            .limit(20)
            .toList();
    return names.isEmpty()
        ? "the folder holds no other file"
        : "the folder holds " + String.join(", ", names);
  }
}
