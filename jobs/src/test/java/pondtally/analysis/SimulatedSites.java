package pondtally.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import pondtally.record.PipeWall;

/**
 * How sites of a simulated program are drawn: three pipe types of one wall and different failure
 * rates, four watersheds, and, where sites differ, a rate of each site's own (gamma, mean 1).
 *
 * @param ratios failure rate of 10, 12 and 15 in pipe over that of {@link SimulatedProgram}
 * @param mostDevices devices at a site are 1 to this many, all with one pipe type
 * @param siteVariance variance of the sites' own rates; 0 where sites do not differ
 */
record SimulatedSites(List<Double> ratios, int mostDevices, double siteVariance) {

  /** One device a site, pipe types that differ. */
  static final SimulatedSites SINGLE = new SimulatedSites(List.of(1.0, 1.5, 2.25), 1, 0);

  /** Up to four devices a site that share its rate. */
  static final SimulatedSites CLUSTERED = new SimulatedSites(List.of(1.0, 1.5, 2.25), 4, 0.5);

  /** Pipe types, watersheds and years that do not differ. */
  static final SimulatedSites ALIKE = new SimulatedSites(List.of(1.0, 1.0, 1.0), 1, 0);

  private static final double[] INCHES = {10, 12, 15};

  /** A site's devices and its watershed. */
  record Drawn(String watershed, List<SimulatedProgram.Standing> devices) {}

  /** Draws one site. */
  Drawn draw(SplittableRandom random) {
    int pipe = random.nextInt(INCHES.length);
    double ratio = ratios.get(pipe) * siteRate(random);
    List<SimulatedProgram.Standing> devices = new ArrayList<>();
    for (int n = 1 + random.nextInt(mostDevices); n > 0; n--) {
      devices.add(
          new SimulatedProgram.Standing(
              PipeWall.DUAL, INCHES[pipe], SimulatedProgram.draw(ratio, random)));
    }
    return new Drawn("0101000" + (1 + random.nextInt(4)), devices);
  }

  /** Gamma of mean 1; its shape, 1/variance, is a whole number: a sum of exponentials. */
  private double siteRate(SplittableRandom random) {
    if (siteVariance == 0) {
      return 1;
    }
    int shape = (int) Math.round(1 / siteVariance);
    double sum = 0;
    for (int i = 0; i < shape; i++) {
      sum -= Math.log(1 - random.nextDouble());
    }
    return sum / shape;
  }

  /** Share of devices still working at an age in days: the life they were drawn from. */
  double working(double days) {
    double sum = 0;
    for (int pipe = 0; pipe < ratios.size(); pipe++) {
      sum += working(pipe, days);
    }
    return sum / ratios.size();
  }

  /** The same of one pipe type, 0 to 2 by diameter. */
  double working(int pipe, double days) {
    double hazard =
        ratios.get(pipe) * Math.pow(days / SimulatedProgram.SCALE_DAYS, SimulatedProgram.SHAPE);
    return siteVariance == 0
        ? Math.exp(-hazard)
        : Math.pow(1 + siteVariance * hazard, -1 / siteVariance);
  }

  /** Age in days by which half of the devices have failed. */
  double medianDays() {
    double low = 0;
    double high = 100_000;
    while (high - low > 1e-6) {
      double middle = (low + high) / 2;
      if (working(middle) > 0.5) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
