package pondtally.table;

/**
 * A result table whose file is in the folder already, because it is too long to be held in memory.
 *
 * @param spec its declared name and columns
 * @param rows how many rows the file has
 * @param sha256 sum of the file, in hexadecimal
 */
public record TableFile(TableSpec spec, long rows, String sha256) {

  /** Name of the file. */
  public String fileName() {
    return spec.name() + ".csv";
  }
}
