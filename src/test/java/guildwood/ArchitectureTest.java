package guildwood;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The direction of dependencies: web -> domain <- store inside a feature, and an order between features. */
class ArchitectureTest {
  /** Each feature may use those before it, never those after it. */
  private static final List<String> FEATURES =
      List.of("kernel", "species", "site", "bed", "siteplan", "fit", "choosing", "importing", "exporting", "guild", "drawing", "materials",
          "workplan", "sharing");

  private static final JavaClasses CLASSES =
      new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("guildwood");

  static List<String> features() {
    return FEATURES;
  }

  @ParameterizedTest
  @MethodSource("features")
  void aFeatureUsesOnlyThoseBeforeIt(String feature) {
    String[] later = FEATURES.stream().skip(FEATURES.indexOf(feature) + 1L).map(f -> "guildwood." + f + "..").toArray(String[]::new);
    if (later.length > 0) {
      noClasses().that().resideInAPackage("guildwood." + feature + "..")
          .should().dependOnClassesThat().resideInAnyPackage(later).check(CLASSES);
    }
  }

  @Test
  void theDomainKnowsNoWebNoSqlNoJson() {
    noClasses().that().resideInAPackage("guildwood..")
        .and().resideOutsideOfPackages("guildwood", "guildwood..web..", "guildwood..store..", "guildwood..exchange..")
        .should().dependOnClassesThat().resideInAnyPackage(
            "io.javalin..", "org.thymeleaf..", "com.fasterxml.jackson..", "java.sql..", "javax.sql..", "org.jdbi..",
            "org.apache.commons.csv..", "org.dhatim..", "com.github.miachm..", "biweekly..", "javax.imageio..", "guildwood.web..", "guildwood.store..")
        .check(CLASSES);
  }

  @Test
  void pagesKnowNoSqlAndStoresNoPages() {
    noClasses().that().resideInAPackage("guildwood..web..")
        .should().dependOnClassesThat().resideInAnyPackage("java.sql..", "org.jdbi..", "guildwood..store..")
        .check(CLASSES);
    noClasses().that().resideInAPackage("guildwood..store..")
        .should().dependOnClassesThat().resideInAnyPackage("io.javalin..", "org.thymeleaf..", "guildwood..web..")
        .check(CLASSES);
  }

  @Test
  void onlyTheAppWiresStoresToPages() {
    noClasses().that().resideOutsideOfPackages("guildwood", "guildwood..store..", "guildwood..exchange..")
        .should().dependOnClassesThat().resideInAPackage("guildwood..store..").check(CLASSES);
  }
}
