package pondtally.reports.edition;

import java.util.List;
import pondtally.reports.table.Field;

/** A table of the public edition: its fields, key columns, and rows of cells. */
record PublicTable(
    String name, String title, List<Field> fields, List<String> key, List<List<String>> rows) {}
