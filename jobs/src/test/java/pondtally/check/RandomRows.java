package pondtally.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import pondtally.record.Action;
import pondtally.record.Area;
import pondtally.record.Condition;
import pondtally.record.Install;
import pondtally.record.MaterialItem;
import pondtally.record.MaterialLine;
import pondtally.record.Origin;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;

/** A few rows from so few values that every conflict comes up. */
final class RandomRows {

  static final int FIRST_DAY = TestRow.day("2024-12-01");

  private final Random random;
  private int row = 1;

  private RandomRows(Random random) {
    this.random = random;
  }

  static List<Sourced> of(Random random) {
    RandomRows maker = new RandomRows(random);
    List<Sourced> rows = new ArrayList<>();
    int count = random.nextInt(40);
    for (int i = 0; i < count; i++) {
      rows.add(maker.next());
    }
    return rows;
  }

  private Sourced next() {
    return switch (random.nextInt(10)) {
      case 0 -> site();
      case 1, 2 -> install();
      case 3 -> material();
      case 4, 5 -> visit();
      case 6 -> removal();
      case 7 -> property();
      case 8 -> area();
      default -> make(Request.class, "siteId", siteId(), "askedOn", day());
    };
  }

  private Site site() {
    return make(
        Site.class,
        "siteId",
        siteId(),
        "watershed",
        maybe("99010203"),
        "pondId",
        maybe("P" + random.nextInt(2)),
        "wetlandAcresBefore",
        maybe(1.5));
  }

  private Install install() {
    return make(
        Install.class,
        "deviceId",
        deviceId(),
        "siteId",
        siteId(),
        "installedOn",
        day(),
        "trackedFrom",
        maybe(day()),
        "retiredOn",
        maybe(day()),
        "laborHours",
        maybe(2.0),
        "installCostUsd",
        maybe(100.0));
  }

  private MaterialLine material() {
    return make(
        MaterialLine.class,
        "deviceId",
        deviceId(),
        "item",
        MaterialItem.PIPE,
        "quantity",
        1.0 + random.nextInt(2),
        "unitCostUsd",
        maybe(50.0),
        "totalCostUsd",
        maybe(100.0),
        "purchasedOn",
        maybe(day()));
  }

  private Visit visit() {
    return make(
        Visit.class,
        "deviceId",
        deviceId(),
        "visitedOn",
        day(),
        "condition",
        oneOf(Condition.values()),
        "action",
        maybe(oneOf(Action.values())),
        "costUsd",
        maybe(10.0),
        "wetlandAcres",
        maybe(1.0));
  }

  private Removal removal() {
    return make(
        Removal.class,
        "siteId",
        siteId(),
        "year",
        2023 + random.nextInt(4),
        "removals",
        maybe(1.0 + random.nextInt(2)),
        "avoided",
        maybe(1.0));
  }

  private Property property() {
    return make(
        Property.class,
        "propertyId",
        "H" + random.nextInt(3),
        "siteId",
        siteId(),
        "protectedFrom",
        maybe(day()),
        "protectedUntil",
        maybe(day()));
  }

  private Area area() {
    return make(
        Area.class,
        "siteId",
        maybe(siteId()),
        "pondId",
        maybe("P" + random.nextInt(3)),
        "measuredOn",
        day(),
        "acres",
        1.0);
  }

  private <T extends Record> T make(Class<T> type, Object... fields) {
    Origin origin = new Origin(random.nextInt(3), 0, row++, random.nextBoolean());
    Object[] all = new Object[fields.length + 2];
    System.arraycopy(fields, 0, all, 0, fields.length);
    all[fields.length] = "partner";
    all[fields.length + 1] = random.nextBoolean() ? "north" : "south";
    return TestRow.at(type, origin, all);
  }

  private String siteId() {
    return "S" + random.nextInt(3);
  }

  private String deviceId() {
    return "D" + random.nextInt(3);
  }

  /** Within 40 days, of which the last few are after the cut and after the day of the run. */
  private int day() {
    return FIRST_DAY + random.nextInt(40);
  }

  private <T> T maybe(T value) {
    return random.nextInt(3) == 0 ? null : value;
  }

  private <T> T oneOf(T[] values) {
    return values[random.nextInt(values.length)];
  }
}
