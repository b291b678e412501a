package pondtally.history;

import java.math.BigDecimal;
import java.math.RoundingMode;
import pondtally.record.Install;
import pondtally.record.PipeWall;

/**
 * The group a device belongs to by its pipe: wall and nominal diameter, for example {@code dual 12
 * in}; {@code unknown} where either was not recorded; {@code no pipe} where the row says so, as for
 * a fence without a pipe. Common practice, no source.
 */
public final class PipeType {

  /** What was not recorded. */
  public static final String UNKNOWN = "unknown";

  /** A device without a pipe. */
  public static final String NO_PIPE = "no pipe";

  private static final int[] NOMINAL_IN = {4, 6, 8, 10, 12, 15, 18, 24, 30, 36, 48};
  private static final double TOLERANCE = 0.04;
  // Keeps a diameter of exactly 4 per cent off inside, whatever binary fractions make of it.
  private static final double ROUNDING = 1e-9;

  private PipeType() {}

  /** The label of a design's pipe. */
  public static String of(Install design) {
    if (design.pipeWall() == PipeWall.NONE) {
      return NO_PIPE;
    }
    if (design.pipeWall() == null || design.pipeDiameterIn() == null) {
      return UNKNOWN;
    }
    return design.pipeWall().code() + " " + inches(nominalIn(design.pipeDiameterIn())) + " in";
  }

  /**
   * The nominal diameter a pipe is sold under, inches: the nearest of 4, 6, 8, 10, 12, 15, 18, 24,
   * 30, 36 and 48 within 4 per cent (300 mm is 12 in), else the diameter itself to a tenth.
   */
  public static double nominalIn(double diameterIn) {
    for (int nominal : NOMINAL_IN) {
      if (Math.abs(diameterIn - nominal) <= TOLERANCE * nominal + ROUNDING) {
        return nominal;
      }
    }
    return BigDecimal.valueOf(diameterIn).setScale(1, RoundingMode.HALF_UP).doubleValue();
  }

  private static String inches(double diameterIn) {
    return BigDecimal.valueOf(diameterIn).stripTrailingZeros().toPlainString();
  }
}
