package pondtally.stage;

import java.io.Serializable;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import org.apache.spark.api.java.JavaRDD;
import scala.Function1;
import scala.collection.Iterator;
import scala.reflect.ClassTag$;
import scala.runtime.BoxedUnit;

/**
 * Puts the results of tasks together one by one as they come, in the order of the tasks: beside the
 * sum, no more results are in memory than tasks run at a time, or a few more.
 */
final class Folding<T extends Serializable> {

  private final BinaryOperator<T> merge;
  private final TreeMap<Integer, T> early = new TreeMap<>();
  private int next;
  private T sum;

  Folding(BinaryOperator<T> merge) {
    this.merge = merge;
  }

  /** The sum of all results: one of each partition, of which there is at least one. */
  static <T extends Serializable> T inOrder(JavaRDD<Handover<T>> results, BinaryOperator<T> merge) {
    Folding<T> folding = new Folding<>(merge);
    Function1<Iterator<Handover<T>>, Handover<T>> only =
        (Function1<Iterator<Handover<T>>, Handover<T>> & Serializable) Iterator::next;
    results
        .context()
        .runJob(
            results.rdd(),
            only,
            (part, result) -> {
              folding.add((Integer) part, result.value());
              return BoxedUnit.UNIT;
            },
            ClassTag$.MODULE$.apply(Handover.class));
    return folding.sum();
  }

  /** The result of a part, which may come before those of parts ahead of it. */
  synchronized void add(int part, T result) {
    early.put(part, result);
    while (early.containsKey(next)) {
      T following = early.remove(next++);
      sum = sum == null ? following : merge.apply(sum, following);
    }
  }

  /** All that has come so far without a gap; null before the first part. */
  synchronized T sum() {
    return sum;
  }
}
