package pondtally.reports.geojson;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pondtally.reports.table.Field;
import pondtally.reports.table.Row;
import pondtally.reports.table.Table;
import pondtally.reports.view.Line;

/**
 * The sites that have coordinates, as a GeoJSON feature collection (RFC 7946: WGS 84, longitude
 * before latitude, bounding box) for mapping tools. Every other column of table {@code sites} is a
 * property of its feature; what is not known is null. It names sites and their places, so it is as
 * private as that table.
 */
public final class SitesGeoJson {

  private static final String LATITUDE = "latitude";
  private static final String LONGITUDE = "longitude";
  private static final double HALF_TURN = 180;

  private final Table sites;

  private SitesGeoJson(Table sites) {
    this.sites = sites;
  }

  private record Place(Row row, double longitude, double latitude) {}

  /**
   * Writes the file; the same table gives the same bytes.
   *
   * @param sites the result table {@code sites}
   * @param file the {@code .geojson} file to write
   * @throws IOException when it cannot be written
   */
  public static void write(Table sites, Path file) throws IOException {
    try (OutputStream out = Files.newOutputStream(file);
        JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8)) {
      new SitesGeoJson(sites).write(json);
    }
  }

  private void write(JsonGenerator json) throws IOException {
    List<Place> places = places();
    json.writeStartObject();
    json.writeStringField("type", "FeatureCollection");
    if (!places.isEmpty()) {
      json.writeFieldName("bbox");
      json.writeArray(bbox(places), 0, 4);
    }
    json.writeArrayFieldStart("features");
    for (Place place : places) {
      json.writeRaw('\n');
      feature(json, place);
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
  }

  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    if (!has(LATITUDE) || !has(LONGITUDE)) {
      return places;
    }
    for (Row row : sites.rows()) {
      Line line = Line.of(row);
      if (line.number(LATITUDE).isPresent() && line.number(LONGITUDE).isPresent()) {
        places.add(
            new Place(
                row, line.number(LONGITUDE).getAsDouble(), line.number(LATITUDE).getAsDouble()));
      }
    }
    return places;
  }

  private boolean has(String column) {
    return sites.fields().stream().anyMatch(field -> field.name().equals(column));
  }

  /**
   * West, south, east, north. Where sites lie on both sides of the antimeridian, west is above east
   * (RFC 7946, section 5.2).
   */
  private static double[] bbox(List<Place> places) {
    double[] east = places.stream().mapToDouble(Place::longitude).sorted().toArray();
    double[] north = places.stream().mapToDouble(Place::latitude).sorted().toArray();
    double west = east[0];
    double last = east[east.length - 1];
    if (last - west > HALF_TURN) {
      west = places.stream().mapToDouble(Place::longitude).filter(x -> x >= 0).min().orElseThrow();
      last = places.stream().mapToDouble(Place::longitude).filter(x -> x < 0).max().orElseThrow();
    }
    return new double[] {west, north[0], last, north[north.length - 1]};
  }

  private void feature(JsonGenerator json, Place place) throws IOException {
    json.writeStartObject();
    json.writeStringField("type", "Feature");
    json.writeObjectFieldStart("geometry");
    json.writeStringField("type", "Point");
    json.writeFieldName("coordinates");
    json.writeArray(new double[] {place.longitude, place.latitude}, 0, 2);
    json.writeEndObject();
    json.writeObjectFieldStart("properties");
    for (Field field : sites.fields()) {
      if (!field.name().equals(LATITUDE) && !field.name().equals(LONGITUDE)) {
        property(json, field, place.row);
      }
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void property(JsonGenerator json, Field field, Row row) throws IOException {
    String cell = row.text(field.name());
    boolean number = field.type().equals("number") || field.type().equals("integer");
    json.writeFieldName(field.name());
    if (cell.isEmpty()) {
      json.writeNull();
    } else if (number && Line.of(row).number(field.name()).isPresent()) {
      json.writeNumber(cell);
    } else {
      json.writeString(cell);
    }
  }
}
