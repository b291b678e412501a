package pondtally.sample;

import static pondtally.sample.Partner.TESSARBY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Tessarby valley: a workbook a year with a sheet a table, metric headings, and a register of
 * everything else.
 */
final class TessarbyFiles {
  private static final String REGISTER = "tessarby-register.xlsx";
  private static final List<Column> INSTALLS =
      Column.list(
          "device_id=Device",
          "site_id=Site",
          "installed_on=Installed",
          "device_kind=Kind",
          "pipe_wall=Wall",
          "pipe_diameter_in=Pipe dia (mm)|mm",
          "pipe_length_ft=Pipe length (m)|m",
          "section_length_ft=Section length (m)|m",
          "fence_diameter_ft=Fence diameter (m)|m",
          "fence_wire_gauge=Wire gauge",
          "fence_form=Fence form",
          "fence_mesh_in=Mesh (mm)|mm",
          "top_slits=Top slits",
          "bottom_slits=Bottom slits",
          "gas_holes=Gas holes",
          "weights=Weights",
          "inlet_tied=Inlet tied",
          "outlet_highest=Outlet highest",
          "pipe_covered=Pipe covered",
          "crew=Crew",
          "funder=Funder",
          "labor_hours=Crew hours",
          "retired_on=Retired",
          "retired_reason=Reason retired");
  private static final List<Column> MATERIALS =
      Column.list(
          "device_id=Device",
          "item=Item",
          "quantity=Quantity",
          "unit=Unit",
          "total_cost_usd=Total cost (USD)",
          "purchased_on=Purchased",
          "paid_by=Paid by");
  private static final List<Column> REVISITS =
      Column.list(
          "device_id=Device",
          "visited_on=Visit date",
          "condition=Condition found",
          "cause=Cause",
          "action=Action taken",
          "reason=Reason",
          "hours=Crew hours",
          "cost_usd=Cost (USD)",
          "paid_by=Paid by",
          "wetland_acres=Wetland area (ha)|ha",
          "beaver_present=Beaver present",
          "notes=Notes");
  private static final List<Column> PROPERTIES =
      Column.list(
          "property_id=Property",
          "site_id=Site",
          "property_type=Type",
          "protected_from=Protected from",
          "protected_until=Protected until",
          "damage_per_year_usd=Yearly damage (USD)",
          "damage_year=Price year",
          "owner=Owner");

  private TessarbyFiles() {}

  static List<Sheet> of(World world) {
    List<Sheet> sheets = new ArrayList<>();
    Map<String, LocalDate> installed = world.installDates();
    for (int year = 2017; year <= 2025; year++) {
      String file = "tessarby-" + year + ".xlsx";
      sheets.add(
          sheet(file, "Installs " + year, Table.INSTALLS, INSTALLS)
              .add(
                  world.records(
                      TESSARBY, Table.INSTALLS, World.years("installed_on", year, year))));
      sheets.add(
          sheet(file, "Materials " + year, Table.MATERIALS, MATERIALS)
              .add(
                  world.records(
                      TESSARBY,
                      Table.MATERIALS,
                      World.years("purchased_on", year, year, installed))));
      sheets.add(
          sheet(file, "Revisits " + year, Table.REVISITS, REVISITS)
              .add(world.records(TESSARBY, Table.REVISITS, World.years("visited_on", year, year))));
    }
    sheets.addAll(register(world));
    return sheets;
  }

  private static List<Sheet> register(World world) {
    return List.of(
        sites(world),
        register("Properties", Table.PROPERTIES, PROPERTIES)
            .add(world.records(TESSARBY, Table.PROPERTIES)),
        register(
                "Removals",
                Table.REMOVALS,
                Column.list(
                    "site_id=Site",
                    "year=Year",
                    "removals=Beavers removed",
                    "avoided=Removals avoided",
                    "evidence=Evidence"))
            .add(world.records(TESSARBY, Table.REMOVALS)),
        register(
                "Areas",
                Table.AREAS,
                Column.list(
                    "site_id=Site",
                    "pond_id=Pond",
                    "measured_on=Measured on",
                    "acres=Area (ha)|ha",
                    "method=Method"))
            .add(world.records(TESSARBY, Table.AREAS)),
        register(
                "Requests",
                Table.REQUESTS,
                Column.list("site_id=Site", "asked_on=Asked on", "outcome=Outcome"))
            .add(world.records(TESSARBY, Table.REQUESTS)),
        register(
                "Budgets",
                Table.BUDGETS,
                Column.list(
                    "funder=Funder",
                    "period_start=From",
                    "period_end=To",
                    "award_usd=Award (USD)",
                    "match_required_usd=Match required (USD)"))
            .add(OfficeRows.awards()),
        register(
                "Expenses",
                Table.EXPENSES,
                Column.list(
                    "date=Date", "kind=Kind", "usd=Amount (USD)", "miles=Miles", "paid_by=Paid by"))
            .add(OfficeRows.expenses(TESSARBY)));
  }

  private static Sheet sites(World world) {
    return register(
            "Sites",
            Table.SITES,
            Column.list(
                "site_id=Site",
                "watershed=HUC 12",
                "setting=Setting",
                "latitude=Latitude",
                "longitude=Longitude",
                "landowner=Landowner",
                "pond_id=Pond",
                "removals_per_year_before=Removals per year before",
                "damage_cost_per_year_before_usd=Yearly damage before (USD)",
                "damage_cost_year=Price year",
                "wetland_acres_before=Wetland before (ha)|ha",
                "area_method=Area method",
                "flooded_acres_before=Flooded before (ha)|ha",
                "county=County",
                "town=Town",
                "road_id=Road",
                "permit_until=Permit until",
                "agreed_level_until=Agreed level until"))
        .add(world.records(TESSARBY, Table.SITES));
  }

  private static Sheet register(String name, Table table, List<Column> columns) {
    return sheet(REGISTER, name, table, columns);
  }

  private static Sheet sheet(String file, String name, Table table, List<Column> columns) {
    return new Sheet(TESSARBY, file, name, table, columns);
  }
}
