package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pondtally.app.ThisMachine;

/**
 * What a run writes beside its output, {@code .out.writing-PROCESS@MACHINE}: the name says which
 * process of which machine writes it.
 *
 * @param process number of the process
 * @param part {@code -old} or {@code -replaced} for an earlier output on its way out; empty for the
 *     new one
 * @param machine name of the machine, with its mark
 */
record Beside(Path path, long process, String part, String machine) {

  private static final Pattern ENDING =
      Pattern.compile("(\\d{1,18})(-old|-replaced|)@([A-Za-z0-9._-]+)");

  /** Where this process writes. */
  static Path own(Path target) {
    return target.resolveSibling(prefix(target) + ending(""));
  }

  /** Where this process moves what goes away. */
  static Path own(Path target, String part) {
    return target.resolveSibling(prefix(target) + ending(part));
  }

  private static String prefix(Path target) {
    return "." + target.getFileName() + ".writing-";
  }

  private static String ending(String part) {
    return ProcessHandle.current().pid() + part + "@" + ThisMachine.name();
  }

  /** All that lies beside an output, in the order of the names; other names are not ours. */
  static List<Beside> of(Path target) throws IOException {
    String prefix = prefix(target);
    List<Beside> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(target.getParent())) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.startsWith(prefix)) {
          parsed(file, name.substring(prefix.length())).ifPresent(found::add);
        }
      }
    }
    return found;
  }

  private static Optional<Beside> parsed(Path file, String ending) {
    Matcher parts = ENDING.matcher(ending);
    return parts.matches()
        ? Optional.of(
            new Beside(file, Long.parseLong(parts.group(1)), parts.group(2), parts.group(3)))
        : Optional.empty();
  }

  /** Whether a run of this machine wrote it; of others nothing is known but the time. */
  boolean isOfThisMachine() {
    return machine.equals(ThisMachine.name());
  }

  /** Whether it was left by a run of this machine that is over. */
  boolean isLeftHere() {
    return isOfThisMachine()
        && (process == ProcessHandle.current().pid() || ProcessHandle.of(process).isEmpty());
  }

  /** Whether it is the new output of a run, not an old one on its way out. */
  boolean isOutput() {
    return part.isEmpty();
  }

  /** Name of the machine without its mark. */
  String host() {
    return machine.replaceFirst("[.][^.]*$", "");
  }

  /** When something in it was last written, by the clock of the disk. */
  FileTime lastChange() throws IOException {
    FileTime last = Files.getLastModifiedTime(path);
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.toList()) {
        FileTime time = Files.getLastModifiedTime(file);
        last = time.compareTo(last) > 0 ? time : last;
      }
    }
    return last;
  }
}
