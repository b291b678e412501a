package pondtally.stage;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.RandomAccess;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;

/**
 * Records of one kind, held and sent as compact bytes: each is made anew when it is asked for. Once
 * no more are added, several threads may read.
 */
final class PackedRows<R extends Record> extends AbstractList<R>
    implements RandomAccess, Serializable {

  private static final long serialVersionUID = 1;
  private static final int CHUNK_BYTES = 1 << 20;

  /** Records one after another, and where each begins. */
  private record Chunk(byte[] bytes, int[] starts) implements Serializable {}

  private final Class<R> kind;
  private final List<Chunk> chunks = new ArrayList<>();

  /** Records before each chunk and in all of them. */
  private int[] before = {0};

  private transient RecordCodec codec;
  private transient ByteSink sink = new ByteSink();
  private transient int[] starts = new int[16];
  private transient int waiting;

  PackedRows(Class<R> kind) {
    this.kind = kind;
    codec = new RecordCodec(kind);
  }

  @Override
  public boolean add(R row) {
    if (waiting == starts.length) {
      starts = Arrays.copyOf(starts, 2 * waiting);
    }
    starts[waiting++] = sink.size();
    codec.writeComponents(row, sink);
    if (sink.size() >= CHUNK_BYTES) {
      close();
    }
    return true;
  }

  /** Adds all that another has, without unpacking it. */
  void merge(PackedRows<R> other) {
    close();
    other.close();
    other.chunks.forEach(this::add);
  }

  /** Ends the chunk that is being filled. */
  void close() {
    if (waiting > 0) {
      add(new Chunk(sink.toBytes(), Arrays.copyOf(starts, waiting)));
      sink = new ByteSink();
      waiting = 0;
    }
  }

  private void add(Chunk chunk) {
    chunks.add(chunk);
    before = Arrays.copyOf(before, before.length + 1);
    before[before.length - 1] = before[before.length - 2] + chunk.starts().length;
  }

  @Override
  public int size() {
    return before[before.length - 1] + waiting;
  }

  @Override
  public R get(int index) {
    if (waiting > 0) {
      close();
    }
    int found = Arrays.binarySearch(before, index);
    int chunk = found >= 0 ? found : -found - 2;
    if (index < 0 || chunk >= chunks.size()) {
      throw new IndexOutOfBoundsException(index + " of " + size());
    }
    Chunk here = chunks.get(chunk);
    return kind.cast(
        codec.readComponents(new ByteSource(here.bytes(), here.starts()[index - before[chunk]])));
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    close();
    out.defaultWriteObject();
  }

  private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
    in.defaultReadObject();
    codec = new RecordCodec(kind);
    sink = new ByteSink();
    starts = new int[16];
  }
}
