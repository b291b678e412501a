package pondtally.reports.workbook;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * Keeps the fault of a stream, since libraries that write to it may throw something else, without
 * the cause.
 */
final class NotedFault extends FilterOutputStream {

  private IOException fault;

  NotedFault(OutputStream out) {
    super(out);
  }

  /** The first fault; null: there was none. */
  IOException fault() {
    return fault;
  }

  @Override
  public void write(int b) throws IOException {
    noted(() -> out.write(b));
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    noted(() -> out.write(bytes, from, length));
  }

  @Override
  public void flush() throws IOException {
    noted(out::flush);
  }

  private interface Writing {
    void run() throws IOException;
  }

  private void noted(Writing writing) throws IOException {
    try {
      writing.run();
    } catch (IOException e) {
      fault = fault == null ? e : fault;
      throw e;
    }
  }
}
