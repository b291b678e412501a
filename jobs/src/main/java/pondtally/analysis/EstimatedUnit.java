package pondtally.analysis;

import pondtally.history.DesignQuantities;
import pondtally.history.PipeType;
import pondtally.record.DeviceKind;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.PipeWall;

/**
 * The parts that a device's building cost is estimated from: what one unit of each costs, and how
 * many units a design takes. Common practice, no source.
 */
enum EstimatedUnit {
  /** A foot of pipe of one type. */
  PIPE {
    @Override
    Double quantity(Install design) {
      return hasPipe(design) ? design.pipeLengthFt() : (Double) 0.0;
    }
  },
  /** A coupler for one type of pipe; where sections are not recorded, pipe comes in 20 ft. */
  COUPLER {
    @Override
    Double quantity(Install design) {
      if (!hasPipe(design)) {
        return 0.0;
      }
      double section = design.sectionLengthFt() == null ? USUAL_FT : design.sectionLengthFt();
      return design.pipeLengthFt() == null || section <= 0
          ? null
          : (Double)
              (double)
                  DesignQuantities.couplers(
                      DesignQuantities.sections(design.pipeLengthFt(), section));
    }
  },
  /** A foot of fence, along its round. */
  FENCE {
    @Override
    Double quantity(Install design) {
      return design.fenceDiameterFt() == null
          ? null
          : (Double) (Math.PI * design.fenceDiameterFt());
    }
  },
  /** Everything else bought for one device of a kind. */
  HARDWARE {
    @Override
    Double quantity(Install design) {
      return 1.0;
    }
  },
  /** The work of putting in one device of a kind, paid and volunteered. */
  WORK {
    @Override
    Double quantity(Install design) {
      return 1.0;
    }
  };

  private static final double USUAL_FT = 20;

  /** Units that a design takes; null where its record does not tell. */
  abstract Double quantity(Install design);

  /** Which devices share a unit cost: those of the same pipe, or of the same kind. */
  String variant(Install design) {
    return switch (this) {
      case PIPE, COUPLER -> PipeType.of(design);
      case FENCE -> "";
      case HARDWARE, WORK ->
          design.deviceKind() == null ? GroupKey.UNKNOWN : design.deviceKind().code();
    };
  }

  /** The part that a material line pays for. */
  static EstimatedUnit of(MaterialItem item) {
    return switch (item) {
      case PIPE -> PIPE;
      case COUPLER -> COUPLER;
      case FENCE_PANEL -> FENCE;
      default -> HARDWARE;
    };
  }

  private static boolean hasPipe(Install design) {
    boolean bareFence =
        design.deviceKind() == DeviceKind.CULVERT_FENCE
            && design.pipeWall() == null
            && design.pipeDiameterIn() == null;
    return design.pipeWall() != PipeWall.NONE && !bareFence;
  }
}
