package pondtally.sample;

import static pondtally.sample.Partner.QUARRINDALE;

import java.util.List;

/**
 * Quarrindale volunteers: CSV files with our own field names; unpaid hours and given material,
 * claimed as match.
 */
final class QuarrindaleFiles {

  private QuarrindaleFiles() {}

  static List<Sheet> of(World world) {
    return List.of(
        csv(
                "sites.csv",
                Table.SITES,
                "site_id,watershed,setting,latitude,longitude,landowner,pond_id,removals_per_year_before,"
                    + "damage_cost_per_year_before_usd,damage_cost_year,wetland_acres_before,area_method,county,town,"
                    + "road_id,agreed_level_until,permit_until")
            .add(world.records(QUARRINDALE, Table.SITES)),
        csv(
                "installs.csv",
                Table.INSTALLS,
                "device_id,site_id,installed_on,device_kind,pipe_wall,pipe_diameter_in,pipe_length_ft,"
                    + "section_length_ft,fence_diameter_ft,fence_wire_gauge,fence_form,top_slits,bottom_slits,gas_holes,"
                    + "weights,inlet_tied,outlet_highest,pipe_covered,crew,funder,labor_hours,volunteer_hours,match_for,"
                    + "retired_on,retired_reason")
            .add(world.records(QUARRINDALE, Table.INSTALLS)),
        csv(
                "materials.csv",
                Table.MATERIALS,
                "device_id,item,quantity,unit,unit_cost_usd,purchased_on,paid_by,match_for")
            .add(world.records(QUARRINDALE, Table.MATERIALS)),
        csv(
                "revisits.csv",
                Table.REVISITS,
                "device_id,visited_on,condition,cause,action,reason,volunteer_hours,match_for,cost_usd,paid_by,"
                    + "beaver_present,notes")
            .add(world.records(QUARRINDALE, Table.REVISITS)),
        csv(
                "properties.csv",
                Table.PROPERTIES,
                "property_id,site_id,property_type,protected_from,protected_until,damage_per_year_usd,damage_year,owner")
            .add(world.records(QUARRINDALE, Table.PROPERTIES)),
        // Known for an areas table by its headings alone.
        csv("pond-walks.csv", Table.AREAS, "site_id,pond_id,measured_on,acres,method")
            .add(world.records(QUARRINDALE, Table.AREAS)),
        csv("requests.csv", Table.REQUESTS, "site_id,asked_on,outcome")
            .add(world.records(QUARRINDALE, Table.REQUESTS)),
        csv("expenses.csv", Table.EXPENSES, "date,kind,usd,miles,paid_by,match_for")
            .add(OfficeRows.expenses(QUARRINDALE)));
  }

  private static Sheet csv(String fileName, Table table, String fields) {
    return new Sheet(QUARRINDALE, fileName, "", table, Column.list(fields.split(",")));
  }
}
