package pondtally.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import pondtally.record.ClusterRecords;
import pondtally.record.DeviceKind;
import pondtally.record.Install;
import pondtally.record.Origin;
import pondtally.record.Site;

class LikelyDuplicatesTest {

  private static final double METERS_A_DEGREE = Math.PI / 180 * 6_371_008.8;

  private static InstallPlace place(int file, String device, String site, String day) {
    return new InstallPlace(
        new Origin(file, 0, 2, false),
        "partner " + file,
        device,
        site,
        TestRow.day(day),
        DeviceKind.POND_LEVELER,
        12.0,
        null,
        null);
  }

  private static InstallPlace at(InstallPlace p, double latitude, double longitude) {
    return new InstallPlace(
        p.origin(),
        p.partner(),
        p.deviceId(),
        p.siteId(),
        p.installedOn(),
        p.kind(),
        p.pipeDiameterIn(),
        latitude,
        longitude);
  }

  private static InstallPlace with(InstallPlace p, DeviceKind kind, Double diameterIn) {
    return new InstallPlace(
        p.origin(),
        p.partner(),
        p.deviceId(),
        p.siteId(),
        p.installedOn(),
        kind,
        diameterIn,
        p.latitude(),
        p.longitude());
  }

  private static int pairs(InstallPlace... places) {
    return LikelyDuplicates.among(List.of(places)).size();
  }

  @Test
  void twoPartnersNearbyAreNamedAsAPair() {
    InstallPlace first = at(place(0, "17", "Mill", "2024-05-03"), 45, -110);
    InstallPlace second = at(place(1, "N,4", "S9", "2024-05-06"), 45 + 40 / METERS_A_DEGREE, -110);
    List<Finding> found = LikelyDuplicates.among(List.of(second, first));
    assertEquals(1, found.size());
    Finding pair = found.get(0);
    assertEquals(second.origin(), pair.origin());
    assertEquals(Severity.NOTICE, pair.severity());
    assertEquals("likely-duplicate", pair.rule());
    assertEquals(
        "Device \"N,4\" may be the same as device \"17\" ({row:0/0/2}): both pond-leveler, installed"
            + " on 2024-05-06 and 2024-05-03, at sites \"S9\" and \"Mill\", 40 meters apart. Both count"
            + " as devices until you decide. If they are one, write what is suggested into aliases.csv"
            + " in the program folder (its columns: kind,id,same_as); if they are two, nothing need be"
            + " done.",
        pair.message());
    assertEquals("site,S9,Mill and device,\"N,4\",17", pair.suggestion());
  }

  @Test
  void distanceIsMeasuredOnTheGround() {
    InstallPlace first = at(place(0, "A", "S1", "2024-05-03"), 60, 10);
    InstallPlace second = place(1, "B", "S2", "2024-05-03");
    double half = METERS_A_DEGREE / 2; // a degree of longitude at 60 degrees north
    assertEquals(1, pairs(first, at(second, 60, 10 + 99 / half)));
    assertEquals(0, pairs(first, at(second, 60, 10 + 101 / half)));
    assertEquals(0, pairs(first, second), "no coordinates, no distance");
    assertEquals(1, pairs(at(first, 52, 179.9999), at(second, 52, -179.9999)), "date line");
  }

  @Test
  void daysKindAndPipeTellDevicesApart() {
    InstallPlace first = at(place(0, "A", "S1", "2024-05-03"), 45, -110);
    assertEquals(1, pairs(first, at(place(1, "B", "S2", "2024-05-17"), 45, -110)));
    assertEquals(0, pairs(first, at(place(1, "B", "S2", "2024-05-18"), 45, -110)));
    InstallPlace second = at(place(1, "B", "S2", "2024-05-03"), 45, -110);
    assertEquals(0, pairs(first, with(second, DeviceKind.CULVERT_FENCE, 12.0)));
    assertEquals(1, pairs(first, with(second, null, null)));
    assertEquals(1, pairs(first, with(second, null, 11.8)));
    assertEquals(0, pairs(first, with(second, null, 10.0)));
  }

