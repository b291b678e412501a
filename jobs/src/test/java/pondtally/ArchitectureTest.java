package pondtally;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Data flows one way, and Spark stays in the wiring. */
class ArchitectureTest {

  private static final List<String> LAYERS =
      List.of(
          "schema",
          "record",
          "pack",
          "work",
          "intake",
          "check",
          "history",
          "stats",
          "analysis",
          "table",
          "stage",
          "app");

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("pondtally");

  private static ArchRule oneWay(String root) {
    var layers = layeredArchitecture().consideringOnlyDependenciesInLayers();
    for (String layer : LAYERS) {
      layers = layers.layer(layer).definedBy(root + "." + layer + "..");
    }
    return layers
        .whereLayer("record")
        .mayNotAccessAnyLayer()
        .whereLayer("pack")
        .mayNotAccessAnyLayer()
        .whereLayer("work")
        .mayNotAccessAnyLayer()
        .whereLayer("stats")
        .mayNotAccessAnyLayer()
        .whereLayer("schema")
        .mayNotAccessAnyLayer()
        .whereLayer("check")
        .mayOnlyAccessLayers("record")
        .whereLayer("intake")
        .mayOnlyAccessLayers("schema", "record", "check")
        .whereLayer("history")
        .mayOnlyAccessLayers("record")
        .whereLayer("analysis")
        .mayOnlyAccessLayers("record", "pack", "history", "stats")
        .whereLayer("table")
        .mayOnlyAccessLayers("work")
        .whereLayer("stage")
        .mayOnlyBeAccessedByLayers("app")
        .whereLayer("app")
        .mayNotBeAccessedByAnyLayer();
  }

  private static ArchRule sparkStaysInTheWiring(String root) {
    return noClasses()
        .that()
        .resideInAPackage(root + "..")
        .and()
        .resideOutsideOfPackages(root + ".app..", root + ".stage..")
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("org.apache.spark..", "scala..");
  }

  @Test
  void dataFlowsOneWay() {
    oneWay("pondtally").check(CLASSES);
  }

  @Test
  void sparkIsKnownInStageAndAppAlone() {
    sparkStaysInTheWiring("pondtally").check(CLASSES);
  }

  @Test
  void everyLayerHoldsAClass() {
    for (String layer : LAYERS) {
      assertTrue(
          CLASSES.stream().anyMatch(c -> c.getPackageName().equals("pondtally." + layer)),
          layer + " holds no class");
    }
  }

  /** The rules are shown failing on a small tree that breaks each of them. */
  @Test
  void plantedViolationsAreFound() {
    JavaClasses planted = new ClassFileImporter().importPackages("planted");
    assertFalse(
        oneWay("planted").allowEmptyShould(true).evaluate(planted).getFailureReport().isEmpty(),
        "a record that knows an analysis was not found");
    assertFalse(
        sparkStaysInTheWiring("planted").evaluate(planted).getFailureReport().isEmpty(),
        "Spark in stats was not found");
  }
}
