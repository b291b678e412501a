package pondtally.reports.workbook;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Workbook;

/**
 * Writes a workbook or document so that the same content gives the same bytes, whatever the clock
 * says.
 */
public final class StableZip {

  /** Past the first day a ZIP archive can hold, which is stored with the time zone. */
  private static final LocalDateTime EPOCH = LocalDateTime.of(1980, 2, 1, 0, 0);

  private StableZip() {}

  /** What writes itself as a ZIP archive. */
  @FunctionalInterface
  public interface Archive {
    void write(OutputStream out) throws IOException;
  }

  /** Writes {@code book} to {@code file}. */
  public static void write(Workbook book, Path file) throws IOException {
    writeArchive(book::write, file);
  }

  /** Writes {@code archive} to {@code file}. */
  public static void writeArchive(Archive archive, Path file) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    Path stamped = Files.createTempFile(parent, ".archive", ".tmp");
    try {
      writePlain(archive, stamped);
      restamp(stamped, file);
    } finally {
      Files.deleteIfExists(stamped);
    }
  }

  private static void writePlain(Archive archive, Path file) throws IOException {
    try (OutputStream bytes = Files.newOutputStream(file);
        NotedFault noted = new NotedFault(bytes);
        OutputStream out = new BufferedOutputStream(noted)) {
      try {
        archive.write(out);
      } catch (RuntimeException e) {
        if (noted.fault() != null) {
          throw noted.fault();
        }
        throw e;
      }
    }
  }

  private static void restamp(Path from, Path to) throws IOException {
    try (ZipFile in = new ZipFile(from.toFile());
        ZipOutputStream out =
            new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(to)))) {
      Enumeration<? extends ZipEntry> entries = in.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        ZipEntry plain = new ZipEntry(entry.getName());
        plain.setTimeLocal(EPOCH);
        out.putNextEntry(plain);
        try (InputStream part = in.getInputStream(entry)) {
          part.transferTo(out);
        }
        out.closeEntry();
      }
    }
  }
}
