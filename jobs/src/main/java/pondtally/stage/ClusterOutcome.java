package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.ContinuedRemovals;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.FittedModels;
import pondtally.analysis.Lapses;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.SecondPass;
import pondtally.analysis.SiteRow;
import pondtally.analysis.WorklistDevice;
import pondtally.check.Finding;
import pondtally.check.InstallPlace;
import pondtally.check.Verdict;

/**
 * What the clusters of one part of the data add up to, with the rows that are listed one by one.
 */
final class ClusterOutcome implements Serializable {

  private static final long serialVersionUID = 1;

  private final ProgramTally tally;
  private final Scoping scoping;
  private final PackedRows<DeviceRow> devices = new PackedRows<>(DeviceRow.class);
  private final PackedRows<SiteRow> sites = new PackedRows<>(SiteRow.class);
  private final PackedRows<WorklistDevice> worklist = new PackedRows<>(WorklistDevice.class);
  private final PackedRows<InstallPlace> places = new PackedRows<>(InstallPlace.class);
  private final PackedRows<Lapses.Row> lapses = new PackedRows<>(Lapses.Row.class);
  private final PackedRows<ContinuedRemovals.Row> continued =
      new PackedRows<>(ContinuedRemovals.Row.class);
  private final List<Finding> findings = new ArrayList<>();
  private final List<Verdict> verdicts = new ArrayList<>();
  private transient FittedModels models;
  private SecondPass second;
  private transient List<String> runs;

  ClusterOutcome(ProgramTally tally, Scoping scoping) {
    this.tally = tally;
    this.scoping = scoping;
  }

  /** What the scope of the report narrowed, and what it did not. */
  Scoping scoping() {
    return scoping;
  }

  ProgramTally tally() {
    return tally;
  }

  List<DeviceRow> devices() {
    return devices;
  }

  List<SiteRow> sites() {
    return sites;
  }

  List<InstallPlace> places() {
    return places;
  }

  List<WorklistDevice> worklist() {
    return worklist;
  }

  List<ContinuedRemovals.Row> continued() {
    return continued;
  }

  List<Lapses.Row> lapses() {
    return lapses;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Verdict> verdicts() {
    return verdicts;
  }

  /** What weighing each cluster against the totals gave; known after the second pass. */
  SecondPass second() {
    return second;
  }

  /** What was fitted between the passes. */
  FittedModels models() {
    return models;
  }

  /** Names of the runs of contributions that the tasks wrote. */
  List<String> runs() {
    return runs;
  }

  ClusterOutcome with(FittedModels fitted, SecondPass weighed, List<String> written) {
    models = fitted;
    second = weighed;
    runs = written;
    List.of(devices, sites, worklist, places, lapses, continued).forEach(PackedRows::close);
    return this;
  }

  ClusterOutcome merge(ClusterOutcome other) {
    tally.merge(other.tally);
    scoping.merge(other.scoping);
    devices.merge(other.devices);
    sites.merge(other.sites);
    worklist.merge(other.worklist);
    places.merge(other.places);
    lapses.merge(other.lapses);
    continued.merge(other.continued);
    findings.addAll(other.findings);
    verdicts.addAll(other.verdicts);
    return this;
  }
}
