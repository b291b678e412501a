package pondtally.sample;

import static pondtally.sample.Partner.LOWMARROW;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Lowmarrow: a workbook up to 2022, CSV files of a metric form since; followed from May 2020 only.
 */
final class LowmarrowFiles {
  private static final int LAST_WORKBOOK_YEAR = 2022;
  private static final List<Column> MATERIALS =
      Column.list(
          "device_id=Device id",
          "item=Item",
          "quantity=Quantity",
          "unit=Unit",
          "total_cost_usd=Total cost USD",
          "purchased_on=Purchased on",
          "paid_by=Paid by");

  private LowmarrowFiles() {}

  static List<Sheet> of(World world) {
    return List.of(
        sites(world),
        workbook(
                "Installs",
                Table.INSTALLS,
                installColumns("Pipe diameter (in)", "Pipe length (ft)"))
            .add(world.records(LOWMARROW, Table.INSTALLS, early("installed_on"))),
        workbook("Materials", Table.MATERIALS, MATERIALS)
            .add(world.records(LOWMARROW, Table.MATERIALS, earlyMaterials(world))),
        workbook("Revisits", Table.REVISITS, revisitColumns("Wetland acres"))
            .add(world.records(LOWMARROW, Table.REVISITS, early("visited_on"))),
        workbook(
                "Areas",
                Table.AREAS,
                Column.list(
                    "site_id=Site",
                    "pond_id=Pond",
                    "measured_on=Measured on",
                    "acres=Acres",
                    "method=Method"))
            .add(world.records(LOWMARROW, Table.AREAS)),
        csv(
                "installs-2023-2025.csv",
                Table.INSTALLS,
                installColumns("Pipe diameter (cm)|cm", "Pipe length (m)|m"))
            .add(world.records(LOWMARROW, Table.INSTALLS, early("installed_on").negate())),
        csv("materials-2023-2025.csv", Table.MATERIALS, MATERIALS)
            .add(world.records(LOWMARROW, Table.MATERIALS, earlyMaterials(world).negate())),
        csv("revisits-2023-2025.csv", Table.REVISITS, revisitColumns("Wetland (ha)|ha"))
            .add(world.records(LOWMARROW, Table.REVISITS, early("visited_on").negate())),
        properties(world),
        csv(
                "removals.csv",
                Table.REMOVALS,
                Column.list(
                    "site_id=Site",
                    "year=Year",
                    "removals=Removals",
                    "avoided=Avoided",
                    "evidence=Evidence"))
            .add(world.records(LOWMARROW, Table.REMOVALS)),
        csv(
                "requests.csv",
                Table.REQUESTS,
                Column.list("site_id=Site", "asked_on=Asked on", "outcome=Outcome"))
            .add(world.records(LOWMARROW, Table.REQUESTS)),
        csv(
                "expenses.csv",
                Table.EXPENSES,
                Column.list("date=Date", "kind=Kind", "usd=USD", "miles=Miles", "paid_by=Paid by"))
            .add(OfficeRows.expenses(LOWMARROW)));
  }

  private static Predicate<Row> early(String field) {
    return World.years(field, 2017, LAST_WORKBOOK_YEAR);
  }

  private static Predicate<Row> earlyMaterials(World world) {
    Map<String, LocalDate> installed = world.installDates();
    return World.years("purchased_on", 2017, LAST_WORKBOOK_YEAR, installed);
  }

  private static List<Column> installColumns(String diameter, String length) {
    return Column.list(
        "device_id=Device id",
        "site_id=Site",
        "installed_on=Installed on",
        "device_kind=Device kind",
        "pipe_wall=Pipe wall",
        "pipe_diameter_in=" + diameter,
        "pipe_length_ft=" + length,
        "fence_diameter_ft=Fence diameter (ft)",
        "fence_wire_gauge=Fence wire gauge",
        "fence_form=Fence form",
        "top_slits=Top slits",
        "bottom_slits=Bottom slits",
        "weights=Weights",
        "inlet_tied=Inlet tied",
        "outlet_highest=Outlet highest",
        "pipe_covered=Pipe covered",
        "crew=Crew",
        "funder=Funder",
        "labor_hours=Labor hours",
        "install_cost_usd=Install cost USD",
        "tracked_from=Tracked from",
        "retired_on=Retired on",
        "retired_reason=Retired reason");
  }

  private static List<Column> revisitColumns(String wetland) {
    return Column.list(
        "device_id=Device id",
        "visited_on=Visited on",
        "condition=Condition",
        "cause=Cause",
        "action=Action",
        "reason=Reason",
        "hours=Hours",
        "cost_usd=Cost USD",
        "paid_by=Paid by",
        "wetland_acres=" + wetland,
        "beaver_present=Beaver present",
        "notes=Notes");
  }

  private static Sheet sites(World world) {
    return workbook(
            "Sites",
            Table.SITES,
            Column.list(
                "site_id=Site",
                "watershed=Hydrologic unit",
                "setting=Setting",
                "latitude=Latitude",
                "longitude=Longitude",
                "landowner=Landowner",
                "pond_id=Pond",
                "removals_per_year_before=Removals per year before",
                "damage_cost_per_year_before_usd=Damage cost per year before USD",
                "damage_cost_year=Damage cost year",
                "wetland_acres_before=Wetland acres before",
                "area_method=Area method",
                "county=County",
                "town=Town",
                "road_id=Road",
                "permit_until=Permit until",
                "agreed_level_until=Agreed level until"))
        .add(world.records(LOWMARROW, Table.SITES));
  }

  private static Sheet properties(World world) {
    return csv(
            "properties.csv",
            Table.PROPERTIES,
            Column.list(
                "property_id=Property",
                "site_id=Site",
                "property_type=Property type",
                "protected_from=Protected from",
                "protected_until=Protected until",
                "damage_per_year_usd=Damage per year USD",
                "damage_year=Damage year",
                "owner=Owner"))
        .add(world.records(LOWMARROW, Table.PROPERTIES));
  }

  private static Sheet workbook(String name, Table table, List<Column> columns) {
    return new Sheet(LOWMARROW, "lowmarrow-to-2022.xlsx", name, table, columns);
  }

  private static Sheet csv(String fileName, Table table, List<Column> columns) {
    return new Sheet(LOWMARROW, fileName, "", table, columns);
  }
}
