package pondtally.history;

import pondtally.record.DeviceKind;
import pondtally.record.FenceForm;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.PipeWall;
import pondtally.record.RetiredReason;

/** Install rows as a partner would send them: whole, bare, or with the one thing that matters. */
final class Designs {

  private Designs() {}

  /** A device of which only the dates are recorded. */
  static Install device(
      Origin origin,
      String deviceId,
      String siteId,
      int day,
      Integer trackedFrom,
      Integer retiredOn,
      RetiredReason reason) {
    return new Install(
        origin,
        "north",
        deviceId,
        siteId,
        day,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        trackedFrom,
        retiredOn,
        reason);
  }

  /** A pipe of which only wall and diameter are recorded. */
  static Install pipe(PipeWall wall, Double diameterIn) {
    return new Design(wall, diameterIn).install();
  }

  /** What a design consists of; a field stays null until it is said. */
  static final class Design {
    private final PipeWall wall;
    private final Double diameterIn;
    Double sectionLengthFt;
    Double fenceDiameterFt;
    Double wireGauge;
    FenceForm fenceForm;
    Integer topSlits;
    Integer bottomSlits;
    Boolean gasHoles;
    Integer weights;
    Boolean inletTied;
    Boolean outletHighest;
    Boolean pipeCovered;

    Design(PipeWall wall, Double diameterIn) {
      this.wall = wall;
      this.diameterIn = diameterIn;
    }

    Install install() {
      return new Install(
          new Origin(0, 0, 2, false),
          "north",
          "d1",
          "s1",
          0,
          DeviceKind.POND_LEVELER,
          wall,
          diameterIn,
          40.0,
          sectionLengthFt,
          fenceDiameterFt,
          wireGauge,
          fenceForm,
          6.0,
          topSlits,
          bottomSlits,
          gasHoles,
          weights,
          inletTied,
          outletHighest,
          pipeCovered,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null,
          null);
    }
  }
}
