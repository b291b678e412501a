package pondtally.analysis;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import pondtally.pack.ByteSink;
import pondtally.pack.ByteSource;

/**
 * What clusters contributed, kept as bytes for the pass that weighs each against the totals: as
 * objects a million devices would fill the memory that the totals need. {@link #close} ends the
 * adding.
 */
public final class ClusterParts implements Serializable {

  private static final long serialVersionUID = 1;
  private static final int BLOCK_BYTES = 1 << 20;

  private final List<byte[]> blocks = new ArrayList<>();
  private final Numbering<GroupKey> keys = new Numbering<>();
  private final Numbering<Covariates> covariates = new Numbering<>();
  private transient ByteSink sink = new ByteSink();

  /** Adds a cluster. */
  public void add(ClusterPart part) {
    sink.writeText(part.cluster());
    writeEffects(part.effects());
    sink.writeNumber(part.lives().size());
    part.lives().forEach(this::write);
    sink.writeNumber(part.devices().size());
    part.devices().forEach(this::write);
    if (sink.size() >= BLOCK_BYTES) {
      endBlock();
    }
  }

  /** No more clusters will be added. */
  public void close() {
    endBlock();
    keys.close();
    covariates.close();
  }

  /** Goes through the clusters in the order in which they were added. */
  public void forEach(Consumer<ClusterPart> action) {
    for (byte[] block : blocks) {
      ByteSource source = new ByteSource(block);
      while (source.hasMore()) {
        action.accept(read(source));
      }
    }
  }

  private void endBlock() {
    if (!sink.isEmpty()) {
      blocks.add(sink.toBytes());
      sink = new ByteSink();
    }
  }

  private ClusterPart read(ByteSource source) {
    return new ClusterPart(
        source.readText(),
        readEffects(source),
        readList(source, this::readLife),
        readList(source, this::readDevice));
  }

  private interface Reader<T> {
    T read(ByteSource source);
  }

  private static <T> List<T> readList(ByteSource source, Reader<T> reader) {
    int size = (int) source.readNumber();
    List<T> list = new ArrayList<>(size);
    for (int i = 0; i < size; i++) {
      list.add(reader.read(source));
    }
    return list;
  }

  /** Groups that have the same devices have the same effect, which is written once. */
  private void writeEffects(List<EffectPart> parts) {
    List<Effect> written = new ArrayList<>();
    sink.writeNumber(parts.size());
    for (EffectPart part : parts) {
      sink.writeNumber(keys.of(part.key()));
      int at = written.size() - 1;
      while (at >= 0 && written.get(at) != part.effect()) {
        at--;
      }
      sink.writeNumber(at + 1L);
      if (at < 0) {
        written.add(part.effect());
        part.effect().writeTo(sink);
      }
    }
  }

  private List<EffectPart> readEffects(ByteSource source) {
    List<Effect> effects = new ArrayList<>();
    return readList(
        source,
        s -> {
          GroupKey key = keys.get((int) s.readNumber());
          int known = (int) s.readNumber();
          if (known == 0) {
            effects.add(Effect.readFrom(s));
            known = effects.size();
          }
          return new EffectPart(key, effects.get(known - 1));
        });
  }

  private void write(LifePart life) {
    sink.writeNumber(covariates.of(life.covariates()));
    sink.writeDouble(life.followUp().entryDays());
    sink.writeDouble(life.followUp().leftDays());
    sink.writeDouble(life.followUp().rightDays());
    sink.writeDouble(life.exitDays());
    sink.writeNumber(life.failed() ? 1 : 0);
  }

  private LifePart readLife(ByteSource source) {
    return new LifePart(
        covariates.get((int) source.readNumber()),
        new FollowUp(source.readDouble(), source.readDouble(), source.readDouble()),
        source.readDouble(),
        source.readNumber() == 1);
  }

  private void write(RepeatPart device) {
    sink.writeNumber(device.groups().size());
    device.groups().forEach(key -> sink.writeNumber(keys.of(key)));
    sink.writeDouble(device.entryDays());
    sink.writeDouble(device.exitDays());
    sink.writeNumber(device.failureDays().length);
    for (double day : device.failureDays()) {
      sink.writeDouble(day);
    }
  }

  private RepeatPart readDevice(ByteSource source) {
    List<GroupKey> groups = readList(source, s -> keys.get((int) s.readNumber()));
    double entryDays = source.readDouble();
    double exitDays = source.readDouble();
    double[] failureDays = new double[(int) source.readNumber()];
    for (int i = 0; i < failureDays.length; i++) {
      failureDays[i] = source.readDouble();
    }
    return new RepeatPart(groups, entryDays, exitDays, failureDays);
  }
}
