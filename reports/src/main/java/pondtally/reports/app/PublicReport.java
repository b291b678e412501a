package pondtally.reports.app;

import java.io.IOException;
import java.nio.file.Path;
import pondtally.app.JobResult;
import pondtally.app.Scratch;
import pondtally.check.UserError;
import pondtally.reports.edition.EditionKey;
import pondtally.reports.edition.PublicEdition;
import pondtally.reports.edition.TooFewSites;
import pondtally.reports.table.TablePackage;
import pondtally.table.ResultPackage;

/**
 * The public edition of a run. The full tables never lie in or beside the output, not even while it
 * is written: they go through a private temporary folder.
 */
final class PublicReport {

  private PublicReport() {}

  /** The key in the file that was named, or one for this run alone. */
  static EditionKey key(Path file, Path out) {
    if (file == null) {
      return EditionKey.fresh();
    }
    if (RealPlace.of(file).startsWith(RealPlace.of(out))) {
      throw UserError.usage(
          "--key %s lies inside the output. Whoever has the key can undo the replaced names: keep it elsewhere."
              .formatted(file));
    }
    try {
      return EditionKey.of(file);
    } catch (IllegalArgumentException e) {
      throw UserError.usage("--key " + e.getMessage());
    } catch (IOException e) {
      throw Unwritable.error(file, e);
    }
  }

  /** What is said of the key at the end of a run. */
  static String keyNote(Path file) {
    return keyKept(file)
        + " Two editions side by side tell what was added or corrected between them: where that is about fewer sites than `groups_below`, hand out the new edition only in place of the old one, or wait for more.";
  }

  private static String keyKept(Path file) {
    return file == null
        ? "Public edition. Names of sites and devices were replaced with a key made for this run and kept nowhere: the next one will use other names. Add --key FILE to keep them the same."
        : "Public edition. Names of sites and devices were replaced with the key in %s. Keep that file, and keep it private: it gives the same names next year, and whoever has it can try names out.%s"
            .formatted(
                file,
                EditionKey.isOpenToOthers(file)
                    ? " Others on this machine may read or write it: take that from them, for example with chmod 600."
                    : "");
  }

  /** Writes the public tables into {@code target} and opens them. */
  static TablePackage write(Path target, JobResult result, EditionKey key) throws IOException {
    Path scratch = Scratch.make();
    try {
      ResultPackage.write(scratch, result.tables(), result.longTables(), result.facts());
      PublicEdition.write(TablePackage.open(scratch), key, target);
      return TablePackage.open(target);
    } catch (TooFewSites e) {
      throw UserError.input(e.getMessage());
    } finally {
      Folders.deleteQuietly(scratch);
    }
  }
}
