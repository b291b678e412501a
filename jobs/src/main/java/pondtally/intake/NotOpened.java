package pondtally.intake;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import pondtally.check.Severity;

/** Why something in a program folder is never opened, whatever its name says. */
enum NotOpened {
  /** What lies outside the program folder is not read. */
  LINK(
      Severity.NOTICE,
      IntakeRule.FILE_NOT_READ,
      "Not read: it is a link to another place. Put the file itself here if it holds records."),

  /** Whoever opens a pipe waits for somebody who writes into it. */
  DEVICE(
      Severity.NOTICE,
      IntakeRule.FILE_NOT_READ,
      "Not read: it is a named pipe or a device, not a file. Put a file here if there are records for it."),

  /** The file is there, and cannot be asked for: Java has no text for the bytes of its name. */
  NAME(
      Severity.SET_ASIDE,
      IntakeRule.FILE_UNREADABLE,
      "The file cannot be read: its name, or that of its folder, holds letters that this machine writes in another way (shown as %s). Rename it with plain letters, or, if the name looks right elsewhere, set LC_ALL=C.UTF-8 and run again. Nothing of it is counted."
          .formatted("\uFFFD"));

  /** What stands for each byte of a name that is no letter here. */
  private static final String UNKNOWN_LETTER = "\uFFFD";

  private final Severity severity;
  private final IntakeRule rule;
  private final String message;

  NotOpened(Severity severity, IntakeRule rule, String message) {
    this.severity = severity;
    this.rule = rule;
    this.message = message;
  }

  /** Why the file at a place of this machine is not opened; empty where it may be. */
  static Optional<NotOpened> at(String location) {
    try {
      Path path = Path.of(location);
      BasicFileAttributes there =
          Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (there.isSymbolicLink()) {
        return Optional.of(LINK);
      }
      return there.isOther() ? Optional.of(DEVICE) : Optional.empty();
    } catch (InvalidPathException e) {
      return Optional.of(NAME);
    } catch (IOException e) {
      return location.contains(UNKNOWN_LETTER) ? Optional.of(NAME) : Optional.empty();
    }
  }

  Severity severity() {
    return severity;
  }

  IntakeRule rule() {
    return rule;
  }

  String message() {
    return message;
  }
}
