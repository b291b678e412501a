package pondtally.reports.app;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.TreeMap;
import pondtally.app.JobResult;
import pondtally.app.Version;
import pondtally.check.RowAccount;
import pondtally.intake.InputFile;
import pondtally.reports.table.TablePackage;
import pondtally.table.ResultPackage;

/** {@code run.json}: inputs with SHA-256, settings, version, seed, counts and durations. */
final class RunRecord {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private RunRecord() {}

  static void write(Path file, JobResult result, RunClock clock) throws IOException {
    ObjectNode root = start(result.facts());
    ArrayNode inputs = root.putArray("inputs");
    for (InputFile input : result.files()) {
      ObjectNode node = inputs.addObject();
      node.put("file", input.path());
      node.put("sha256", ResultPackage.sha256(Path.of(input.location())));
      node.put("bytes", Files.size(Path.of(input.location())));
    }
    root.put("program_yaml", result.settings());
    ArrayNode rows = root.putArray("rows");
    for (RowAccount account : result.account()) {
      ObjectNode node = rows.addObject();
      node.put("file", account.file());
      node.put("sheet", account.sheet());
      node.put("table", account.table());
      node.put("read", account.counts().read());
      node.put("used", account.counts().used());
      node.put("changed", account.counts().changed());
      node.put("set_aside", account.counts().setAside());
      node.put("duplicate", account.counts().duplicate());
    }
    finish(file, root, clock);
  }

  static void write(Path file, TablePackage tables, RunClock clock) throws IOException {
    finish(file, start(tables.facts()), clock);
  }

  private static ObjectNode start(Map<String, String> facts) {
    ObjectNode root = JSON.createObjectNode();
    root.put("program", "pondtally");
    root.put("version", Version.text());
    root.put("java", System.getProperty("java.version"));
    root.put("finished", Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    ObjectNode settings = root.putObject("settings");
    new TreeMap<>(facts).forEach(settings::put);
    return root;
  }

  private static void finish(Path file, ObjectNode root, RunClock clock) throws IOException {
    ObjectNode durations = root.putObject("milliseconds");
    clock.millis().forEach(durations::put);
    Files.writeString(file, JSON.writeValueAsString(root) + "\n");
  }
}
