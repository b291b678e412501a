package pondtally.reports.app;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TimeZone;
import pondtally.app.Version;

/**
 * What somebody who mends a fault must know of the machine: versions, memory, letters and language.
 * No path, no user's or machine's name and no font's name, so that it can be sent to anybody.
 */
final class FaultFacts {

  private static final String SPARK = "/spark-version-info.properties";
  private static final String FREE_CHART = "/META-INF/maven/org.jfree/jfreechart/pom.properties";
  private static final String CSV = "/META-INF/maven/org.apache.commons/commons-csv/pom.properties";
  private static final String LETTERS = "/pondtally/reports/chart/NotoSans-Regular.ttf";

  /** One letter of each script: Latin, Greek, Cyrillic, Arabic, Devanagari, Han. */
  private static final String SCRIPTS = "\u00e9\u03b2\u0416\u0639\u0905\u4e2d";

  private final List<String> lines = new ArrayList<>();

  private FaultFacts() {}

  /** A line for each fact: its name, a colon and what this machine has. */
  static List<String> lines() {
    FaultFacts facts = new FaultFacts();
    facts.add("pondtally", Version.text());
    facts.java();
    facts.machine();
    facts.libraries();
    facts.letters();
    facts.language();
    return List.copyOf(facts.lines);
  }

  private void add(String name, String value) {
    lines.add(String.format(Locale.ROOT, "%-18s %s", name + ":", value));
  }

  private void java() {
    add("Java", of("java.runtime.version") + ", " + of("java.vendor"));
    add("Java machine", of("java.vm.name") + ", " + of("java.vm.info"));
    add("memory", mib(Heap.machineBytes()) + "; a run takes up to " + mib(mostBytes()));
    add("Java options", System.getenv("PONDTALLY_JAVA_OPTS") == null ? "none added" : "some added");
  }

  private void machine() {
    add("processors", Integer.toString(Runtime.getRuntime().availableProcessors()));
    add("system", of("os.name") + " " + of("os.version") + ", " + of("os.arch"));
    add("temporary folder", temporary());
  }

  private void libraries() {
    add("Spark", version(SPARK));
    add("POI", org.apache.poi.Version.getVersion());
    add("JFreeChart", version(FREE_CHART));
    add("Commons CSV", version(CSV));
  }

  private void letters() {
    add("letters of charts", bundled());
    Font[] installed = GraphicsEnvironment.getLocalGraphicsEnvironment().getAllFonts();
    long scripts = SCRIPTS.codePoints().filter(letter -> isIn(installed, letter)).count();
    add(
        "fonts",
        "%s installed; they draw %s of %s scripts (Latin, Greek, Cyrillic, Arabic, Devanagari, Han)"
            .formatted(installed.length, scripts, SCRIPTS.length()));
  }

  private void language() {
    add("locale", Locale.getDefault().toLanguageTag());
    add("characters", Charset.defaultCharset() + "; file names " + of("sun.jnu.encoding"));
    add("time zone", TimeZone.getDefault().getID());
  }

  private static long mostBytes() {
    return Heap.most(Heap.machineBytes());
  }

  private static boolean isIn(Font[] fonts, int letter) {
    return List.of(fonts).stream().anyMatch(font -> font.canDisplay(letter));
  }

  private static String bundled() {
    try (InputStream in = FaultFacts.class.getResourceAsStream(LETTERS)) {
      return in == null
          ? "missing from the program"
          : Font.createFont(Font.TRUETYPE_FONT, in).getFamily(Locale.ROOT) + ", with the program";
    } catch (IOException | FontFormatException e) {
      return "cannot be read: " + e.getClass().getSimpleName();
    }
  }

  private static String temporary() {
    Path folder = Path.of(System.getProperty("java.io.tmpdir"));
    try {
      String free = mib(Files.getFileStore(folder).getUsableSpace()) + " free";
      return Files.isWritable(folder) ? free : "not writable; " + free;
    } catch (IOException e) {
      return "cannot be read: " + e.getClass().getSimpleName();
    }
  }

  private static String version(String resource) {
    Properties properties = new Properties();
    try (InputStream in = FaultFacts.class.getResourceAsStream(resource)) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      return "cannot be read: " + e.getClass().getSimpleName();
    }
    return properties.getProperty("version", "not found");
  }

  private static String of(String property) {
    return System.getProperty(property, "not stated");
  }

  private static String mib(long bytes) {
    return (bytes >> 20) + " MiB";
  }
}
