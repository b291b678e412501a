package pondtally.intake;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.xml.sax.SAXParseException;

/** Says in words why a workbook cannot be read. */
final class WorkbookFault {

  private WorkbookFault() {}

  /** Refuses files that are no zip file, by what they are instead. */
  static void check(Path path) throws IOException {
    FileMagic magic = FileMagic.valueOf(path.toFile());
    switch (magic) {
      case OOXML -> {}
      case OLE2 -> throw new IOException(ole2(path));
      case UNKNOWN ->
          throw new IOException(
              path.toFile().length() == 0
                  ? "it is empty"
                  : "it is not a workbook, or it is broken");
      default ->
          throw new IOException(
              "it is not an .xlsx workbook (its content is of type %s)".formatted(magic));
    }
  }

  private static String ole2(Path path) {
    try (POIFSFileSystem parts = new POIFSFileSystem(path.toFile(), true)) {
      if (parts.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
        return "it is protected by a password. Save it without one";
      }
      return "it is a workbook of the old .xls kind. Save it as .xlsx";
    } catch (IOException | RuntimeException e) {
      return "it is broken";
    }
  }

  /** The same fault with a message that continues "The file cannot be read: ". */
  static IOException inWords(Exception fault) {
    String said = String.valueOf(fault.getMessage());
    if (said.contains("Strict OOXML")) {
      return new IOException(
          "it is saved as \"Strict Open XML\". Save it as an ordinary .xlsx workbook", fault);
    }
    if (said.contains("DOCTYPE")) {
      return new IOException(
          "it declares entities (DOCTYPE), which no workbook does and which may be meant to do harm",
          fault);
    }
    if (said.contains("potentially malicious")) {
      return new IOException("it holds far more parts than a workbook should", fault);
    }
    if (said.contains("maxElementDepth")) {
      return new IOException("its content is nested far deeper than a workbook's is", fault);
    }
    if (said.contains("Zip bomb")) {
      return new IOException("it unpacks to far more than a workbook should", fault);
    }
    if (said.contains("Failed to read the file input stream")) {
      return new IOException("it is broken off or damaged. Save it anew", fault);
    }
    if (fault instanceof SAXParseException broken) {
      return new IOException(
          "its content breaks off or is damaged (line %s of a part)"
              .formatted(broken.getLineNumber()),
          fault);
    }
    boolean isOurs = fault.getClass() == IOException.class || fault instanceof FileSystemException;
    return isOurs
        ? (IOException) fault
        : new IOException("it is broken (%s)".formatted(Shown.value(said)), fault);
  }
}
