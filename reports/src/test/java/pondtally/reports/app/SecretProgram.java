package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/** A generated program with a made-up secret in every private place. */
final class SecretProgram {

  private static final String[] KINDS = {"pond-leveler", "culvert-fence", "fence-and-pipe"};
  private static final String[] SETTINGS = {"farmland", "road-crossing", "residence", "rail"};
  private static final int SITES = 160;

  private final Random random = new Random(20251231);
  private final Set<String> secrets = new HashSet<>();
  private final Path folder;

  private SecretProgram(Path folder) {
    this.folder = folder;
  }

  /** Writes the program; returns every secret in it. */
  static Set<String> write(Path folder) throws IOException {
    SecretProgram program = new SecretProgram(folder);
    program.write();
    return program.secrets;
  }

  private String secret() {
    String made = "zq" + String.format(Locale.ROOT, "%09d", random.nextInt(1_000_000_000)) + "xw";
    secrets.add(made);
    return made;
  }

  private void write() throws IOException {
    Path partner = Files.createDirectories(folder.resolve(secret()));
    Files.writeString(
        folder.resolve("program.yaml"), "# " + secret() + "\nregion: Invented basin\n");
    StringBuilder sites =
        new StringBuilder(
            "site_id,watershed,setting,latitude,longitude,landowner,pond_id,damage_cost_per_year_before_usd,wetland_acres_before,county,town,road_id\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,crew,funder\n");
    StringBuilder materials = new StringBuilder("device_id,item,quantity,total_cost_usd,paid_by\n");
    StringBuilder visits =
        new StringBuilder("device_id,visited_on,condition,cause,notes,paid_by\n");
    StringBuilder properties =
        new StringBuilder("property_id,site_id,property_type,damage_per_year_usd,owner\n");
    String[] crews = {secret(), secret(), secret()};
    String[] funders = {secret(), secret()};
    for (int i = 0; i < SITES; i++) {
      String site = secret();
      String device = secret();
      String watershed = i < 3 ? "99010204" : "9901020" + (1 + i % 3);
      String latitude = String.format(Locale.ROOT, "%.6f", 44 + random.nextDouble());
      String longitude = String.format(Locale.ROOT, "%.6f", -37 - random.nextDouble());
      secrets.add(latitude);
      secrets.add(longitude);
      line(
          sites,
          site,
          watershed,
          SETTINGS[i % 4],
          latitude,
          longitude,
          secret(),
          secret(),
          "" + (500 + random.nextInt(3000)),
          "" + (1 + random.nextInt(9)),
          secret(),
          secret(),
          secret());
      String kind = KINDS[i % 3];
      String wall = kind.equals("culvert-fence") ? "none" : "dual";
      line(
          installs,
          device,
          site,
          "202" + i % 4 + "-05-1" + i % 9,
          kind,
          wall,
          kind.equals("culvert-fence") ? "" : "12",
          crews[i % 3],
          funders[i % 2]);
      line(materials, device, "pipe", "1", "" + (400 + random.nextInt(2000)), funders[i % 2]);
      for (int year = 0; year < 3; year++) {
        boolean failed = random.nextInt(6) == 0;
        line(
            visits,
            device,
            "202" + (i % 4 + year + 1) + "-07-0" + (1 + year),
            failed ? "failed" : "working",
            failed ? "pipe-plugged" : "",
            year == 0 ? secret() : "",
            "");
      }
      line(properties, secret(), site, i % 2 == 0 ? "road" : "home", "800", secret());
    }
    // Rows with faults, so that their cells reach the lists of issues.
    for (int i = 0; i < 20; i++) {
      line(visits, secret(), "2024-13-45", secret(), secret(), secret(), "");
    }
    save(partner, "sites", sites);
    save(partner, "installs", installs);
    save(partner, "materials", materials);
    save(partner, "revisits", visits);
    save(partner, "properties", properties);
  }

  private void save(Path partner, String table, StringBuilder text) throws IOException {
    Files.writeString(partner.resolve(table + "-" + secret() + ".csv"), text);
  }

  private static void line(StringBuilder text, String... cells) {
    text.append(String.join(",", cells)).append('\n');
  }
}
