package pondtally.stage;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.spark.SparkEnv;

/**
 * What a task returns to the driver: as it is where both are in one Java machine, in bytes where
 * they are not. Only for results, which are read once: where it is passed on as it is, who wrote it
 * keeps nothing of it.
 */
final class Handover<T extends Serializable> implements Serializable {

  private static final long serialVersionUID = 1;
  private static final String DRIVER = "driver";
  private static final Map<Long, Object> HELD = new ConcurrentHashMap<>();
  private static final AtomicLong NEXT = new AtomicLong();

  private transient T value;

  Handover(T value) {
    this.value = value;
  }

  /** What was handed over; null where somebody else has it by now. */
  T value() {
    return value;
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    boolean here = DRIVER.equals(SparkEnv.get().executorId());
    out.writeBoolean(here);
    if (here) {
      long id = NEXT.incrementAndGet();
      if (value != null) {
        HELD.put(id, value);
        value = null;
      }
      out.writeLong(id);
    } else {
      out.writeObject(value);
    }
  }

  @SuppressWarnings("unchecked") // Nothing but a T was written.
  private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
    value = (T) (in.readBoolean() ? HELD.remove(in.readLong()) : in.readObject());
  }
}
