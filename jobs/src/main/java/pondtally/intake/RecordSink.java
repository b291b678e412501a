package pondtally.intake;

import java.util.function.Consumer;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** Makes the records of a table and hands them on. */
final class RecordSink implements RowSink {

  private final RecordFactory factory;
  private final Consumer<Sourced> records;
  private final int today;
  private int newest = IsoDay.NONE;

  RecordSink(RecordFactory factory, Consumer<Sourced> records, int today) {
    this.factory = factory;
    this.records = records;
    this.today = today;
  }

  @Override
  public boolean accept(Origin origin, String partner, Object[] values) {
    Sourced made = factory.make(origin, partner, values);
    if (made instanceof Visit visit) {
      note(visit.visitedOn());
    } else if (made instanceof Install install) {
      note(install.installedOn());
    }
    records.accept(made);
    return true;
  }

  private void note(int day) {
    if (day <= today && day > newest) {
      newest = day;
    }
  }

  @Override
  public Integer newestDay() {
    return newest == IsoDay.NONE ? null : newest;
  }
}
