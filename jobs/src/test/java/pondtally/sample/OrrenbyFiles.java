package pondtally.sample;

import static pondtally.sample.Partner.ORRENBY;

import java.util.List;

/**
 * Orrenby road office: CSV files, one a table, revisits in two; inches and feet; dates of requests
 * as 4/17/2021.
 */
final class OrrenbyFiles {
  private static final List<Column> REVISITS =
      Column.list(
          "device_id=Device ID",
          "visited_on=Date visited",
          "condition=Condition",
          "cause=Cause",
          "action=Action",
          "reason=Reason",
          "hours=Hours",
          "cost_usd=Cost ($)",
          "paid_by=Paid by",
          "beaver_present=Beaver present",
          "notes=Notes");
  private static final List<Column> MATERIALS =
      Column.list(
          "device_id=Device ID",
          "item=Item",
          "quantity=Quantity",
          "unit=Unit",
          "unit_cost_usd=Unit cost ($)",
          "purchased_on=Purchased on",
          "paid_by=Paid by");

  private OrrenbyFiles() {}

  static List<Sheet> of(World world) {
    return List.of(
        sites(world),
        installs(world),
        csv("materials.csv", Table.MATERIALS, MATERIALS)
            .add(world.records(ORRENBY, Table.MATERIALS)),
        csv("revisits-2017-2020.csv", Table.REVISITS, REVISITS)
            .add(world.records(ORRENBY, Table.REVISITS, World.years("visited_on", 2017, 2020))),
        csv("revisits-2021-2025.csv", Table.REVISITS, REVISITS)
            .add(world.records(ORRENBY, Table.REVISITS, World.years("visited_on", 2021, 2025))),
        csv(
                "removals.csv",
                Table.REMOVALS,
                Column.list(
                    "site_id=Site ID",
                    "year=Year",
                    "removals=Removals",
                    "avoided=Avoided",
                    "evidence=Evidence"))
            .add(world.records(ORRENBY, Table.REMOVALS)),
        properties(world),
        csv(
                "areas.csv",
                Table.AREAS,
                Column.list(
                    "site_id=Site ID",
                    "pond_id=Pond ID",
                    "measured_on=Measured on",
                    "acres=Acres",
                    "method=Method"))
            .add(world.records(ORRENBY, Table.AREAS)),
        csv(
                "requests.csv",
                Table.REQUESTS,
                Column.list("site_id=Site ID", "asked_on=Asked on", "outcome=Outcome"))
            .add(world.records(ORRENBY, Table.REQUESTS)),
        csv(
                "expenses.csv",
                Table.EXPENSES,
                Column.list(
                    "date=Date", "kind=Kind", "usd=Amount ($)", "miles=Miles", "paid_by=Paid by"))
            .add(OfficeRows.expenses(ORRENBY)),
        csv(
                "budgets.csv",
                Table.BUDGETS,
                Column.list(
                    "funder=Funder",
                    "period_start=Period start",
                    "period_end=Period end",
                    "award_usd=Award ($)",
                    "match_required_usd=Match required ($)"))
            .add(OfficeRows.levies()));
  }

  private static Sheet sites(World world) {
    return csv(
            "sites.csv",
            Table.SITES,
            Column.list(
                "site_id=Site ID",
                "watershed=HUC",
                "setting=Setting",
                "latitude=Lat",
                "longitude=Long",
                "landowner=Landowner",
                "pond_id=Pond ID",
                "removals_per_year_before=Removals per year before",
                "damage_cost_per_year_before_usd=Damage cost per year before ($)",
                "damage_cost_year=Damage cost year",
                "wetland_acres_before=Wetland acres before",
                "area_method=Area method",
                "flooded_acres_before=Flooded acres before",
                "county=County",
                "town=Town",
                "road_id=Road no.",
                "permit_until=Permit expires",
                "agreed_level_until=Agreed level until"))
        .add(world.records(ORRENBY, Table.SITES));
  }

  private static Sheet installs(World world) {
    return csv(
            "installs.csv",
            Table.INSTALLS,
            Column.list(
                "device_id=Device ID",
                "site_id=Site ID",
                "installed_on=Date installed",
                "device_kind=Device type",
                "pipe_wall=Pipe wall",
                "pipe_diameter_in=Pipe diameter (in)",
                "pipe_length_ft=Pipe length (ft)",
                "section_length_ft=Section length (ft)",
                "fence_diameter_ft=Fence diameter (ft)",
                "fence_wire_gauge=Wire gauge",
                "fence_form=Fence form",
                "fence_mesh_in=Mesh (in)",
                "top_slits=Top slits",
                "bottom_slits=Bottom slits",
                "gas_holes=Gas holes",
                "weights=Weights",
                "inlet_tied=Inlet tied",
                "outlet_highest=Outlet highest",
                "pipe_covered=Pipe covered",
                "crew=Crew",
                "funder=Funder",
                "labor_hours=Labor hours",
                "retired_on=Retired on",
                "retired_reason=Retired reason"))
        .add(world.records(ORRENBY, Table.INSTALLS));
  }

  private static Sheet properties(World world) {
    return csv(
            "properties.csv",
            Table.PROPERTIES,
            Column.list(
                "property_id=Property ID",
                "site_id=Site ID",
                "property_type=Property type",
                "protected_from=Protected from",
                "protected_until=Protected until",
                "damage_per_year_usd=Damage per year ($)",
                "damage_year=Damage year",
                "owner=Owner"))
        .add(world.records(ORRENBY, Table.PROPERTIES));
  }

  private static Sheet csv(String fileName, Table table, List<Column> columns) {
    return new Sheet(ORRENBY, fileName, "", table, columns);
  }
}
