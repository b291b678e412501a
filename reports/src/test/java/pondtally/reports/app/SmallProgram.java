package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** An invented program of twelve devices: every report is made of it in a few seconds. */
final class SmallProgram {

  private static final int DEVICES = 12;

  private SmallProgram() {}

  static Path write(Path folder) throws IOException {
    Path crew = Files.createDirectories(folder.resolve("crew"));
    Files.writeString(folder.resolve("program.yaml"), "as_of: 2024-12-31\nbase_year: 2023\n");
    StringBuilder installs =
        new StringBuilder(
            "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,funder,install_cost_usd\n");
    StringBuilder sites =
        new StringBuilder(
            "site_id,watershed,latitude,longitude,damage_cost_per_year_before_usd,wetland_acres_before\n");
    StringBuilder visits = new StringBuilder("device_id,visited_on,condition,cause\n");
    for (int i = 0; i < DEVICES; i++) {
      sites.append("S%s,9901010%s,44.%s,-37.%s,900,3\n".formatted(i, i % 2, i + 10, i + 10));
      installs.append(
          "D%s,S%s,2022-0%s-01,pond-leveler,dual,12,River Levy,%s\n"
              .formatted(i, i, 1 + i % 9, 800 + 10 * i));
      visits.append("D%s,2023-05-0%s,working,\n".formatted(i, 1 + i % 9));
      visits.append(
          i % 3 == 0
              ? "D%s,2024-06-01,failed,pipe-plugged\n".formatted(i)
              : "D%s,2024-06-01,working,\n".formatted(i));
    }
    Files.writeString(crew.resolve("installs.csv"), installs);
    Files.writeString(crew.resolve("sites.csv"), sites);
    Files.writeString(crew.resolve("revisits.csv"), visits);
    return folder;
  }
}
