package pondtally.sample;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A program folder of any size, the same for the same arguments: two devices a site, about seven
 * visits and three material lines a device, two hundred watersheds, five pipe types with Weibull
 * lives. A plain one is clean and dates failures by discovery; a full one dates them by interval
 * and has properties, areas and removals, 5 per cent of sites on a shared pond and 3 per cent of
 * visits and material lines with a fault.
 */
public final class LargeProgram {

  private static final String[] WALLS = {"single", "single", "dual", "dual", "smooth"};
  private static final int[] INCHES = {10, 12, 12, 15, 12};
  private static final double[] SHAPES = {1.3, 1.5, 1.2, 1.6, 1.0};
  private static final double[] SCALES = {1900, 2400, 3900, 3300, 2900};
  private static final String[] SETTINGS = {"road-crossing", "farmland", "residence", "trail"};
  private static final int FIRST = (int) LocalDate.of(2005, 1, 1).toEpochDay();
  private static final int LAST_INSTALL = (int) LocalDate.of(2022, 12, 31).toEpochDay();
  private static final int LAST = (int) LocalDate.of(2024, 12, 31).toEpochDay();
  private static final Map<String, String> HEADINGS = new LinkedHashMap<>();

  static {
    HEADINGS.put(
        "sites",
        "site_id,watershed,setting,pond_id,removals_per_year_before,wetland_acres_before,damage_cost_per_year_before_usd");
    HEADINGS.put(
        "installs",
        "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,pipe_length_ft,labor_hours");
    HEADINGS.put("materials", "device_id,item,quantity,unit,total_cost_usd,purchased_on");
    HEADINGS.put("revisits", "device_id,visited_on,condition,action,hours,cost_usd");
    HEADINGS.put("properties", "property_id,site_id,property_type");
    HEADINGS.put("areas", "pond_id,measured_on,acres,method");
    HEADINGS.put("removals", "site_id,year,removals");
  }

  private final SplittableRandom random;
  private final boolean isFull;
  private final Map<String, Writer[]> tables = new LinkedHashMap<>();
  private int partner;

  private LargeProgram(boolean isFull) {
    this.isFull = isFull;
    random = new SplittableRandom(42);
  }

  /** Arguments: folder, devices, partners, {@code plain} or {@code full}. */
  public static void main(String[] arguments) throws IOException {
    write(
        Path.of(arguments[0]),
        Integer.parseInt(arguments[1]),
        Integer.parseInt(arguments[2]),
        arguments[3].equals("full"));
  }

  /** Writes the program; {@code folder} is made. */
  public static void write(Path folder, int devices, int partners, boolean isFull)
      throws IOException {
    LargeProgram program = new LargeProgram(isFull);
    program.open(folder, partners);
    for (int site = 0; 2 * site < devices; site++) {
      program.partner = site % partners;
      program.site(site);
      for (int device = 2 * site; device < Math.min(devices, 2 * site + 2); device++) {
        program.device(device, site);
      }
    }
    for (Writer[] writers : program.tables.values()) {
      for (Writer writer : writers) {
        writer.close();
      }
    }
  }

  private void open(Path folder, int partners) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("program.yaml"),
        "region: Large program\nas_of: 2024-12-31\nwatershed_digits: 12\nbase_year: 2024\nfailure_dated: "
            + (isFull ? "interval\n" : "discovery\n"));
    for (String table : HEADINGS.keySet()) {
      boolean isExtra = !"sites installs materials revisits".contains(table);
      Writer[] writers = new Writer[isExtra && !isFull ? 0 : partners];
      for (int p = 0; p < writers.length; p++) {
        Path home =
            Files.createDirectories(folder.resolve(String.format(Locale.ROOT, "partner-%05d", p)));
        writers[p] = Files.newBufferedWriter(home.resolve(table + ".csv"));
        writers[p].write(HEADINGS.get(table) + "\n");
      }
      tables.put(table, writers);
    }
  }

  private void row(String table, Object... cells) throws IOException {
    StringBuilder line = new StringBuilder();
    for (Object cell : cells) {
      line.append(line.isEmpty() ? "" : ",").append(cell);
    }
    tables.get(table)[partner].append(line.append('\n'));
  }

  private void site(int site) throws IOException {
    String code =
        String.format(
            Locale.ROOT, "99%02d%02d%02d0101", 1 + site % 4, 1 + site / 4 % 5, 1 + site / 20 % 10);
    boolean isShared = isFull && site > 0 && random.nextInt(20) == 0;
    int pond = isShared ? site - 1 : site;
    row(
        "sites",
        "S" + site,
        code,
        SETTINGS[site % SETTINGS.length],
        isFull ? "P" + pond : "",
        random.nextInt(8),
        (1 + random.nextInt(190)) / 10.0,
        isFull && site % 3 > 0 ? 500 + random.nextInt(9000) : "");
    if (!isFull) {
      return;
    }
    row("properties", "R" + site, "S" + site, site % 2 == 0 ? "road" : "cropland");
    if (!isShared) {
      for (int year = 2023; year <= 2024; year++) {
        row("areas", "P" + pond, year + "-06-15", (1 + random.nextInt(190)) / 10.0, "imagery");
      }
    }
    row("removals", "S" + site, 2023, random.nextInt(3));
    row("removals", "S" + site, 2024, random.nextInt(3));
  }

  private void device(int device, int site) throws IOException {
    int type = random.nextInt(WALLS.length);
    int installed = FIRST + random.nextInt(LAST_INSTALL - FIRST);
    row(
        "installs",
        "D" + device,
        "S" + site,
        LocalDate.ofEpochDay(installed),
        "pond-leveler",
        WALLS[type],
        INCHES[type],
        20 * (1 + random.nextInt(4)),
        4 + random.nextInt(20));
    row(
        "materials",
        "D" + device,
        "pipe",
        1 + random.nextInt(4),
        "piece",
        usd(40_000),
        date(installed));
    row("materials", "D" + device, "fence-panel", 3, "piece", usd(30_000), date(installed));
    row("materials", "D" + device, "fastener", 1, "box", usd(4_000), date(installed));
    visits(device, type, installed);
  }

  private void visits(int device, int type, int installed) throws IOException {
    int fails = installed + life(type);
    int day = installed;
    boolean isGone = false;
    for (int left = 1 + random.nextInt(19); left > 0 && !isGone; left--) {
      day += 60 + random.nextInt(420);
      if (day > LAST) {
        return;
      }
      String condition = "working";
      String action = "none";
      if (day >= fails) {
        condition = "failed";
        action = random.nextInt(5) > 0 ? "repaired" : "removed";
        isGone = action.equals("removed");
        fails = day + life(type);
      } else if (random.nextInt(80) == 0) {
        condition = "retired";
        isGone = true;
      }
      row(
          "revisits",
          "D" + device,
          date(day),
          condition,
          action,
          (5 + random.nextInt(60)) / 10.0,
          usd(9_000));
    }
  }

  private int life(int type) {
    double unit = Math.pow(-Math.log(1 - random.nextDouble()), 1 / SHAPES[type]);
    return 1 + (int) Math.min(1e6, SCALES[type] * unit);
  }

  /** Of a full program 3 per cent are no dates. */
  private String date(int day) {
    boolean isFault = isFull && random.nextInt(100) < 3;
    return isFault ? "31/02/2020" : LocalDate.ofEpochDay(day).toString();
  }

  private String usd(int belowCents) {
    int cents = 100 + random.nextInt(belowCents);
    return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
  }
}
