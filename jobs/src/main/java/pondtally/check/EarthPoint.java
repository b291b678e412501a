package pondtally.check;

import java.util.ArrayList;
import java.util.List;

/**
 * A place on the Earth as a point in space, meters from the Earth's middle, so that neither the
 * date line nor the poles need care. Over a few hundred meters the straight line between two points
 * is as long as the way on the ground.
 */
record EarthPoint(double x, double y, double z) {

  /** Mean radius of the Earth, meters (IUGG 1980). */
  private static final double RADIUS = 6_371_008.8;

  static EarthPoint of(double latitude, double longitude) {
    double phi = Math.toRadians(latitude);
    double lambda = Math.toRadians(longitude);
    return new EarthPoint(
        RADIUS * Math.cos(phi) * Math.cos(lambda),
        RADIUS * Math.cos(phi) * Math.sin(lambda),
        RADIUS * Math.sin(phi));
  }

  /** Meters between two points. */
  double metersTo(EarthPoint other) {
    return Math.sqrt(square(x - other.x) + square(y - other.y) + square(z - other.z));
  }

  /** A number of the cube of space that holds the point; two cubes may have the same. */
  long cube(double edge) {
    return number(cell(x, edge), cell(y, edge), cell(z, edge));
  }

  /** The numbers of the cubes that hold all points within {@code meters}. */
  List<Long> cubesWithin(double meters, double edge) {
    List<Long> cubes = new ArrayList<>();
    for (long i = cell(x - meters, edge); i <= cell(x + meters, edge); i++) {
      for (long j = cell(y - meters, edge); j <= cell(y + meters, edge); j++) {
        for (long k = cell(z - meters, edge); k <= cell(z + meters, edge); k++) {
          cubes.add(number(i, j, k));
        }
      }
    }
    return cubes;
  }

  private static long cell(double coordinate, double edge) {
    return (long) Math.floor(coordinate / edge);
  }

  private static long number(long i, long j, long k) {
    return (i << 42) ^ (j << 21) ^ k;
  }

  private static double square(double a) {
    return a * a;
  }
}
