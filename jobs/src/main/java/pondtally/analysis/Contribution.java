package pondtally.analysis;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.io.Serializable;
import java.util.Comparator;
import pondtally.record.Origin;

/**
 * What one row of the partners' files adds to one figure.
 *
 * @param subject the figure; see {@link ContributionSubject}
 * @param siteId null where it belongs to no site
 * @param deviceId null where it belongs to a site, a pond or a property rather than to one device
 * @param amount in the subject's unit
 * @param origin the row
 * @param day the day of a payment, days since 1970-01-01, from which its budget period follows; 0
 *     for every other subject
 * @param year the year it counts in; {@link Years#ALL} for what stands at the end of the period
 * @param part cause of a failure, grade of evidence, type of property or funder; else null
 * @param groups the groups it counts in
 */
public record Contribution(
    ContributionSubject subject,
    String siteId,
    String deviceId,
    double amount,
    Origin origin,
    int day,
    String year,
    String part,
    ContributionGroups groups)
    implements Comparable<Contribution>, Serializable {

  private static final Comparator<String> TEXT = Comparator.nullsFirst(Comparator.naturalOrder());
  private static final Comparator<Contribution> ORDER =
      Comparator.comparing((Contribution c) -> c.subject().code())
          .thenComparing(Contribution::siteId, TEXT)
          .thenComparing(Contribution::deviceId, TEXT)
          .thenComparing(Contribution::year, TEXT)
          .thenComparingInt(Contribution::day)
          .thenComparing(Contribution::part, TEXT)
          .thenComparing(Contribution::origin)
          .thenComparingDouble(Contribution::amount)
          .thenComparing(c -> String.join("\u0000", c.groups().cells()));

  /** By subject, site, device, year, day, part and place in the files. */
  @Override
  public int compareTo(Contribution other) {
    return ORDER.compare(this, other);
  }

  /** Writes it so that {@link #read} gives it back. */
  public void write(DataOutput out) throws IOException {
    out.writeByte(subject.ordinal());
    writeText(out, siteId);
    writeText(out, deviceId);
    out.writeDouble(amount);
    out.writeInt(origin.file());
    out.writeInt(origin.sheet());
    out.writeInt(origin.row());
    out.writeInt(day);
    writeText(out, year);
    writeText(out, part);
    for (String group : groups.cells()) {
      out.writeUTF(group);
    }
  }

  /** What {@link #write} wrote. */
  public static Contribution read(DataInput in) throws IOException {
    ContributionSubject subject = ContributionSubject.values()[in.readByte()];
    String siteId = readText(in);
    String deviceId = readText(in);
    double amount = in.readDouble();
    Origin origin = new Origin(in.readInt(), in.readInt(), in.readInt(), false);
    int day = in.readInt();
    String year = readText(in);
    String part = readText(in);
    String[] groups = new String[ContributionGroups.COUNT];
    for (int i = 0; i < groups.length; i++) {
      groups[i] = in.readUTF();
    }
    return new Contribution(
        subject,
        siteId,
        deviceId,
        amount,
        origin,
        day,
        year,
        part,
        ContributionGroups.ofCells(groups));
  }

  private static void writeText(DataOutput out, String text) throws IOException {
    out.writeUTF(text == null ? "" : text);
  }

  private static String readText(DataInput in) throws IOException {
    String text = in.readUTF();
    return text.isEmpty() ? null : text;
  }
}
