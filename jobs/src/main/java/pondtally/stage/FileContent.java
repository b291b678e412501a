package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.check.SheetReport;
import pondtally.pack.ByteSink;
import pondtally.record.Budget;
import pondtally.record.Expense;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Sourced;
import pondtally.record.Visit;
import scala.Tuple2;

/**
 * Some of what one task read from partner files, packed for what comes next.
 *
 * @param reports what was found in each sheet
 * @param deviceRows rows that name a device, by partition of the device's id
 * @param siteRows rows that name a site or a pond
 * @param programRows budgets and expenses
 */
public record FileContent(
    List<SheetReport> reports,
    List<Tuple2<Integer, byte[]>> deviceRows,
    byte[] siteRows,
    byte[] programRows)
    implements Serializable {

  /** Sorts rows as they are read. */
  static final class Packer {
    private final Buckets devices;
    private final ByteSink sites = new ByteSink();
    private final ByteSink program = new ByteSink();
    private long bytes;

    Packer(int partitions) {
      devices = new Buckets(partitions);
    }

    void add(Sourced row) {
      String device = deviceOf(row);
      if (device != null) {
        bytes += devices.add(device, row);
      } else {
        ByteSink sink = row instanceof Budget || row instanceof Expense ? program : sites;
        bytes -= sink.size();
        RecordCodec.write(row, sink);
        bytes += sink.size();
      }
    }

    /** Bytes of the rows added so far. */
    long bytes() {
      return bytes;
    }

    FileContent pack(List<SheetReport> reports) {
      return new FileContent(
          new ArrayList<>(reports), devices.filled(), sites.toBytes(), program.toBytes());
    }
  }

  /** The device that a row names; null for rows of sites and of the program. */
  static String deviceOf(Sourced row) {
    if (row instanceof Visit visit) {
      return visit.deviceId();
    }
    if (row instanceof MaterialLine line) {
      return line.deviceId();
    }
    return row instanceof Install install ? install.deviceId() : null;
  }
}
