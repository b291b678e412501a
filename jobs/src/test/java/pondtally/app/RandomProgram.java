package pondtally.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * An invented program folder drawn at random: shared ponds and properties, devices that fail, are
 * repaired, replaced by another design or removed, lines with and without dates, payers and claims,
 * costs from before the price index to after it, and gaps everywhere.
 */
final class RandomProgram {

  private static final LocalDate FIRST = LocalDate.of(1997, 3, 1);
  private static final LocalDate CUT = LocalDate.of(2026, 6, 30);
  private static final List<String> FUNDERS = List.of("Alder Fund", "Marl Trust", "Sedge Grant");
  private static final List<String> WALLS = List.of("single", "dual", "smooth");
  private static final List<String> ITEMS = List.of("pipe", "coupler", "fence-panel", "post");

  private final SplittableRandom random;
  private final StringBuilder sites =
      new StringBuilder(
          "site_id,watershed,setting,pond_id,removals_per_year_before,damage_cost_per_year_before_usd,damage_cost_year,wetland_acres_before,flooded_acres_before\n");
  private final StringBuilder installs =
      new StringBuilder(
          "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,pipe_length_ft,fence_diameter_ft,crew,funder,labor_hours,volunteer_hours,install_cost_usd,match_for,tracked_from\n");
  private final StringBuilder materials =
      new StringBuilder("device_id,item,quantity,total_cost_usd,purchased_on,paid_by,match_for\n");
  private final StringBuilder visits =
      new StringBuilder(
          "device_id,visited_on,condition,cause,action,hours,volunteer_hours,cost_usd,paid_by,match_for,wetland_acres\n");
  private final StringBuilder properties =
      new StringBuilder(
          "property_id,site_id,property_type,protected_from,damage_per_year_usd,damage_year\n");
  private final StringBuilder removals =
      new StringBuilder("site_id,year,removals,avoided,evidence\n");
  private final StringBuilder areas = new StringBuilder("site_id,measured_on,acres,method\n");

  private RandomProgram(long seed) {
    random = new SplittableRandom(seed);
  }

  /** Writes a program of so many sites. */
  static void write(Path folder, long seed, int sites) throws IOException {
    RandomProgram program = new RandomProgram(seed);
    for (int i = 0; i < sites; i++) {
      program.site(i);
    }
    Path own = Files.createDirectories(folder.resolve("sedge-valley"));
    program.settings(folder);
    Files.writeString(own.resolve("sites.csv"), program.sites);
    Files.writeString(own.resolve("installs.csv"), program.installs);
    Files.writeString(own.resolve("materials.csv"), program.materials);
    Files.writeString(own.resolve("revisits.csv"), program.visits);
    Files.writeString(own.resolve("properties.csv"), program.properties);
    Files.writeString(own.resolve("removals.csv"), program.removals);
    Files.writeString(own.resolve("areas.csv"), program.areas);
    program.money(own);
  }

  private void settings(Path folder) throws IOException {
    Files.writeString(
        folder.resolve("program.yaml"),
        """
        as_of: %s
        base_year: 2024
        period: {from: 2025-07-01, to: 2026-06-30}
        volunteer_rate_usd: 31.8
        resamples: 100
        watershed_digits: 10
        """
            .formatted(CUT));
  }

  private void money(Path own) throws IOException {
    StringBuilder budgets =
        new StringBuilder("funder,period_start,period_end,award_usd,match_required_usd\n");
    for (String funder : FUNDERS) {
      budgets.append(funder + ",2018-07-01,2022-06-30,90000,20000\n");
      budgets.append(funder + ",2022-07-01,2026-06-30,,\n");
    }
    Files.writeString(own.resolve("budgets.csv"), budgets);
    StringBuilder expenses = new StringBuilder("date,kind,usd,miles,paid_by,match_for\n");
    for (int i = 0; i < 40; i++) {
      expenses.append(
          "%s,travel,%s,%s,%s,%s%n"
              .formatted(
                  day(FIRST, CUT), maybe(usd(400)), random.nextInt(90) + i, payer(), claim()));
    }
    Files.writeString(own.resolve("expenses.csv"), expenses);
  }

