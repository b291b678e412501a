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
import java.util.stream.Stream;
import pondtally.check.UserError;

/** The folder that a run reads: everything in it, at any depth. */
public final class ProgramFolder {

  /** Files that others read, and that hold no records. */
  private static final Set<String> KNOWN = Set.of("program.yaml", "program.yml", Aliases.NAME);

  /**
   * The folder below the program folder that holds the figures published each year, one folder a
   * year. They are no input.
   */
  public static final String PUBLISHED = "published";

  private ProgramFolder() {}

  /**
   * All files of the folder in the order of their paths, those of other kinds included: reading one
   * of these gives a report that says so. Settings, read-me files, hidden files, the lock files of
   * office programs and published figures are left out. Links below the folder are listed and not
   * followed.
   *
   * @throws UserError if there is no such folder, or no file in it that could hold records
   */
  public static List<InputFile> files(Path folder) {
    return open(folder).files();
  }

  /**
   * All files of the folder, and what is stated about them.
   *
   * @throws UserError as {@link #files} does, or if a statement is wrong
   */
  public static ProgramFiles open(Path folder) {
    requireFolder(folder);
    Collector found = new Collector(folder);
    found.walk();
    Aliases aliases = Aliases.read(folder);
    ColumnsFiles maps = new ColumnsFiles(folder, found.columns, aliases.byField());
    List<InputFile> files = numbered(folder, found.paths, maps);
    if (files.stream().noneMatch(ProgramFolder::isRead)) {
      throw UserError.input(
          "There is no .csv, .tsv or .xlsx file in %s or in a folder below it.".formatted(folder));
    }
    maps.requireFiles(files);
    return new ProgramFiles(folder, files, found.statements(), aliases.rows());
  }

  private static void requireFolder(Path folder) {
    if (!Files.exists(folder)) {
      throw UserError.input(
          "There is no folder %s. Expected the folder that holds the partners' files."
              .formatted(folder));
    }
    if (!Files.isDirectory(folder)) {
      throw UserError.input(
          "%s is a file. Expected the folder that holds the partners' files.".formatted(folder));
    }
  }

  /** Whether the file is of a kind that is read. */
  public static boolean isRead(InputFile file) {
    return FileKind.of(file.path()) != FileKind.OTHER;
  }

  private static List<InputFile> numbered(Path folder, List<String> paths, ColumnsFiles maps) {
    List<InputFile> files = new ArrayList<>();
    String root = folder.toAbsolutePath().normalize() + folder.getFileSystem().getSeparator();
    for (String path : paths) {
      String partner = ColumnsFiles.folderOf(path);
      ColumnsMap map = maps.of(partner);
      String location = root + path.replace("/", folder.getFileSystem().getSeparator());
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
        || lower.equals("desktop.ini");
  }

  private static final class Collector extends SimpleFileVisitor<Path> {

    private Path folder;
    private final List<String> paths = new ArrayList<>();
    private final List<String> columns = new ArrayList<>();
    private final List<String> ofTheProgram = new ArrayList<>();

    Collector(Path folder) {
      this.folder = folder;
    }

    void walk() {
      try {
        // The folder itself may be a link; it is what the user named.
        folder = folder.toRealPath();
        Files.walkFileTree(folder, this);
      } catch (IOException e) {
        throw UserError.input(
            "%s cannot be read (%s). Expected a folder that you may read."
                .formatted(e.getMessage(), e.getClass().getSimpleName()));
      }
      Collections.sort(paths);
      Collections.sort(columns);
    }

    List<String> statements() {
      return Stream.concat(ofTheProgram.stream(), columns.stream()).sorted().toList();
    }

    @Override
    public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
      boolean isHidden =
          !directory.equals(folder) && directory.getFileName().toString().startsWith(".");
      if (isHidden || isPublished(directory)) {
        return FileVisitResult.SKIP_SUBTREE;
      }
      ReportMark.refuse(
          directory, directory.equals(folder) ? "The program folder" : below(directory));
      return FileVisitResult.CONTINUE;
    }

    /** Figures that a report kept as published; whatever else lies in that folder is read. */
    private boolean isPublished(Path directory) {
      return folder.resolve(PUBLISHED).equals(directory.getParent())
          && directory.getFileName().toString().matches("\\d{4}")
          && Files.isRegularFile(directory.resolve("run.json"));
    }

    /** A {@code \\} parts folders only where the system says so; elsewhere it belongs to a name. */
    private String below(Path file) {
      return folder.relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String path = below(file);
      String name = file.getFileName().toString();
      if (isLeftOut(name)) {
        return FileVisitResult.CONTINUE;
      }
      if (!attributes.isRegularFile()) {
        notAFile(file, path, name);
      } else if (ColumnsFiles.isOne(name)) {
        requireReadable(path);
        columns.add(path);
      } else if (KNOWN.contains(name.toLowerCase(Locale.ROOT))) {
        requireTop(path, name);
        ofTheProgram.add(path);
      } else {
        paths.add(path);
      }
      return FileVisitResult.CONTINUE;
    }

    /**
     * A link, pipe or device. The coordinator's own settings may be a link to a file; a partner's
     * lead nowhere.
     */
    private void notAFile(Path file, String path, String name) {
      boolean isOfTheProgram = KNOWN.contains(path.toLowerCase(Locale.ROOT));
      if (!isOfTheProgram && !ColumnsFiles.isOne(name)) {
        paths.add(path);
      } else if (!isOfTheProgram || !Files.isRegularFile(file)) {
        throw UserError.input(
            "%s is a link, a named pipe or a device, and is not opened. Put the file itself there, or remove it."
                .formatted(path));
      } else {
        requireTop(path, name);
        ofTheProgram.add(path);
      }
    }

    private void requireReadable(String path) {
      NotOpened.at(folder + folder.getFileSystem().getSeparator() + path)
          .ifPresent(
              why -> {
                throw UserError.input(path + ": " + why.message());
              });
    }

    /** What would not be found where it lies, or under its name, is lost in silence. */
    private static void requireTop(String path, String name) {
      String expected = name.toLowerCase(Locale.ROOT).replace(".yml", ".yaml");
      if (!path.equals(expected)) {
        throw UserError.input(
            "%s is not used where it lies. Expected it as %s in the program folder itself."
                .formatted(path, expected));
      }
    }
  }
}
