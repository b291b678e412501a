package pondtally.stage;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.TreeSet;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import pondtally.record.Area;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.MaterialLine;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import pondtally.record.Visit;
import scala.Tuple2;

/**
 * Brings all the rows of a cluster of sites together: first the rows of each device, which name the
 * device alone, find their site through its install record; then the sites that share a pond or a
 * property meet.
 */
public final class HistoryStage {

  /** Begins the key of rows whose device or pond is in no record that names a site. */
  private static final String NOWHERE = "\u0000";

  private HistoryStage() {}

  /** The rows of each cluster, in file order. */
  public static JavaRDD<ClusterRecords> clusters(
      JavaSparkContext spark, Inputs inputs, int partitions) {
    JavaPairRDD<String, Sourced> placed = bySite(inputs.records(), partitions).cache();
    Broadcast<Linked> linked = spark.broadcast(linked(placed));
    return placed
        .mapToPair(row -> new Tuple2<>(linked.value().cluster(row._1), row._2))
        .groupByKey(partitions)
        .map(rows -> ClusterRows.sorted(rows._1, rows._2));
  }

  /** Every row with the site it is about. */
  private static JavaPairRDD<String, Sourced> bySite(JavaRDD<Sourced> records, int partitions) {
    JavaPairRDD<String, Sourced> ofDevices =
        records
            .filter(row -> deviceOf(row) != null)
            .mapToPair(row -> new Tuple2<>(deviceOf(row), row))
            .groupByKey(partitions)
            .flatMapToPair(rows -> atSiteOfDevice(rows._1, rows._2));
    JavaPairRDD<String, Sourced> ofPonds =
        records
            .filter(row -> row instanceof Site || row instanceof Area)
            .mapToPair(row -> new Tuple2<>(pondOf(row), row))
            .groupByKey(partitions)
            .flatMapToPair(rows -> atSiteOfPond(rows._1, rows._2));
    JavaPairRDD<String, Sourced> ofSites =
        records
            .filter(
                row -> row instanceof Removal || row instanceof Property || row instanceof Request)
            .mapToPair(row -> new Tuple2<>(siteOf(row), row));
    return ofDevices.union(ofPonds).union(ofSites);
  }

  private static String deviceOf(Sourced row) {
    if (row instanceof Install install) {
      return install.deviceId();
    }
    if (row instanceof MaterialLine line) {
      return line.deviceId();
    }
    return row instanceof Visit visit ? visit.deviceId() : null;
  }

  private static String siteOf(Sourced row) {
    if (row instanceof Removal removal) {
      return removal.siteId();
    }
    return row instanceof Property property ? property.siteId() : ((Request) row).siteId();
  }

  private static String pondOf(Sourced row) {
    if (row instanceof Site site) {
      return site.pondId() == null ? site.siteId() : site.pondId();
    }
    Area area = (Area) row;
    return area.pondId() == null ? area.siteId() : area.pondId();
  }

  private static Iterator<Tuple2<String, Sourced>> atSiteOfDevice(
      String device, Iterable<Sourced> rows) {
    Install first = null;
    for (Sourced row : rows) {
      if (row instanceof Install install
          && (first == null || install.origin().compareTo(first.origin()) < 0)) {
        first = install;
      }
    }
    String site = first == null ? NOWHERE + "device " + device : first.siteId();
    return keyed(site, rows);
  }

  private static Iterator<Tuple2<String, Sourced>> atSiteOfPond(
      String pond, Iterable<Sourced> rows) {
    TreeSet<String> sites = new TreeSet<>();
    for (Sourced row : rows) {
      if (row instanceof Site site) {
        sites.add(site.siteId());
      } else if (row instanceof Area area && area.siteId() != null) {
        sites.add(area.siteId());
      }
    }
    String first = sites.isEmpty() ? NOWHERE + "pond " + pond : sites.first();
    List<Tuple2<String, Sourced>> placed = new ArrayList<>();
    for (Sourced row : rows) {
      if (row instanceof Site site) {
        placed.add(new Tuple2<>(site.siteId(), row));
      } else {
        Area area = (Area) row;
        placed.add(new Tuple2<>(area.siteId() == null ? first : area.siteId(), row));
      }
    }
    return placed.iterator();
  }

  private static Iterator<Tuple2<String, Sourced>> keyed(String key, Iterable<Sourced> rows) {
    List<Tuple2<String, Sourced>> keyed = new ArrayList<>();
    rows.forEach(row -> keyed.add(new Tuple2<>(key, row)));
    return keyed.iterator();
  }

  /** Sites that share a pond, or a property; only those that share are brought to the driver. */
  private static Linked linked(JavaPairRDD<String, Sourced> placed) {
    return Linked.of(
        placed
            .filter(row -> row._2 instanceof Site || row._2 instanceof Property)
            .mapToPair(row -> new Tuple2<>(linkOf(row._2), row._1))
            .distinct()
            .groupByKey()
            .values()
            .map(HistoryStage::list)
            .filter(sites -> sites.size() > 1)
            .collect());
  }

  private static String linkOf(Sourced row) {
    return row instanceof Property property
        ? "property " + property.propertyId()
        : "pond " + pondOf(row);
  }

  private static List<String> list(Iterable<String> values) {
    List<String> list = new ArrayList<>();
    values.forEach(list::add);
    return list;
  }
}
