package pondtally.check;

/** Something the user can put right: the message says what and how, and is shown as it stands. */
public final class UserError extends RuntimeException {

  private final int exitCode;

  /**
   * @param exitCode 2 wrong use, 3 input unusable, 4 output not writable, 5 memory too small
   */
  public UserError(int exitCode, String message) {
    super(message);
    this.exitCode = exitCode;
  }

  /** An input that cannot be used at all. */
  public static UserError input(String message) {
    return new UserError(3, message);
  }

  /** An output that cannot be written. */
  public static UserError output(String message) {
    return new UserError(4, message);
  }

  /** A command that was used wrongly. */
  public static UserError usage(String message) {
    return new UserError(2, message);
  }

  /** The exit code of the command. */
  public int exitCode() {
    return exitCode;
  }
}
