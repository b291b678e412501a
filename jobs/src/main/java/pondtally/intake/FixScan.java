package pondtally.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Enumeration;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A quick look into a workbook for the mark of a list of rows to correct. */
final class FixScan {

  /** The mark stands in the first row of a sheet, so near the beginning of its part. */
  private static final int LOOKED_AT = 1 << 18;

  private FixScan() {}

  /** Whether the mark is there; false for everything that cannot be looked into. */
  static boolean holdsMark(InputFile file) {
    if (FileKind.of(file.path()) != FileKind.WORKBOOK || !file.isOpened()) {
      return false;
    }
    try (ZipFile zip = new ZipFile(file.location())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        if (holdsText(entry.getName()) && holdsMark(zip, entry)) {
          return true;
        }
      }
      return false;
    } catch (IOException | IllegalArgumentException e) {
      return false;
    }
  }

  private static boolean holdsText(String part) {
    return part.endsWith("sharedStrings.xml") || part.contains("worksheets/");
  }

  private static boolean holdsMark(ZipFile zip, ZipEntry entry) throws IOException {
    try (InputStream in = zip.getInputStream(entry)) {
      return new String(in.readNBytes(LOOKED_AT), StandardCharsets.UTF_8)
          .contains(FixMarks.FIX_LIST);
    }
  }
}
