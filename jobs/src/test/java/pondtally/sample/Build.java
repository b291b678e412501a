package pondtally.sample;

/**
 * How a device was built; the installs and materials tables tell of the same build.
 *
 * @param flaw which items miss the specification: 0 small fence, inlet not tied; 1 thin wire,
 *     rolled; 2 rolled, no weights; 3 slits missing, outlet low; 4 long sections, inlet not tied,
 *     pipe exposed; -1 none
 */
record Build(SampleTruth.Pipe pipe, int flaw, int lengthFt, int sectionFt, int weights) {

  static Build of(Device device, SampleTruth.Pipe pipe) {
    Draw draw = Draw.of("build", device.id());
    int lengthFt = 20 * draw.between(1, 3);
    int weights = draw.between(4, 8);
    int drawn = draw.between(0, 4);
    int flaw = device.toSpecification() ? -1 : drawn;
    boolean cut = pipe.wall.equals("dual") && flaw != 4;
    return new Build(pipe, flaw, lengthFt, cut ? 10 : 20, flaw == 2 ? 0 : weights);
  }

  boolean hasPipe() {
    return pipe != SampleTruth.Pipe.FENCE_ONLY;
  }

  /** Pieces of pipe, which take one coupler fewer. */
  int sections() {
    return lengthFt / sectionFt;
  }
}
