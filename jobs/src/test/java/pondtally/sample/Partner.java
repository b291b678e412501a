package pondtally.sample;

import java.util.List;

/** The five invented partners: what they look after and how they work. */
enum Partner {
  BRACKWEN("brackwen-farms", "BF", 26, 4, 47, 2018, 175),
  LOWMARROW("lowmarrow", "LM", 22, 3, 42, 2017, 140),
  ORRENBY("orrenby-roads", "OR", 48, 6, 90, 2017, 125),
  QUARRINDALE("quarrindale", "QD", 28, 3, 50, 2018, 95),
  TESSARBY("tessarby-valley", "TV", 38, 4, 71, 2017, 115);

  /** A crew that several partners hire, so that crew is not just another name for partner. */
  static final String SHARED_CREW = "Ridge contract crew";

  final String folder;
  final String prefix;
  final int sitesWithDevices;
  final int sitesWithout;
  final int devices;
  final int firstYear;
  final int medianVisitGapDays;

  Partner(
      String folder,
      String prefix,
      int sitesWithDevices,
      int sitesWithout,
      int devices,
      int firstYear,
      int medianVisitGapDays) {
    this.folder = folder;
    this.prefix = prefix;
    this.sitesWithDevices = sitesWithDevices;
    this.sitesWithout = sitesWithout;
    this.devices = devices;
    this.firstYear = firstYear;
    this.medianVisitGapDays = medianVisitGapDays;
  }

  /** Its own crews. */
  List<String> crews() {
    return switch (this) {
      case ORRENBY -> List.of("Orrenby crew A", "Orrenby crew B");
      case TESSARBY -> List.of("Tessarby field crew");
      case QUARRINDALE -> List.of("Quarrin Saturday crew");
      case BRACKWEN -> List.of("Brackwen contract crew");
      case LOWMARROW -> List.of("Lowmarrow north crew", "Lowmarrow fen crew");
    };
  }

  /** Weight of each of {@link SampleTruth#WATERSHEDS} among its sites. */
  double[] watershedWeights() {
    return switch (this) {
      case ORRENBY -> new double[] {3, 3, 2, 3, 3, 2, 2, 0};
      case TESSARBY -> new double[] {5, 4, 3, 0, 0, 0, 0, 0};
      case QUARRINDALE -> new double[] {0, 0, 0, 4, 4, 0, 0, 0};
      case BRACKWEN -> new double[] {0, 0, 4, 0, 0, 0, 6, 0};
      case LOWMARROW -> new double[] {0, 0, 0, 0, 2, 8, 0, 1};
    };
  }

  /** Who pays for an installation of that year, unless the record says otherwise. */
  String funder(int year) {
    return switch (this) {
      case ORRENBY -> "Orrenby Road Levy";
      case TESSARBY -> year % 3 == 0 ? "Ninefold Habitat Award" : "Tessarby Water Award";
      case QUARRINDALE -> "Ninefold Habitat Award";
      case BRACKWEN -> "Brackwen Farm Levy";
      case LOWMARROW -> year < 2022 ? "Tessarby Water Award" : "Ninefold Habitat Award";
    };
  }
}
