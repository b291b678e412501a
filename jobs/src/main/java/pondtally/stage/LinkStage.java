package pondtally.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.apache.spark.api.java.JavaPairRDD;
import org.apache.spark.api.java.JavaRDD;
import pondtally.record.Area;
import pondtally.record.Property;
import pondtally.record.Site;
import pondtally.record.Sourced;
import scala.Tuple2;

/** Finds the sites that share a pond or a property; only those are brought to the driver. */
final class LinkStage {

  private static final String POND = "pond ";
  private static final String PROPERTY = "property ";

  /** In the place of a site, where an area names a pond alone. */
  private static final String ASKED = "";

  private LinkStage() {}

  static Linked linked(Inputs inputs) {
    JavaRDD<Sourced> rows =
        inputs
            .contents()
            .flatMap(content -> Buckets.records(List.of(content.siteRows())).iterator());
    JavaPairRDD<String, TreeSet<String>> sites =
        rows.filter(row -> keyOf(row) != null)
            .mapToPair(row -> new Tuple2<>(keyOf(row), siteOf(row)))
            .aggregateByKey(
                new TreeSet<String>(), inputs.partitions(), LinkStage::with, LinkStage::union)
            .filter(link -> link._2.size() > 1);
    List<List<String>> shared = new ArrayList<>();
    Map<String, String> siteOfPond = new HashMap<>();
    for (Tuple2<String, TreeSet<String>> link : sites.collect()) {
      boolean asked = link._2.remove(ASKED);
      shared.add(List.copyOf(link._2));
      if (asked) {
        siteOfPond.put(link._1.substring(POND.length()), link._2.first());
      }
    }
    return Linked.of(shared, siteOfPond);
  }

  private static TreeSet<String> with(TreeSet<String> sites, String site) {
    sites.add(site);
    return sites;
  }

  private static TreeSet<String> union(TreeSet<String> a, TreeSet<String> b) {
    a.addAll(b);
    return a;
  }

  private static String keyOf(Sourced row) {
    if (row instanceof Site site) {
      return POND + (site.pondId() == null ? site.siteId() : site.pondId());
    }
    if (row instanceof Property property) {
      return PROPERTY + property.propertyId();
    }
    return row instanceof Area area && area.siteId() == null ? POND + area.pondId() : null;
  }

  private static String siteOf(Sourced row) {
    if (row instanceof Site site) {
      return site.siteId();
    }
    return row instanceof Property property ? property.siteId() : ASKED;
  }
}