  @Test
  void likeIdsCountUnlessFarApart() {
    InstallPlace first = place(0, "B-012", "S1", "2024-05-03");
    assertEquals(1, pairs(first, place(0, "b12", "S2", "2024-05-04")), "in one sheet too");
    assertEquals(0, pairs(first, place(1, "B13", "S2", "2024-05-04")));
    assertEquals(
        0, pairs(at(first, 45, -110), at(place(1, "B12", "S2", "2024-05-04"), 45.1, -110)));
    assertEquals(0, pairs(place(0, "--", "S1", "2024-05-03"), place(1, "..", "S2", "2024-05-03")));
  }

  @Test
  void oneSheetKnowsItsOwnDevices() {
    assertEquals(0, pairs(place(0, "A", "S1", "2024-05-03"), place(0, "B", "S1", "2024-05-03")));
    assertEquals(1, pairs(place(0, "A", "S-1", "2024-05-03"), place(1, "B", "s1", "2024-05-03")));
  }

  @Test
  void aPlaceholderForManyPlacesMakesNoPairs() {
    List<InstallPlace> crowd = new ArrayList<>();
    for (int i = 0; i < 40_000; i++) {
      crowd.add(at(place(i, "D" + i, "S" + i, "2024-05-03"), 0, 0));
    }
    List<Finding> found =
        Assertions.assertTimeout(
            Duration.ofSeconds(30), () -> LikelyDuplicates.among(crowd), "not quadratic");
    assertTrue(found.size() < RecentInstalls.CROWD * RecentInstalls.CROWD, found.size() + " pairs");
  }

  /** Against every pair looked at, one by one. */
  @Test
  void noPairIsMissed() {
    Random random = new Random(7);
    List<InstallPlace> places = new ArrayList<>();
    for (int i = 0; i < 600; i++) {
      InstallPlace place =
          place(i, "D" + i, "S" + i, "2024-0%s-1%s".formatted(1 + random.nextInt(9), i % 10));
      double spread = 2000 / METERS_A_DEGREE;
      places.add(at(place, 45 + spread * random.nextDouble(), -110 + spread * random.nextDouble()));
    }
    int expected = 0;
    for (InstallPlace a : places) {
      for (InstallPlace b : places) {
        boolean isPair =
            a.origin().file() < b.origin().file()
                && Math.abs(a.installedOn() - b.installedOn()) <= 14
                && haversine(a, b) <= 100;
        expected += isPair ? 1 : 0;
      }
    }
    assertTrue(expected > 20, expected + " pairs");
    Collections.shuffle(places, random);
    assertEquals(expected, LikelyDuplicates.among(places).size());
  }

  /** Sinnott 1984, Virtues of the haversine. */
  private static double haversine(InstallPlace a, InstallPlace b) {
    double dPhi = Math.toRadians(b.latitude() - a.latitude()) / 2;
    double dLambda = Math.toRadians(b.longitude() - a.longitude()) / 2;
    double h =
        Math.pow(Math.sin(dPhi), 2)
            + Math.cos(Math.toRadians(a.latitude()))
                * Math.cos(Math.toRadians(b.latitude()))
                * Math.pow(Math.sin(dLambda), 2);
    return 2 * 6_371_008.8 * Math.asin(Math.sqrt(h));
  }

  @Test
  void theFirstLifeOfADeviceStandsForIt() {
    Site site = TestRow.of(Site.class, 2, "siteId", "S1", "latitude", 45.0, "longitude", -110.0);
    Install later =
        TestRow.of(Install.class, 3, "deviceId", "D", "siteId", "S1", "installedOn", "2024-05-01");
    Install first =
        TestRow.of(Install.class, 4, "deviceId", "D", "siteId", "S1", "installedOn", "2020-05-01");
    ClusterRecords cluster = TestCluster.raw(List.of(site, later, first));
    List<InstallPlace> places = InstallPlace.of(cluster);
    assertEquals(1, places.size());
    assertEquals(4, places.get(0).origin().row());
    assertEquals(45.0, places.get(0).latitude());
  }
}
