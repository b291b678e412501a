package pondtally.stage;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/**
 * Rows of the table of contributions that stand together: those of one subject at one site.
 *
 * @param siteId empty where they belong to no site
 * @param rows how many
 * @param lines as text
 */
record ContributionBlock(String subject, String siteId, int rows, byte[] lines)
    implements Comparable<ContributionBlock> {

  @Override
  public int compareTo(ContributionBlock other) {
    int order = subject.compareTo(other.subject);
    return order != 0 ? order : siteId.compareTo(other.siteId);
  }

  void write(DataOutput out) throws IOException {
    out.writeUTF(subject);
    out.writeUTF(siteId);
    out.writeInt(rows);
    out.writeInt(lines.length);
    out.write(lines);
  }

  static ContributionBlock read(DataInput in) throws IOException {
    String subject = in.readUTF();
    String siteId = in.readUTF();
    int rows = in.readInt();
    byte[] lines = new byte[in.readInt()];
    in.readFully(lines);
    return new ContributionBlock(subject, siteId, rows, lines);
  }
}
