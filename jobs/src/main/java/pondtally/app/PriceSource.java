package pondtally.app;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import pondtally.check.UserError;
import pondtally.intake.InputFile;
import pondtally.intake.IntakeSettings;
import pondtally.intake.PartnerFileReader;
import pondtally.stats.PriceIndex;

/**
 * The price index of a run: {@code prices.csv} of the program folder, or the built-in table.
 *
 * @param source what a report calls it
 */
record PriceSource(PriceIndex index, String source) {

  private static final String BUILT_IN =
      "US consumer price index, all urban consumers, annual average (Bureau of Labor Statistics, series CUUR0000SA0)";

  static PriceSource of(List<InputFile> files, IntakeSettings settings) {
    Optional<InputFile> file =
        files.stream().filter(input -> input.path().equals("prices.csv")).findFirst();
    if (file.isEmpty()) {
      return new PriceSource(PriceIndex.builtIn(), BUILT_IN);
    }
    SortedMap<Integer, Double> years = PartnerFileReader.prices(file.get(), settings);
    TreeMap<Integer, Double> index = new TreeMap<>(years);
    try {
      return new PriceSource(PriceIndex.of(index), "prices.csv of the program");
    } catch (IllegalArgumentException e) {
      throw UserError.input(
          "prices.csv: "
              + e.getMessage()
              + ". Expected a line `year,index` for every year from the first to the last.");
    }
  }
}
