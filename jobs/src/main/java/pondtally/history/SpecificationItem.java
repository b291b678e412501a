package pondtally.history;

import pondtally.record.Code;
import pondtally.record.FenceForm;
import pondtally.record.Install;
import pondtally.record.PipeWall;

/**
 * One item of the specification; a program may choose its own list of them by code. Every item is
 * common practice in the trade, no source.
 */
public enum SpecificationItem implements Code {
  FENCE_DIAMETER(
      "fence-diameter",
      "Intake fence at least 5 ft across for 10 and 12 in pipe, 6 ft for 15 in (4.9 and 5.9 ft pass; other diameters are not judged)"),
  RIGID_FENCE("rigid-fence", "Fence of rigid panel, not of roll"),
  FENCE_WIRE("fence-wire", "Fence wire of 6 gauge or heavier (a smaller number is heavier)"),
  SECTION_LENGTH(
      "section-length",
      "Double-wall pipe in sections of 10 ft or less, to the nearest tenth of a foot"),
  TOP_SLIT("top-slit", "Single-wall or double-wall pipe slit along the top"),
  BOTTOM_SLITS("bottom-slits", "Double-wall pipe slit four times along the bottom"),
  GAS_HOLES("gas-holes", "Double-wall pipe with gas holes"),
  WEIGHTED("weighted", "Pipe weighted down"),
  INLET_TIED("inlet-tied", "Inlet tied at the middle of the fence"),
  OUTLET_HIGHEST("outlet-highest", "Outlet the highest point of the pipe"),
  PIPE_COVERED("pipe-covered", "No pipe exposed at the agreed level");

  private final String code;
  private final String description;

  SpecificationItem(String code, String description) {
    this.code = code;
    this.description = description;
  }

  @Override
  public String code() {
    return code;
  }

  /** What the item asks for, as a reader of the report would say it. */
  public String description() {
    return description;
  }

  /** Whether a design meets the item; null where it does not apply or was not recorded. */
  Boolean verdict(Install design) {
    return applies(design.pipeWall()) ? recorded(design) : null;
  }

  /** Whether a device with a pipe of that wall (null: not recorded) can meet or miss the item. */
  private boolean applies(PipeWall wall) {
    return switch (this) {
      case RIGID_FENCE, FENCE_WIRE -> true;
      case TOP_SLIT -> wall == PipeWall.SINGLE || wall == PipeWall.DUAL;
      case SECTION_LENGTH, BOTTOM_SLITS, GAS_HOLES -> wall == PipeWall.DUAL;
      case FENCE_DIAMETER, WEIGHTED, INLET_TIED, OUTLET_HIGHEST, PIPE_COVERED ->
          wall != PipeWall.NONE;
    };
  }

  private Boolean recorded(Install design) {
    return switch (this) {
      case FENCE_DIAMETER -> fenceWideEnough(design.pipeDiameterIn(), design.fenceDiameterFt());
      case RIGID_FENCE -> design.fenceForm() == null ? null : isPanel(design.fenceForm());
      case FENCE_WIRE -> atMost(design.fenceWireGauge(), 6);
      case SECTION_LENGTH -> shortEnough(design.sectionLengthFt());
      case TOP_SLIT -> atLeast(design.topSlits(), 1);
      case BOTTOM_SLITS -> atLeast(design.bottomSlits(), 4);
      case GAS_HOLES -> design.gasHoles();
      case WEIGHTED -> atLeast(design.weights(), 1);
      case INLET_TIED -> design.inletTied();
      case OUTLET_HIGHEST -> design.outletHighest();
      case PIPE_COVERED -> design.pipeCovered();
    };
  }

  private static Boolean isPanel(FenceForm form) {
    return form == FenceForm.PANEL;
  }

  private static Boolean fenceWideEnough(Double pipeDiameterIn, Double fenceDiameterFt) {
    if (pipeDiameterIn == null || fenceDiameterFt == null) {
      return null;
    }
    double nominalIn = PipeType.nominalIn(pipeDiameterIn);
    if (nominalIn == 10 || nominalIn == 12) {
      return fenceDiameterFt >= 4.9;
    }
    return nominalIn == 15 ? (Boolean) (fenceDiameterFt >= 5.9) : null;
  }

  /** A section sold as 3.05 m is a 10 ft section. */
  private static Boolean shortEnough(Double sectionLengthFt) {
    return sectionLengthFt == null ? null : (Boolean) (Math.round(sectionLengthFt * 10) <= 100);
  }

  private static Boolean atLeast(Integer count, int needed) {
    return count == null ? null : (Boolean) (count >= needed);
  }

  private static Boolean atMost(Double number, double limit) {
    return number == null ? null : (Boolean) (number <= limit);
  }
}
