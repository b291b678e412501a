package pondtally.reports.app;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pondtally.check.FileFault;

/** What to report of a fault of the program: each cause on one line, and where in our code. */
final class FaultText {

  private static final int MOST_CAUSES = 20;
  private static final int MOST_PLACES = 6;
  private static final int MOST_CHARACTERS = 300;

  private FaultText() {}

  /** The partner's file that was being read, if it was one. */
  static Optional<String> file(Throwable error) {
    return causes(error).stream()
        .filter(FileFault.class::isInstance)
        .map(cause -> ((FileFault) cause).file())
        .findFirst();
  }

  /** The causes from the outermost to the innermost, one line each. */
  static List<String> lines(Throwable error) {
    return causes(error).stream()
        .filter(cause -> !isWrapping(cause))
        .map(cause -> "  " + said(cause) + places(cause))
        .toList();
  }

  private static List<Throwable> causes(Throwable error) {
    List<Throwable> causes = new ArrayList<>();
    for (Throwable e = error; e != null && causes.size() < MOST_CAUSES; e = e.getCause()) {
      causes.add(e);
    }
    return causes;
  }

  /** Spark's own exceptions around one of a task repeat it with a page of its own places. */
  private static boolean isWrapping(Throwable cause) {
    return cause.getCause() != null && cause.getClass().getName().startsWith("org.apache.spark.");
  }

  private static String said(Throwable cause) {
    String first = cause.toString().lines().findFirst().orElse("");
    return first.length() > MOST_CHARACTERS ? first.substring(0, MOST_CHARACTERS) + "…" : first;
  }

  private static String places(Throwable cause) {
    String places =
        Arrays.stream(cause.getStackTrace())
            .filter(frame -> frame.getClassName().startsWith("pondtally."))
            .limit(MOST_PLACES)
            .map(FaultText::place)
            .collect(Collectors.joining(" < "));
    return places.isEmpty() ? "" : " [" + places + "]";
  }

  private static String place(StackTraceElement frame) {
    String type = frame.getClassName().substring("pondtally.".length());
    return type + "." + frame.getMethodName() + ":" + frame.getLineNumber();
  }
}
