package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pondtally.check.UserError;

/** Where a path leads once its links are followed. */
final class RealPlace {

  private RealPlace() {}

  /**
   * The place of an output; a link to a folder stands for that folder.
   *
   * @throws UserError with exit code 4 where the link leads nowhere
   */
  static Path ofOutput(Path folder) {
    Path target = folder.toAbsolutePath().normalize();
    if (!Files.isSymbolicLink(target)) {
      return target;
    }
    try {
      return target.toRealPath();
    } catch (IOException e) {
      throw UserError.output(
          "%s is a link that leads nowhere. Make the folder that it should lead to, or give another name."
              .formatted(folder));
    }
  }

  /** The same for a path of which not everything need exist. */
  static Path of(Path path) {
    Path whole = path.toAbsolutePath().normalize();
    for (Path there = whole; there != null; there = there.getParent()) {
      try {
        return there.toRealPath().resolve(there.relativize(whole)).normalize();
      } catch (IOException e) {
        // Not there, or not to be looked at: its parent is tried.
        continue;
      }
    }
    return whole;
  }
}
