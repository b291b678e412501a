package pondtally.intake;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pondtally.check.UserError;

/** The folder that a run reads: everything in it, at any depth. */
public final class ProgramFolder {

  /** Files that others read, and that hold no records. */
  private static final Set<String> KNOWN = Set.of("program.yaml", "program.yml", "aliases.csv");

  /**
   * The folder below the program folder that holds the figures published each year, one folder a
   * year. They are no input.
   */
  public static final String PUBLISHED = "published";

  private ProgramFolder() {}

  /**
   * All files of the folder in the order of their paths, those of other kinds included: reading one
   * of these gives a report that says so. Settings, read-me files, hidden files, the lock files of
   * office programs and published figures are left out. Links are not followed.
   *
   * @throws UserError if there is no such folder, or no file in it that could hold records
   */
  public static List<InputFile> files(Path folder) {
    if (!Files.exists(folder)) {
      throw UserError.input(
          "There is no folder %s. Expected the folder that holds the partners' files."
              .formatted(folder));
    }
    if (!Files.isDirectory(folder)) {
      throw UserError.input(
          "%s is a file. Expected the folder that holds the partners' files.".formatted(folder));
    }
    List<String> columns = new ArrayList<>();
    List<String> paths = paths(folder, columns);
    ColumnsFiles maps = new ColumnsFiles(folder, columns, Aliases.read(folder));
    List<InputFile> files = numbered(folder, paths, maps);
    if (files.stream().noneMatch(ProgramFolder::isRead)) {
      throw UserError.input(
          "There is no .csv, .tsv or .xlsx file in %s or in a folder below it.".formatted(folder));
    }
    maps.requireFiles(files);
    return files;
  }

  /** Whether the file is of a kind that is read. */
  public static boolean isRead(InputFile file) {
    return FileKind.of(file.path()) != FileKind.OTHER;
  }

  private static List<String> paths(Path folder, List<String> columns) {
    List<String> paths = new ArrayList<>();
    try {
      Files.walkFileTree(folder, new Collector(folder, paths, columns));
    } catch (IOException e) {
      throw UserError.input(
          "%s cannot be read (%s). Expected a folder that you may read."
              .formatted(e.getMessage(), e.getClass().getSimpleName()));
    }
    Collections.sort(paths);
    Collections.sort(columns);
    return paths;
  }

  private static List<InputFile> numbered(Path folder, List<String> paths, ColumnsFiles maps) {
    List<InputFile> files = new ArrayList<>();
    for (String path : paths) {
      String partner = ColumnsFiles.folderOf(path);
      ColumnsMap map = maps.of(partner);
      String location = folder.resolve(path).toAbsolutePath().normalize().toString();
      String name = map.partner() == null ? partner : map.partner();
      files.add(new InputFile(files.size(), path, location, name, map));
    }
    return files;
  }

  private static boolean isLeftOut(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    return lower.startsWith(".")
        || lower.startsWith("~$")
        || lower.startsWith("readme")
        || lower.equals("thumbs.db")
        || lower.equals("desktop.ini")
        || KNOWN.contains(lower);
  }

  private static final class Collector extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final List<String> paths;
    private final List<String> columns;

    Collector(Path folder, List<String> paths, List<String> columns) {
      this.columns = columns;
      this.folder = folder;
      this.paths = paths;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
      boolean isHidden =
          !directory.equals(folder) && directory.getFileName().toString().startsWith(".");
      return isHidden || isPublished(directory)
          ? FileVisitResult.SKIP_SUBTREE
          : FileVisitResult.CONTINUE;
    }

    /** Figures that a report kept as published; whatever else lies in that folder is read. */
    private boolean isPublished(Path directory) {
      return folder.resolve(PUBLISHED).equals(directory.getParent())
          && directory.getFileName().toString().matches("\\d{4}")
          && Files.isRegularFile(directory.resolve("run.json"));
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String path = folder.relativize(file).toString().replace('\\', '/');
      if (attributes.isRegularFile() && ColumnsFiles.isOne(file.getFileName().toString())) {
        columns.add(path);
      } else if (attributes.isRegularFile() && !isLeftOut(file.getFileName().toString())) {
        paths.add(path);
      }
      return FileVisitResult.CONTINUE;
    }
  }
}
