package pondtally.reports;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/** Reports are made from tables: only the command knows the jobs, and nothing here knows Spark. */
class ArchitectureTest {

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("pondtally.reports");

  private static ArchRule readsTablesOnly(String commandPackage) {
    return noClasses()
        .that()
        .resideOutsideOfPackage(commandPackage)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.apache.spark..",
            "pondtally.schema..",
            "pondtally.record..",
            "pondtally.intake..",
            "pondtally.check..",
            "pondtally.history..",
            "pondtally.stats..",
            "pondtally.analysis..",
            "pondtally.table..",
            "pondtally.stage..",
            "pondtally.app..");
  }

  @Test
  void onlyTheCommandKnowsTheJobs() {
    readsTablesOnly("pondtally.reports.app..").check(CLASSES);
  }

  @Test
  void nothingKnowsSpark() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.spark..")
        .check(CLASSES);
  }

  /** The rule is shown failing when the command itself is not excepted. */
  @Test
  void theRuleCanFail() {
    assertFalse(
        readsTablesOnly("pondtally.reports.elsewhere..")
            .evaluate(CLASSES)
            .getFailureReport()
            .isEmpty());
  }
}
