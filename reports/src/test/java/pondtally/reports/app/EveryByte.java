package pondtally.reports.app;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Searches names and bytes of all files of a folder, archives unpacked, for secrets. */
final class EveryByte {

  private static final Pattern LIKELY = Pattern.compile("zq\\d{9}xw|-?\\d{2}\\.\\d{6}");

  private final Set<String> secrets;
  private final Set<String> found = new TreeSet<>();
  private long bytes;

  private EveryByte(Set<String> secrets) {
    this.secrets = secrets;
  }

  static EveryByte search(Path folder, Set<String> secrets) throws IOException {
    EveryByte search = new EveryByte(secrets);
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = folder.relativize(file).toString();
        search.look(name, name.getBytes(StandardCharsets.UTF_8));
        if (Files.isRegularFile(file)) {
          search.file(name, Files.readAllBytes(file));
        }
      }
    }
    return search;
  }

  private void file(String name, byte[] content) throws IOException {
    look(name, content);
    if (content.length > 3 && content[0] == 'P' && content[1] == 'K') {
      try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(content))) {
        for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
          look(name, entry.getName().getBytes(StandardCharsets.UTF_8));
          file(name + "!" + entry.getName(), zip.readAllBytes());
        }
      }
    }
  }

  private void look(String name, byte[] content) {
    bytes += content.length;
    String text = new String(content, StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
    // A wide encoding has a nought between letters; a split run has tags between them.
    for (String form :
        new String[] {text, text.replace("\0", ""), text.replaceAll("<[^>]{0,200}>", "")}) {
      Matcher likely = LIKELY.matcher(form);
      while (likely.find()) {
        if (secrets.contains(likely.group())) {
          found.add(name + ": " + likely.group());
        }
      }
    }
  }

  /** Where which secret stands. */
  Set<String> found() {
    return found;
  }

  /** How much was looked through, archives as they stand and unpacked. */
  long bytes() {
    return bytes;
  }
}
