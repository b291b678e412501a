package pondtally.stage;

import java.io.Serializable;
import java.util.List;
import pondtally.check.SheetReport;
import pondtally.record.Sourced;

/** What one task read from one partner file. */
record FileContent(List<SheetReport> reports, List<Sourced> records) implements Serializable {}
