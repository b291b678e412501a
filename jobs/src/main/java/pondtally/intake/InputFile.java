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
 * @param columns what the partner's {@code columns.yaml} states
 */
public record InputFile(int index, String path, String location, String partner, ColumnsMap columns)
    implements Serializable {

  /** A file of a partner that has no {@code columns.yaml}. */
  public InputFile(int index, String path, String location, String partner) {
    this(index, path, location, partner, ColumnsMap.NONE);
  }

  /** What {@code columns.yaml} states about one of its sheets. */
  SheetMap sheet(String name) {
    return columns.sheet(path, name);
  }
}
