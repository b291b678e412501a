package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** An invented program whose groups are of very different sizes, some of one site. */
final class SkewedProgram {

  private static final String[] KINDS = {"pond-leveler", "culvert-fence", "fence-and-pipe"};
  private static final String[] SETTINGS = {
    "farmland", "road-crossing", "residence", "rail", "forestry"
  };
  private static final String[] CAUSES = {"pipe-plugged", "fence-dammed", "pipe-floated", "ice"};
  private static final String[] TYPES = {"road", "home", "farm", "timber"};

  private final Random random;
  private final StringBuilder sites =
      new StringBuilder(
          "site_id,watershed,setting,latitude,longitude,pond_id,damage_cost_per_year_before_usd,wetland_acres_before\n");
  private final StringBuilder installs =
      new StringBuilder(
          "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,crew,funder\n");
  private final StringBuilder materials =
      new StringBuilder("device_id,item,quantity,total_cost_usd,paid_by\n");
  private final StringBuilder visits =
      new StringBuilder("device_id,visited_on,condition,cause,hours\n");
  private final StringBuilder properties =
      new StringBuilder("property_id,site_id,property_type,damage_per_year_usd\n");

  private SkewedProgram(long seed) {
    random = new Random(seed);
  }

  static Path write(Path folder, long seed) throws IOException {
    SkewedProgram program = new SkewedProgram(seed);
    int count = 40 + program.random.nextInt(80);
    for (int i = 0; i < count; i++) {
      program.site(i);
    }
    Path partner = Files.createDirectories(folder.resolve("crew"));
    Files.writeString(folder.resolve("program.yaml"), "as_of: 2025-06-30\nbase_year: 2024\n");
    Files.writeString(partner.resolve("sites.csv"), program.sites);
    Files.writeString(partner.resolve("installs.csv"), program.installs);
    Files.writeString(partner.resolve("materials.csv"), program.materials);
    Files.writeString(partner.resolve("revisits.csv"), program.visits);
    Files.writeString(partner.resolve("properties.csv"), program.properties);
    return folder;
  }

  /** A number from 0, small ones far more often. */
  private int skewed(int values) {
    double uniform = random.nextDouble();
    return (int) (values * uniform * uniform * uniform);
  }

  private void site(int i) {
    line(
        sites,
        "S" + i,
        "9901020" + (1 + skewed(8)),
        random.nextInt(12) == 0 ? "" : SETTINGS[skewed(SETTINGS.length)],
        String.format(Locale.ROOT, "%.4f", 44 + random.nextDouble()),
        String.format(Locale.ROOT, "%.4f", -37 - random.nextDouble()),
        "P" + (i / (1 + random.nextInt(2))),
        random.nextInt(5) == 0 ? "" : "" + (300 + random.nextInt(4000)),
        random.nextInt(5) == 0 ? "" : "" + (1 + random.nextInt(12)));
    int devices = 1 + skewed(4);
    for (int d = 0; d < devices; d++) {
      device("D" + i + "-" + d, "S" + i);
    }
    for (int p = 0; p < skewed(4); p++) {
      line(properties, "R" + i + "-" + p, "S" + i, TYPES[skewed(TYPES.length)], "" + 50 * p);
    }
  }

  private void device(String device, String site) {
    String kind = KINDS[skewed(KINDS.length)];
    boolean isPiped = !kind.equals("culvert-fence");
    int year = 2015 + random.nextInt(9);
    line(
        installs,
        device,
        site,
        year + "-0" + (4 + random.nextInt(5)) + "-15",
        kind,
        isPiped ? (random.nextBoolean() ? "dual" : "single") : "none",
        isPiped ? "" + (8 + 2 * skewed(5)) : "",
        "crew " + random.nextInt(3),
        "funder " + skewed(3));
    if (random.nextInt(10) > 0) {
      line(materials, device, "pipe", "1", "" + (200 + random.nextInt(3000)), "funder 0");
    }
    for (int visited = year + 1; visited <= 2025; visited += 1 + random.nextInt(2)) {
      boolean failed = random.nextInt(7) == 0;
      line(
          visits,
          device,
          visited + "-05-1" + random.nextInt(10),
          failed ? "failed" : "working",
          failed ? CAUSES[skewed(CAUSES.length)] : "",
          "" + (1 + random.nextInt(4)));
    }
  }

  private static void line(StringBuilder text, String... cells) {
    text.append(String.join(",", cells)).append('\n');
  }
}
