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
import pondtally.intake.PartnerFileReader;
import pondtally.intake.ProgramFiles;
import pondtally.reports.table.TablePackage;
import pondtally.table.Sha256;

/** {@code run.json}: inputs with SHA-256, settings, version, seed, counts and durations. */
final class RunRecord {

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

  private RunRecord() {}

  /**
   * @param missing letters of names that no font of this machine has
   */
  static void write(Path file, JobResult result, RunClock clock, String missing)
      throws IOException {
    ObjectNode root = start(result.facts());
    ArrayNode inputs = root.putArray("inputs");
    ProgramFiles program = result.program();
    for (InputFile input : program.files()) {
      if (input.isOpened()) {
        addInput(inputs, input.path(), Path.of(input.location()));
      }
    }
    for (String statement : program.statements()) {
      addInput(inputs, statement, program.folder().resolve(statement));
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
    finish(file, root, clock, missing);
  }

  static void write(Path file, TablePackage tables, RunClock clock, String missing)
      throws IOException {
    finish(file, start(tables.facts()), clock, missing);
  }

  private static void addInput(ArrayNode inputs, String name, Path file) {
    ObjectNode node = inputs.addObject();
    node.put("file", name);
    try {
      node.put("sha256", Sha256.of(file));
      node.put("bytes", Files.size(file));
    } catch (IOException e) {
      // What was read is in the tables; a file that cannot be read has its line in the issues.
      node.putNull("sha256");
      node.put("unreadable", PartnerFileReader.reason(e));
    }
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

  private static void finish(Path file, ObjectNode root, RunClock clock, String missing)
      throws IOException {
    if (!missing.isEmpty()) {
      root.put("letters_without_font", missing);
    }
    ObjectNode durations = root.putObject("milliseconds");
    clock.millis().forEach(durations::put);
    Files.writeString(file, JSON.writeValueAsString(root) + "\n");
  }
}
