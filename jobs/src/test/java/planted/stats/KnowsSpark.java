package planted.stats;

import org.apache.spark.SparkConf;

/** Breaks the rule that mathematics knows nothing of Spark. */
public final class KnowsSpark {

  /** The wrong place for it. */
  public SparkConf conf() {
    return new SparkConf(false);
  }
}
