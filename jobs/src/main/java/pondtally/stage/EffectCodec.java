package pondtally.stage;

import pondtally.analysis.Effect;
import pondtally.analysis.EffectPart;
import pondtally.analysis.GroupKey;
import pondtally.analysis.GroupKey.Grouping;

/** What clusters contributed to unit costs as compact bytes and back. */
final class EffectCodec {

  private static final Grouping[] GROUPINGS = Grouping.values();

  private EffectCodec() {}

  static void write(EffectPart part, ByteSink out) {
    out.writeNumber(part.key().grouping().ordinal());
    out.writeText(part.key().group());
    Effect effect = part.effect();
    out.writeNumber(
        (effect.costed() ? 1 : 0)
            | (effect.acreYears() == null ? 0 : 2)
            | (effect.removalsAvoided() == null ? 0 : 4));
    out.writeDouble(effect.cashUsd());
    out.writeDouble(effect.allUsd());
    out.writeDouble(effect.properties());
    out.writeDouble(effect.propertyYears());
    out.writeDouble(effect.functionalDeviceYears());
    if (effect.acreYears() != null) {
      out.writeDouble(effect.acreYears());
    }
    if (effect.removalsAvoided() != null) {
      out.writeDouble(effect.removalsAvoided());
    }
  }

  static EffectPart read(ByteSource in) {
    Grouping grouping = GROUPINGS[(int) in.readNumber()];
    GroupKey key = new GroupKey(grouping, in.readText());
    long flags = in.readNumber();
    double cash = in.readDouble();
    double all = in.readDouble();
    double properties = in.readDouble();
    double propertyYears = in.readDouble();
    double functional = in.readDouble();
    Double acreYears = (flags & 2) == 0 ? null : (Double) in.readDouble();
    Double removals = (flags & 4) == 0 ? null : (Double) in.readDouble();
    return new EffectPart(
        key,
        new Effect(
            (flags & 1) == 1,
            cash,
            all,
            properties,
            propertyYears,
            acreYears,
            removals,
            functional));
  }
}
