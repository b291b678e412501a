package pondtally.sample;

import static pondtally.sample.Partner.BRACKWEN;

import java.util.List;

/**
 * Brackwen farms: one workbook; a lump sum for each device instead of lines; little about how
 * devices were built.
 */
final class BrackwenFiles {

  private BrackwenFiles() {}

  static List<Sheet> of(World world) {
    return List.of(
        sites(world),
        sheet(
                "Installs",
                Table.INSTALLS,
                "device_id=Tag",
                "site_id=Site no.",
                "installed_on=Install date",
                "device_kind=Device kind",
                "pipe_wall=Pipe wall",
                "pipe_diameter_in=Pipe dia (in)",
                "pipe_length_ft=Pipe length (ft)",
                "fence_form=Fence form",
                "crew=Crew",
                "funder=Funded by",
                "install_cost_usd=Install cost ($)",
                "retired_on=Retired on",
                "retired_reason=Retired reason")
            .add(world.records(BRACKWEN, Table.INSTALLS)),
        sheet(
                "Revisits",
                Table.REVISITS,
                "device_id=Tag",
                "visited_on=Checked on",
                "condition=Condition",
                "cause=Cause",
                "action=Work done",
                "hours=Hours",
                "cost_usd=Cost ($)",
                "paid_by=Paid by",
                "notes=Remarks")
            .add(world.records(BRACKWEN, Table.REVISITS)),
        sheet(
                "Properties",
                Table.PROPERTIES,
                "property_id=Property no.",
                "site_id=Site no.",
                "property_type=Property type",
                "protected_from=Protected from",
                "protected_until=Protected until",
                "damage_per_year_usd=Damage per year ($)",
                "damage_year=Damage year",
                "owner=Owner")
            .add(world.records(BRACKWEN, Table.PROPERTIES)),
        sheet(
                "Removals",
                Table.REMOVALS,
                "site_id=Site no.",
                "year=Year",
                "removals=Removed",
                "avoided=Avoided",
                "evidence=Evidence")
            .add(world.records(BRACKWEN, Table.REMOVALS)),
        sheet(
                "Areas",
                Table.AREAS,
                "site_id=Site no.",
                "pond_id=Pond ID",
                "measured_on=Date measured",
                "acres=Acres",
                "method=Method")
            .add(world.records(BRACKWEN, Table.AREAS)),
        sheet(
                "Requests",
                Table.REQUESTS,
                "site_id=Site no.",
                "asked_on=Date asked",
                "outcome=Outcome")
            .add(world.records(BRACKWEN, Table.REQUESTS)),
        sheet(
                "Expenses",
                Table.EXPENSES,
                "date=Date",
                "kind=Kind",
                "usd=Amount ($)",
                "miles=Miles",
                "paid_by=Paid by")
            .add(OfficeRows.expenses(BRACKWEN)));
  }

  private static Sheet sites(World world) {
    return sheet(
            "Sites",
            Table.SITES,
            "site_id=Site no.",
            "watershed=Watershed",
            "setting=Setting",
            "latitude=Latitude",
            "longitude=Longitude",
            "landowner=Landowner",
            "pond_id=Pond ID",
            "removals_per_year_before=Removals per year before",
            "damage_cost_per_year_before_usd=Damage cost per year before ($)",
            "damage_cost_year=Damage cost year",
            "wetland_acres_before=Wetland acres before",
            "area_method=Area method",
            "county=County",
            "town=Town",
            "permit_until=Permit until")
        .add(world.records(BRACKWEN, Table.SITES));
  }

  private static Sheet sheet(String name, Table table, String... columns) {
    return new Sheet(BRACKWEN, "brackwen-records.xlsx", name, table, Column.list(columns));
  }
}
