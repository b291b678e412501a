package pondtally.stage;

import java.nio.file.Path;
import java.util.Optional;
import pondtally.analysis.Scope;
import pondtally.analysis.WetlandWorth;

/**
 * What a run adds or leaves out only where it is asked for.
 *
 * @param longTables folder to write tables into that are too long for memory
 * @param wetlandWorth range of the yearly value of an acre
 * @param scope what the report is about
 */
public record OnRequest(
    Optional<Path> longTables, Optional<WetlandWorth> wetlandWorth, Scope scope) {}
