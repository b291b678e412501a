package pondtally.stage;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import pondtally.analysis.DeviceRow;
import pondtally.analysis.FittedModels;
import pondtally.analysis.ProgramTally;
import pondtally.analysis.SecondPass;
import pondtally.analysis.SiteRow;
import pondtally.analysis.WorklistDevice;
import pondtally.check.Finding;
import pondtally.check.Verdict;

/**
 * What the clusters of one part of the data add up to, with the rows that are listed one by one.
 */
final class ClusterOutcome implements Serializable {

  private static final long serialVersionUID = 1;

  private final ProgramTally tally;
  private final Scoping scoping;
  private final List<DeviceRow> devices = new ArrayList<>();
  private final List<SiteRow> sites = new ArrayList<>();
  private final List<WorklistDevice> worklist = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Verdict> verdicts = new ArrayList<>();
  private transient FittedModels models;
  private SecondPass second;

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

  List<WorklistDevice> worklist() {
    return worklist;
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

  ClusterOutcome with(FittedModels fitted, SecondPass weighed) {
    models = fitted;
    second = weighed;
    return this;
  }

  ClusterOutcome merge(ClusterOutcome other) {
    tally.merge(other.tally);
    scoping.merge(other.scoping);
    devices.addAll(other.devices);
    sites.addAll(other.sites);
    worklist.addAll(other.worklist);
    findings.addAll(other.findings);
    verdicts.addAll(other.verdicts);
    return this;
  }
}
