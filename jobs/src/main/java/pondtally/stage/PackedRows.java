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
 * Records of one kind, held and sent as compact bytes: each is made anew when it is asked for. What
 * a long list holds waits in a temporary file. Once no more are added, several threads may read.
 */
final class PackedRows<R extends Record> extends AbstractList<R>
    implements RandomAccess, Serializable {

  private static final long serialVersionUID = 1;
  private static final int MOST_IN_MEMORY = 8 << 20;

  /** The chunk that was last read from the file. */
  private record Read(int chunk, byte[] bytes) {}

  private final Class<R> kind;
  private final List<PackedChunk> chunks = new ArrayList<>();

  /** Records before each chunk and, after the last, in all of them. */
  private int[] before = new int[16];

  private transient RecordCodec codec;
  private transient ByteSink sink = new ByteSink();
  private transient char[] starts = new char[16];
  private transient int waiting;
  private transient SpilledBytes file;
  private transient int inMemory;
  private transient volatile Read last;

  PackedRows(Class<R> kind) {
    this.kind = kind;
    codec = new RecordCodec(kind);
  }

  @Override
  public boolean add(R row) {
    if (waiting == starts.length) {
      starts = Arrays.copyOf(starts, 2 * waiting);
    }
    starts[waiting++] = (char) sink.size();
    codec.writeComponents(row, sink);
    if (sink.size() >= PackedChunk.MOST_BYTES) {
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
      add(PackedChunk.of(sink.toBytes(), Arrays.copyOf(starts, waiting)));
      sink = new ByteSink();
      waiting = 0;
    }
  }

  private void add(PackedChunk chunk) {
    chunks.add(chunk);
    int count = chunks.size();
    if (before.length == count) {
      before = Arrays.copyOf(before, 2 * count);
    }
    before[count] = before[count - 1] + chunk.records();
    inMemory += chunk.isInMemory() ? chunk.length() : 0;
    if (inMemory > MOST_IN_MEMORY) {
      spill();
    }
  }

  private void spill() {
    if (file == null) {
      file = new SpilledBytes();
    }
    chunks.replaceAll(chunk -> chunk.in(file));
    inMemory = 0;
  }

  @Override
  public int size() {
    return before[chunks.size()] + waiting;
  }

  @Override
  public R get(int index) {
    if (waiting > 0) {
      close();
    }
    int found = Arrays.binarySearch(before, 0, chunks.size() + 1, index);
    int chunk = found >= 0 ? found : -found - 2;
    if (index < 0 || chunk >= chunks.size()) {
      throw new IndexOutOfBoundsException(index + " of " + size());
    }
    return kind.cast(codec.readComponents(source(chunk, index - before[chunk])));
  }

  /** Who begins a chunk will read all of it; who asks for a record elsewhere, only that. */
  private ByteSource source(int number, int record) {
    PackedChunk chunk = chunks.get(number);
    if (chunk.isInMemory()) {
      return new ByteSource(chunk.bytes(), chunk.start(record));
    }
    Read read = last;
    if (read == null || read.chunk() != number) {
      if (record > 0) {
        return new ByteSource(chunk.bytes(record));
      }
      read = new Read(number, chunk.bytes());
      last = read;
    }
    return new ByteSource(read.bytes(), chunk.start(record));
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    close();
    out.defaultWriteObject();
  }

  private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
    in.defaultReadObject();
    codec = new RecordCodec(kind);
    sink = new ByteSink();
    starts = new char[16];
    inMemory = chunks.stream().filter(PackedChunk::isInMemory).mapToInt(PackedChunk::length).sum();
  }
}
