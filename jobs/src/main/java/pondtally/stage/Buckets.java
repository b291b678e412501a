package pondtally.stage;

import java.util.ArrayList;
import java.util.List;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;
import pondtally.record.Sourced;
import scala.Tuple2;

/** Encoded records sorted into the partitions of the next shuffle by a key. */
final class Buckets {

  private final ByteSink[] sinks;

  Buckets(int partitions) {
    sinks = new ByteSink[partitions];
  }

  /** Adds a record to the partition of {@code key}; returns how many bytes it takes. */
  int add(String key, Sourced record) {
    int bucket = Math.floorMod(key.hashCode(), sinks.length);
    if (sinks[bucket] == null) {
      sinks[bucket] = new ByteSink();
    }
    int before = sinks[bucket].size();
    RecordCodec.write(record, sinks[bucket]);
    return sinks[bucket].size() - before;
  }

  /** The filled partitions with their number. */
  List<Tuple2<Integer, byte[]>> filled() {
    List<Tuple2<Integer, byte[]>> filled = new ArrayList<>();
    for (int i = 0; i < sinks.length; i++) {
      if (sinks[i] != null) {
        filled.add(new Tuple2<>(i, sinks[i].toBytes()));
      }
    }
    return filled;
  }

  /** All the records of some buckets. */
  static List<Sourced> records(Iterable<byte[]> blocks) {
    List<Sourced> records = new ArrayList<>();
    for (byte[] block : blocks) {
      ByteSource source = new ByteSource(block);
      while (source.hasMore()) {
        records.add(RecordCodec.read(source));
      }
    }
    return records;
  }
}
