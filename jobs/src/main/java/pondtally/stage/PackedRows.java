package pondtally.stage;

import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/** Records of one kind that travel as compact bytes. */
final class PackedRows<R extends Record> implements Serializable {

  private static final long serialVersionUID = 1;

  private final Class<R> kind;
  private transient List<R> rows = new ArrayList<>();

  PackedRows(Class<R> kind) {
    this.kind = kind;
  }

  List<R> list() {
    return rows;
  }

  private void writeObject(ObjectOutputStream out) throws IOException {
    out.defaultWriteObject();
    RecordCodec codec = new RecordCodec(kind);
    ByteSink sink = new ByteSink();
    rows.forEach(row -> codec.writeComponents(row, sink));
    out.writeObject(sink.toBytes());
  }

  private void readObject(ObjectInputStream in) throws IOException, ClassNotFoundException {
    in.defaultReadObject();
    RecordCodec codec = new RecordCodec(kind);
    ByteSource source = new ByteSource((byte[]) in.readObject());
    rows = new ArrayList<>();
    while (source.hasMore()) {
      rows.add(kind.cast(codec.readComponents(source)));
    }
  }
}
