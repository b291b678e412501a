package pondtally.intake;

import java.io.Serializable;
import java.util.Optional;

/**
 * One file of a program folder.
 *
 * @param index place in the sorted list of input files
 * @param path below the program folder, with {@code /}; what messages and tables call the file
 * @param location absolute path, or address on another file system
 * @param partner first folder below the program folder; empty for a file that lies in the program
 *     folder itself
 * @param columns what the partner's {@code columns.yaml} states
 * @param fixes corrections of its rows that came back in a list
 */
public record InputFile(
    int index, String path, String location, String partner, ColumnsMap columns, FixShare fixes)
    implements Serializable {

  /** A file without corrections, of a partner that has no {@code columns.yaml}. */
  public InputFile(int index, String path, String location, String partner) {
    this(index, path, location, partner, ColumnsMap.NONE);
  }

  /** A file without corrections. */
  public InputFile(int index, String path, String location, String partner, ColumnsMap columns) {
    this(index, path, location, partner, columns, FixShare.NONE);
  }

  /** Whether it lies on another file system: its location is the address there. */
  public boolean isElsewhere() {
    return location.matches("[A-Za-z][A-Za-z0-9+.-]+:/.*");
  }

  /** Why it is never opened, as a link or a pipe is not; empty where it may be. */
  Optional<NotOpened> notOpened() {
    return isElsewhere() ? Optional.empty() : NotOpened.at(location);
  }

  /** Whether it is a file that is opened, of whatever kind: no link, pipe or device. */
  public boolean isOpened() {
    return notOpened().isEmpty();
  }

  /** The same file at another place. */
  public InputFile at(String other) {
    return new InputFile(index, path, other, partner, columns, fixes);
  }

  /** The same file with corrections. */
  InputFile with(FixShare share) {
    return new InputFile(index, path, location, partner, columns, share);
  }

  /** What {@code columns.yaml} states about one of its sheets. */
  SheetMap sheet(String name) {
    return columns.sheet(path, name);
  }
}
