package pondtally.intake;

import java.io.Serializable;

/**
 * One file of a program folder.
 *
 * @param index place in the sorted list of input files
 * @param path below the program folder, with {@code /}; what messages and tables call the file
 * @param location absolute path
 * @param partner first folder below the program folder; empty for a file that lies in the program
 *     folder itself
 * @param fixes corrections of its rows that came back in a list
 */
public record InputFile(int index, String path, String location, String partner, FixShare fixes)
    implements Serializable {

  /** A file without corrections. */
  public InputFile(int index, String path, String location, String partner) {
    this(index, path, location, partner, FixShare.NONE);
  }

  /** The same file with corrections. */
  InputFile with(FixShare share) {
    return new InputFile(index, path, location, partner, share);
  }
}