  private void site(int number) {
    String id = "S" + number;
    sites.append(
        "%s,99010101%s,%s,P%s,%s,%s,%s,%s,%s%n"
            .formatted(
                id,
                maybe("010" + random.nextInt(3)),
                maybe(random.nextBoolean() ? "farmland" : "road-crossing"),
                number - (random.nextInt(4) == 0 && number > 0 ? 1 : 0),
                maybe(Integer.toString(random.nextInt(6))),
                random.nextInt(3) == 0 ? "" : usd(5000),
                maybe("2015"),
                maybe(decimal(9)),
                maybe(decimal(12))));
    for (int i = 0; i < random.nextInt(3); i++) {
      properties.append(
          "H%s,%s,%s,%s,%s,2020%n"
              .formatted(
                  number - (random.nextInt(5) == 0 && number > 0 ? 1 : 0) + 1000 * i,
                  id,
                  i == 0 ? "road" : "home",
                  maybe("2012-05-01"),
                  maybe(usd(3000))));
    }
    LocalDate first = CUT;
    for (int i = 0; i <= random.nextInt(3); i++) {
      LocalDate day = day(FIRST, CUT.minusDays(200));
      first = day.isBefore(first) ? day : first;
      device(id + "-" + i, id, day);
    }
    for (int year = first.getYear(); year <= 2026; year++) {
      if (random.nextBoolean()) {
        removals.append(
            "%s,%s,%s,%s,%s%n"
                .formatted(
                    id,
                    year,
                    maybe(Integer.toString(random.nextInt(4))),
                    maybe(Integer.toString(random.nextInt(4))),
                    maybe("log")));
      }
      if (random.nextInt(4) == 0) {
        areas.append("%s,%s-08-01,%s,survey%n".formatted(id, year, decimal(9)));
      }
    }
  }

  private void device(String id, String site, LocalDate installed) {
    install(id, site, installed);
    for (int i = 0; i < random.nextInt(5); i++) {
      String bought = random.nextInt(3) == 0 ? "" : "" + day(installed.minusDays(300), CUT);
      materials.append(
          "%s,%s,%s,%s,%s,%s,%s%n"
              .formatted(
                  id,
                  ITEMS.get(random.nextInt(ITEMS.size())),
                  1 + random.nextInt(4),
                  usd(900),
                  bought,
                  payer(),
                  claim()));
    }
    LocalDate day = installed.plusDays(random.nextInt(400));
    while (day.isBefore(CUT)) {
      boolean failed = random.nextInt(4) == 0;
      String action = failed ? List.of("none", "repaired", "replaced").get(random.nextInt(3)) : "";
      visits.append(
          "%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s%n"
              .formatted(
                  id,
                  day,
                  failed ? "failed" : "working",
                  failed ? maybe("pipe-plugged") : "",
                  action,
                  maybe(decimal(6)),
                  maybe(decimal(4)),
                  maybe(usd(300)),
                  payer(),
                  claim(),
                  random.nextInt(4) == 0 ? decimal(9) : ""));
      if (action.equals("replaced") && random.nextBoolean()) {
        install(id, site, day);
      }
      day = day.plusDays(60 + random.nextInt(500));
    }
  }

  private void install(String id, String site, LocalDate day) {
    installs.append(
        "%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s%n"
            .formatted(
                id,
                site,
                day,
                maybe(random.nextBoolean() ? "pond-leveler" : "fence-and-pipe"),
                WALLS.get(random.nextInt(WALLS.size())),
                random.nextBoolean() ? "12" : "15",
                maybe("40"),
                maybe("5"),
                maybe("crew " + random.nextInt(3)),
                random.nextInt(4) == 0 ? "" : FUNDERS.get(random.nextInt(FUNDERS.size())),
                maybe(decimal(30)),
                maybe(decimal(10)),
                random.nextInt(3) == 0 ? usd(2500) : "",
                claim(),
                random.nextInt(5) == 0 ? "" + day.plusDays(90) : ""));
  }

  private LocalDate day(LocalDate from, LocalDate to) {
    return LocalDate.ofEpochDay(random.nextLong(from.toEpochDay(), to.toEpochDay()));
  }

  private String payer() {
    List<String> all = new ArrayList<>(FUNDERS);
    all.addAll(List.of("in-kind", "", ""));
    return all.get(random.nextInt(all.size()));
  }

  private String claim() {
    return random.nextInt(3) == 0 ? FUNDERS.get(random.nextInt(FUNDERS.size())) : "";
  }

  private String maybe(String value) {
    return random.nextInt(4) == 0 ? "" : value;
  }

  private String usd(int most) {
    return String.format(Locale.ROOT, "%.2f", 1 + random.nextDouble() * most);
  }

  private String decimal(int most) {
    return String.format(Locale.ROOT, "%.1f", 0.1 + random.nextDouble() * most);
  }
}
