package pondtally.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pondtally.record.Action;
import pondtally.record.AreaMethod;
import pondtally.record.Cause;
import pondtally.record.Code;
import pondtally.record.Condition;
import pondtally.record.DeviceKind;
import pondtally.record.Evidence;
import pondtally.record.ExpenseKind;
import pondtally.record.FenceForm;
import pondtally.record.MaterialItem;
import pondtally.record.PipeWall;
import pondtally.record.PropertyType;
import pondtally.record.RequestOutcome;
import pondtally.record.RetiredReason;
import pondtally.record.Setting;
import pondtally.record.VisitReason;

class TableSchemaTest {

  @Test
  void everySynonymFindsItsOwnField() {
    for (TableSchema table : TableSchema.all()) {
      for (FieldSchema field : table.fields()) {
        assertEquals(field, table.match(field.name()).orElseThrow().field());
        for (String synonym : field.synonyms()) {
          assertEquals(
              field, table.match(synonym).orElseThrow().field(), table.name() + ": " + synonym);
        }
      }
    }
  }

  @Test
  void everyFieldIsDescribedInOneSentence() {
    for (TableSchema table : TableSchema.all()) {
      for (FieldSchema field : table.fields()) {
        assertTrue(field.description().matches("[A-Z].*\\."), table.name() + "." + field.name());
      }
    }
  }

  @Test
  void everyTableTakesAPartnerColumnThatIsPrivate() {
    for (TableSchema table : TableSchema.all()) {
      assertTrue(table.field("partner").isPrivate(), table.name());
    }
  }

  @Test
  void codesAreThoseOfTheRecords() {
    Map<String, Class<? extends Enum<?>>> types =
        Map.ofEntries(
            Map.entry("sites.setting", Setting.class),
            Map.entry("sites.area_method", AreaMethod.class),
            Map.entry("areas.method", AreaMethod.class),
            Map.entry("installs.device_kind", DeviceKind.class),
            Map.entry("installs.pipe_wall", PipeWall.class),
            Map.entry("installs.fence_form", FenceForm.class),
            Map.entry("installs.retired_reason", RetiredReason.class),
            Map.entry("materials.item", MaterialItem.class),
            Map.entry("revisits.condition", Condition.class),
            Map.entry("revisits.cause", Cause.class),
            Map.entry("revisits.action", Action.class),
            Map.entry("revisits.reason", VisitReason.class),
            Map.entry("removals.evidence", Evidence.class),
            Map.entry("properties.property_type", PropertyType.class),
            Map.entry("expenses.kind", ExpenseKind.class),
            Map.entry("requests.outcome", RequestOutcome.class));
    int coded = 0;
    for (TableSchema table : TableSchema.all()) {
      for (FieldSchema field : table.fields()) {
        if (!field.codes().isEmpty()) {
          coded++;
          Class<? extends Enum<?>> type = types.get(table.name() + "." + field.name());
          List<String> codes =
              Arrays.stream(type.getEnumConstants()).map(code -> ((Code) code).code()).toList();
          assertEquals(codes, field.codes(), table.name() + "." + field.name());
        }
      }
    }
    assertEquals(types.size(), coded);
  }

  @ParameterizedTest
  @CsvSource({
    "installs, Device ID, device_id, ",
    "installs, DEVICE-No., device_id, ",
    "installs, Device #, device_id, ",
    "installs, Install date, installed_on, ",
    "installs, Date installed, installed_on, ",
    "installs, Pipe dia (mm), pipe_diameter_in, MILLIMETER",
    "installs, Pipe dia [cm], pipe_diameter_in, CENTIMETER",
    "installs, pipe_diameter_mm, pipe_diameter_in, MILLIMETER",
    "installs, Pipe diameter (in.), pipe_diameter_in, ",
    "installs, Pipe dia (''), pipe_diameter_in, INCH",
    "installs, Pipe dia (ft), pipe_diameter_in, FOOT",
    "installs, Pipe dia (′), pipe_diameter_in, FOOT",
    "installs, Pipe length in m, pipe_length_ft, METER",
    "installs, 'Pipe length, feet', pipe_length_ft, FOOT",
    "installs, Install cost ($), install_cost_usd, DOLLAR",
    "sites, wetland_ha_before, wetland_acres_before, HECTARE",
    "sites, Wetland before (sq ft), wetland_acres_before, SQUARE_FOOT",
    "sites, HUC, watershed, ",
    "areas, Area (ha), acres, HECTARE",
    "areas, hectares, acres, HECTARE",
    "revisits, Wetland area (m²), wetland_acres, SQUARE_METER",
    "revisits, Cost, cost_usd, ",
    "materials, Qty, quantity, "
  })
  void headingsAreFoundWhateverTheirSpelling(
      String table, String heading, String field, Unit unit) {
    HeadingMatch match = TableSchema.named(table).match(heading).orElseThrow();
    assertEquals(field, match.field().name());
    assertEquals(unit, match.unit());
  }

  @Test
  void likenessAloneIsNoMatch() {
    TableSchema installs = TableSchema.named("installs");
    for (String heading : List.of("Devise ID", "Colour", "", "()", "mm", "Pipe diametre (mm)")) {
      assertFalse(installs.match(heading).isPresent(), heading);
    }
  }

  @Test
  void tablesGoByOtherNames() {
    assertEquals("revisits", TableSchema.find("Visits").orElseThrow().name());
    assertEquals("installs", TableSchema.find("installation").orElseThrow().name());
    assertTrue(TableSchema.find("north").isEmpty());
  }

  /** International yard and pound agreement, 1959; acre of 43,560 square feet; from memory. */
  @Test
  void unitsConvertExactly() {
    assertEquals(12, Unit.MILLIMETER.convert(304.8, Unit.INCH), 0);
    assertEquals(1, Unit.METER.convert(0.3048, Unit.FOOT), 0);
    assertEquals(1, Unit.SQUARE_FOOT.convert(43_560, Unit.ACRE), 0);
    assertEquals(2.471053814671653, Unit.HECTARE.convert(1, Unit.ACRE), 1e-15);
    assertEquals(640, Unit.SQUARE_MILE.convert(1, Unit.ACRE), 0);
    assertEquals(1.5, Unit.MINUTE.convert(90, Unit.HOUR), 0);
  }
}
