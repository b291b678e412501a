package planted.record;

import planted.analysis.Something;

/** Breaks the rule that records know nothing of ours. */
public final class KnowsAnalysis {

  /** The wrong way round. */
  public Something something() {
    return new Something();
  }
}
