package pondtally.sample;

/** The sample page's own words. */
final class ReadmeText {
  static final String INTRODUCTION =
      """
      # The sample: an invented program

      Everything here is invented: the Quorrelmere Basin, its watersheds, towns, partners, funders, owners, devices and
      figures. It describes no real program, and nothing about real devices can be learned from it. The sites lie
      between latitude 44 and 45 and longitude -38 and -37, which is open ocean, and the watershed codes stand under the
      two-digit region 99, which does not exist, so that no place can be mistaken for a real one.

      This folder is a program folder as the coordinator would keep it: `program.yaml` and one folder a partner. It is
      written by `pondtally.sample.SampleGenerator` in the tests of `jobs`, from one seed, and never edited by hand; a
      test compares the two. The true failure shapes, cause shares, costs and areas are in `SampleTruth` beside it. Its
      lists for tests are in `jobs/src/test/resources/pondtally/sample/`: `planted-faults.csv`, `row-account.csv` and
      `true-lives.csv` (each service life as drawn, with the age at failure that nobody saw).

      To write it anew, from the top folder:

          mvn -q -pl jobs test-compile dependency:build-classpath -Dmdep.outputFile=target/classpath.txt
          java -cp "jobs/target/test-classes:jobs/target/classes:$(cat jobs/target/classpath.txt)" \\
              pondtally.sample.SampleGenerator sample-data jobs/src/test/resources/pondtally/sample

      ## Who sends what

      | Folder | Partner | What it sends |
      |---|---|---|
      | `brackwen-farms` | Brackwen farms | One workbook, a sheet a table. Lump sums instead of cost lines, little about how devices were built, some numbers stored as text, watershed codes stored as numbers. |
      | `lowmarrow` | Lowmarrow | A workbook up to 2022, CSV files of a metric form since. Follows its older devices only from 1 May 2020. |
      | `orrenby-roads` | Orrenby road office | CSV files, inches and feet, revisits in two files, request dates as month/day/year. Budgets of two levies. |
      | `quarrindale` | Quarrindale volunteers | CSV files that begin with a byte-order mark and use our own field names. Volunteer hours and given material, claimed as match. `pond-walks.csv` is known for an areas table by its headings alone. |
      | `tessarby-valley` | Tessarby valley | A workbook a year with three sheets, in millimeters, meters and hectares, and a register of all else. Budgets of two awards that ask for match. |

      A fifth of the devices were built by a crew that works for several partners. `BF-D07` is a device of Brackwen farms,
      `OR-014-B` the second device at Orrenby's site `OR-014`, `P-OR-014-1` a property there, `PN-01` a pond that two sites
      share.
      """;

  static final String WATERSHED_NOTE =
      """

      `watershed_digits` is 12 in `program.yaml`: the program works in eight 12-digit watersheds of three 8-digit parents,
      and at 8 digits the valleys that differ would vanish in one another. One watershed is truly worse than the others.
      One only looks worse, because nearly all its devices are of one pipe type. One is too small to say anything about.
      """;

  static final String NOT_FAULTS =
      """

      ## Looks odd, is no fault

      - A second install row of one device, dated on a visit with action `replaced`: the next life's design.
      - A visit before `tracked_from` (Lowmarrow): its cost counts, its time does not.
      - Numbers stored as text (Brackwen's install costs, Tessarby's material costs of 2018), watershed codes stored as
        numbers (Brackwen's sites): read as they stand.
      - Notes on two lines inside one cell (Quarrindale), blank lines between rows (four files): blank lines are no rows,
        but count in row numbers.
      - Lump sum beside cost lines (some of Lowmarrow's devices): the lines win, and the difference is reported.
      - Sites without a device: somebody asked, and the request is waiting, was declined or found unsuitable.
      - Permits and water-level agreements, some lapsed and some yet to lapse: their dates may lie after the data cut.
      - Two sites on one pond, six times, twice with two partners.
      """;

  static final String ACCOUNT =
      """

      ## What should become of the rows

      Rows read = used + changed + converted + set aside + duplicate. "Converted" are rows with no fault of their own in
      which a heading's unit (`Pipe dia (mm)`) converts a cell. By file and sheet: `row-account.csv`.

      | Partner | Rows read | Used | Changed | Converted | Set aside | Duplicate |
      |---|---|---|---|---|---|---|
      """;

  static final String FAULTS =
      """

      ## Planted faults

      Mostly clean, with every kind of fault that the checks know, in CSV and in XLSX files. The row is what a spreadsheet
      shows, the column is the partner's own heading. Outcomes: `set-aside`, `changed` (used with a change), `duplicate`,
      `notice` (used as it stands).
      """;

  static final String SETTINGS =
      """
      # Settings of the invented Quorrelmere Basin program. Everything in this folder is invented.
      region: Quorrelmere Basin (invented)
      as_of: 2025-12-31
      period: {from: 2025-01-01, to: 2025-12-31}
      watershed_digits: 12
      failure: failed
      failure_dated: interval
      # The price index of 2025 covers eleven months only; 2024 is the last full year.
      base_year: 2024
      discount_rate: 0.07
      horizon_years: 10
      labor_rate_usd: 32.00
      volunteer_rate_usd: 33.49
      revisit_every_days: 180
      groups_below: 5
      seed: 20251231
      """;

  private ReadmeText() {}
}
