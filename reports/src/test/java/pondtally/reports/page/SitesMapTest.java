package pondtally.reports.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pondtally.reports.fixture.EditedTables;
import pondtally.reports.fixture.TablesFixture;
import pondtally.reports.table.TablePackage;

class SitesMapTest {

  @TempDir Path folder;

  /**
   * A minute of latitude is about one nautical mile of 1,852 m (International Extraordinary
   * Hydrographic Conference, Monaco 1929); from memory. A sphere of mean radius keeps it to 0.1%.
   */
  @Test
  void aDegreeIsSixtyNauticalMiles() {
    assertEquals(60 * 1.852, SitePlaces.KM_PER_DEGREE, 0.001 * 60 * 1.852);
  }

  @Test
  void onePlaceIsAMapOfItsOwn() throws Exception {
    SitePlaces places = edited("44.5", "-93.25");
    assertEquals(10, places.places().size());
    assertTrue(places.share());
    assertTrue(places.north() > places.south() && places.east() > places.west());
  }

  @Test
  void sitesWithoutCoordinatesAreCounted() throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 20);
    EditedTables.of(tables, "sites").put("", row -> row.contains("S0001"), "latitude").save();
    TablePackage opened = TablePackage.open(tables);
    assertEquals(1, SitePlaces.of(opened.table("sites").orElseThrow()).without());
    assertTrue(PageFixture.page(opened, folder).contains(">1\u00a0site</span> on record has no"));
  }

  @Test
  void theDateLineDoesNotTearTheMap() throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 4);
    EditedTables.of(tables, "sites")
        .put("179.9", row -> row.contains("S0000"), "longitude")
        .put("-179.9", row -> row.contains("S0001"), "longitude")
        .save();
    SitePlaces places = SitePlaces.of(TablePackage.open(tables).table("sites").orElseThrow());
    assertTrue(places.east() - places.west() < 1, places.west() + " to " + places.east());
  }

  /** Told apart without color: no two marks have one shape. */
  @Test
  void everyStateHasAShapeOfItsOwn() {
    Set<String> shapes = new HashSet<>();
    for (SiteMark mark : List.of(SiteMark.values())) {
      Html html = new Html();
      mark.draw(html);
      html.close();
      assertTrue(shapes.add(html.page().replaceAll("(?s).* d=\"([^\"]*)\".*", "$1")), mark.name());
    }
  }

  private SitePlaces edited(String latitude, String longitude) throws Exception {
    Path tables = folder.resolve("tables");
    TablesFixture.open(tables, 20);
    EditedTables.of(tables, "sites")
        .put(latitude, row -> true, "latitude")
        .put(longitude, row -> true, "longitude")
        .save();
    return SitePlaces.of(TablePackage.open(tables).table("sites").orElseThrow());
  }
}
