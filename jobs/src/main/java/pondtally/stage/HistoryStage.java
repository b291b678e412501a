package pondtally.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import pondtally.record.Area;
import pondtally.record.ClusterRecords;
import pondtally.record.Install;
import pondtally.record.Property;
import pondtally.record.Removal;
import pondtally.record.Request;
import pondtally.record.Site;
import pondtally.record.Sourced;
import scala.Tuple2;

/**
 * Brings all the rows of a cluster of sites together: first the rows of each device, which name the
 * device alone, find their site through its install record; then the sites that share a pond or a
 * property meet. What is shuffled is packed bytes.
 */
public final class HistoryStage {

  /** Begins the key of rows whose device or pond is in no record that names a site. */
  private static final String NOWHERE = "\u0000";

  private HistoryStage() {}

  /** The rows of each cluster, in file order. */
  public static JavaRDD<ClusterRecords> clusters(JavaSparkContext spark, Inputs inputs) {
    int partitions = inputs.partitions();
    Broadcast<Linked> linked = spark.broadcast(LinkStage.linked(inputs));
    JavaPairRDD<Integer, byte[]> ofDevices =
        inputs
            .contents()
            .flatMapToPair(content -> content.deviceRows().iterator())
            .groupByKey(partitions)
            .flatMapToPair(
                blocks -> byCluster(Buckets.records(blocks._2), linked.value(), partitions));
    JavaPairRDD<Integer, byte[]> ofSites =
        inputs
            .contents()
            .flatMapToPair(
                content ->
                    byCluster(
                        Buckets.records(List.of(content.siteRows())), linked.value(), partitions));
    return ofDevices
        .union(ofSites)
        .groupByKey(partitions)
        .flatMap(blocks -> clusters(Buckets.records(blocks._2), linked.value()));
  }

  private static Iterator<Tuple2<Integer, byte[]>> byCluster(
      List<Sourced> rows, Linked linked, int partitions) {
    Map<String, String> siteOfDevice = siteOfDevice(rows);
    Buckets buckets = new Buckets(partitions);
    rows.forEach(row -> buckets.add(clusterOf(row, siteOfDevice, linked), row));
    return buckets.filled().iterator();
  }

  private static Iterator<ClusterRecords> clusters(List<Sourced> rows, Linked linked) {
    Map<String, String> siteOfDevice = siteOfDevice(rows);
    Map<String, List<Sourced>> byCluster = new TreeMap<>();
    for (Sourced row : rows) {
      byCluster
          .computeIfAbsent(clusterOf(row, siteOfDevice, linked), c -> new ArrayList<>())
          .add(row);
    }
    return byCluster.entrySet().stream()
        .map(entry -> ClusterRows.sorted(entry.getKey(), entry.getValue()))
        .iterator();
  }

  /** Where each device stands: the site of its first install row in file order. */
  private static Map<String, String> siteOfDevice(List<Sourced> rows) {
    Map<String, Install> first = new HashMap<>();
    for (Sourced row : rows) {
      if (row instanceof Install install) {
        first.merge(
            install.deviceId(), install, (a, b) -> a.origin().compareTo(b.origin()) <= 0 ? a : b);
      }
    }
    Map<String, String> sites = new HashMap<>();
    first.forEach((device, install) -> sites.put(device, install.siteId()));
    return sites;
  }

  private static String clusterOf(Sourced row, Map<String, String> siteOfDevice, Linked linked) {
    String device = FileContent.deviceOf(row);
    if (device != null) {
      String site = siteOfDevice.get(device);
      return site == null ? NOWHERE + "device " + device : linked.cluster(site);
    }
    String site = siteOf(row, linked);
    return site == null ? NOWHERE + "pond " + ((Area) row).pondId() : linked.cluster(site);
  }

  private static String siteOf(Sourced row, Linked linked) {
    if (row instanceof Site site) {
      return site.siteId();
    }
    if (row instanceof Removal removal) {
      return removal.siteId();
    }
    if (row instanceof Property property) {
      return property.siteId();
    }
    if (row instanceof Request request) {
      return request.siteId();
    }
    Area area = (Area) row;
    return area.siteId() == null ? linked.siteOfPond(area.pondId()) : area.siteId();
  }
}
