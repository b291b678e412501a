package pondtally.reports.geojson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.table.TablePackage;

/** Against RFC 7946 (Butler and others 2016), sections 3.1.1, 3.2, 3.3 and 5. */
class SitesGeoJsonTest {

  @TempDir Path folder;

  private JsonNode written(Table sites) throws Exception {
    Path file = folder.resolve("sites.geojson");
    SitesGeoJson.write(sites, file);
    return new ObjectMapper().readTree(Files.readAllBytes(file));
  }

  private Table sites(TablePackage tables) {
    return tables.table("sites").orElseThrow();
  }

  @Test
  void everySiteWithCoordinatesIsAFeatureWithLongitudeFirst() throws Exception {
    Table sites = sites(TablesFixture.open(folder.resolve("tables"), 20));
    JsonNode root = written(sites);
    assertEquals("FeatureCollection", root.get("type").asText());
    assertEquals(sites.rows().size(), root.get("features").size());
    for (int i = 0; i < sites.rows().size(); i++) {
      Row row = sites.rows().get(i);
      JsonNode feature = root.get("features").get(i);
      assertEquals("Feature", feature.get("type").asText());
      assertEquals("Point", feature.at("/geometry/type").asText());
      assertEquals(2, feature.at("/geometry/coordinates").size());
      assertEquals(
          row.number("longitude").orElseThrow(), feature.at("/geometry/coordinates/0").asDouble());
      assertEquals(
          row.number("latitude").orElseThrow(), feature.at("/geometry/coordinates/1").asDouble());
      JsonNode properties = feature.get("properties");
      assertEquals(row.text("site_id"), properties.get("site_id").asText());
      assertEquals(row.text("state"), properties.get("state").asText());
      assertEquals(row.text("acres_retained").isEmpty(), properties.get("acres_retained").isNull());
      assertTrue(properties.get("total_usd").isNull() || properties.get("total_usd").isNumber());
      assertFalse(properties.has("latitude"));
    }
  }

  @Test
  void theBoxHoldsEveryPoint() throws Exception {
    JsonNode root = written(sites(TablesFixture.open(folder.resolve("tables"), 20)));
    double[] box = new double[4];
    for (int i = 0; i < 4; i++) {
      box[i] = root.get("bbox").get(i).asDouble();
    }
    for (JsonNode feature : root.get("features")) {
      double x = feature.at("/geometry/coordinates/0").asDouble();
      double y = feature.at("/geometry/coordinates/1").asDouble();
      assertTrue(box[0] <= x && x <= box[2] && box[1] <= y && y <= box[3]);
    }
  }

  @Test
  void aSiteWithoutCoordinatesIsLeftOut() throws Exception {
    Path tables = folder.resolve("tables");
    int all = sites(TablesFixture.open(tables, 20)).rows().size();
    EditedTables.of(tables, "sites").put("", row -> row.contains("S0001"), "latitude").save();
    JsonNode root = written(sites(TablePackage.open(tables)));
    assertEquals(all - 1, root.get("features").size());
  }

  @Test
  void theBoxMayCrossTheAntimeridian() throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 4);
    EditedTables.of(tables, "sites")
        .put("179.9", row -> row.contains("S0000"), "longitude")
        .put("-179.9", row -> row.contains("S0001"), "longitude")
        .save();
    JsonNode box = written(sites(TablePackage.open(tables))).get("bbox");
    assertEquals(179.9, box.get(0).asDouble());
    assertEquals(-179.9, box.get(2).asDouble());
  }

  @Test
  void sameTableSameBytes() throws Exception {
    Table sites = sites(TablesFixture.open(folder.resolve("tables"), 20));
    written(sites);
    byte[] first = Files.readAllBytes(folder.resolve("sites.geojson"));
    written(sites);
    assertEquals(
        -1,
        Files.mismatch(Files.write(folder.resolve("a"), first), folder.resolve("sites.geojson")));
  }
}
