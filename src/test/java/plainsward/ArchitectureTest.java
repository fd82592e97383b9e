package plainsward;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.net.URL;

/** The rooms depend only downward, and each library is known to its own room alone. */
@AnalyzeClasses(packages = "plainsward", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule unitsKnowNothingButJava =
      noClasses()
          .that()
          .resideInAPackage("plainsward.units..")
          .should()
          .dependOnClassesThat()
          .resideOutsideOfPackages("java..", "plainsward.units..");

  @ArchTest
  static final ArchRule dosingKnowsNothingButUnits =
      noClasses()
          .that()
          .resideInAPackage("plainsward.dosing..")
          .should()
          .dependOnClassesThat()
          .resideOutsideOfPackages("java..", "plainsward.units..", "plainsward.dosing..");

  @ArchTest
  static final ArchRule roomsDependOnlyDownward =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("plainsward..")
          .layer("units")
          .definedBy("plainsward.units..")
          .layer("dosing")
          .definedBy("plainsward.dosing..")
          .layer("trade")
          .definedBy("plainsward.trade..")
          .layer("reply")
          .definedBy("plainsward.reply..")
          .layer("handbook")
          .definedBy("plainsward.handbook..")
          .layer("records")
          .definedBy("plainsward.records..")
          .layer("reading")
          .definedBy("plainsward.reading..")
          .layer("safety")
          .definedBy("plainsward.safety..")
          .layer("topics")
          .definedBy("plainsward.topics..")
          .layer("talk")
          .definedBy("plainsward.talk..")
          .layer("terminal")
          .definedBy("plainsward.terminal..")
          .layer("packing")
          .definedBy("plainsward.packing..")
          .whereLayer("packing")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("terminal")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("talk")
          .mayOnlyBeAccessedByLayers("terminal")
          .whereLayer("topics")
          .mayOnlyBeAccessedByLayers("talk", "terminal")
          .whereLayer("safety")
          .mayOnlyBeAccessedByLayers("topics", "talk", "terminal")
          .whereLayer("reading")
          .mayOnlyBeAccessedByLayers("safety", "topics", "talk", "terminal", "packing")
          .whereLayer("records")
          .mayOnlyBeAccessedByLayers("topics", "talk", "terminal")
          .whereLayer("handbook")
          .mayOnlyBeAccessedByLayers("topics", "talk", "terminal", "packing")
          .whereLayer("dosing")
          .mayOnlyBeAccessedByLayers("topics", "talk", "terminal")
          .whereLayer("trade")
          .mayOnlyBeAccessedByLayers(
              "handbook", "records", "reading", "safety", "topics", "talk", "terminal", "packing")
          .whereLayer("reply")
          .mayOnlyBeAccessedByLayers("safety", "topics", "talk", "terminal");

  @ArchTest
  static final ArchRule onlyTheHandbookKnowsLucene = only("org.apache.lucene..", "handbook");

  @ArchTest static final ArchRule onlyTheBuildStepsKnowAsm = only("org.objectweb.asm..", "packing");

  @ArchTest static final ArchRule onlyTheTerminalKnowsJline = only("org.jline..", "terminal");

  @ArchTest static final ArchRule onlyTheTerminalKnowsPicocli = only("picocli..", "terminal");

  @ArchTest
  static final ArchRule onlyTheRoomsWithFilesKnowJackson =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "plainsward.records..",
              "plainsward.trade..",
              "plainsward.terminal..",
              "plainsward.handbook..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.fasterxml.jackson..");

  @ArchTest
  static final ArchRule nothingOpensASocket =
      noClasses()
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.net\\.(.*Socket.*|.*URLConnection|InetAddress)"
                  + "|java\\.net\\.http\\..*"
                  + "|javax\\.net\\..*"
                  + "|java\\.nio\\.channels\\..*Socket.*");

  @ArchTest
  static final ArchRule nothingReadsFromAnAddress =
      noClasses()
          .should()
          .callMethod(URL.class, "openStream")
          .orShould()
          .callMethod(URL.class, "openConnection")
          .orShould()
          .callMethod(URL.class, "getContent");

  @ArchTest
  static final ArchRule onlyTheTerminalSpeaksToTheScreen =
      noClasses()
          .that()
          .resideOutsideOfPackage("plainsward.terminal..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err");

  private static ArchRule only(String library, String room) {
    return noClasses()
        .that()
        .resideOutsideOfPackage("plainsward." + room + "..")
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library);
  }
}
