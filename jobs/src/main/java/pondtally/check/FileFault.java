package pondtally.check;

/** A fault of the program that came up while one partner's file was read; the cause says which. */
public final class FileFault extends RuntimeException {

  private final String file;

  /**
   * @param file path below the program folder
   */
  public FileFault(String file, Throwable cause) {
    super("while " + file + " was read", cause);
    this.file = file;
  }

  /** The file, by its path below the program folder. */
  public String file() {
    return file;
  }
}
