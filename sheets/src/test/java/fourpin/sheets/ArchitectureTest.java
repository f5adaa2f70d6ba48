package fourpin.sheets;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Sheets show a plan: they use core, nothing of the shop, and no network. */
class ArchitectureTest {

  private static final ImportOption THIS_MODULE = location -> location.contains("/sheets/target/");

  private static final JavaClasses SHEETS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(THIS_MODULE)
          .importPackages("fourpin");

  @Test
  void everyClassStandsBelowSheets() {
    classes()
        .should()
        .resideInAPackage("fourpin.sheets..")
        .because("the folder of a class tells its package")
        .check(SHEETS);
  }

  @Test
  void everyPackageSaysWhereNullMayBe() {
    assertThat(SHEETS.stream().map(JavaClass::getPackage).distinct())
        .filteredOn(itsPackage -> !itsPackage.isAnnotatedWith(NullMarked.class))
        .as("packages without @NullMarked in their package-info.java")
        .isEmpty();
  }

  @Test
  void sheetsKnowNoShopAndNoNetwork() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("fourpin.shop..", "fourpin.trials..", "java.net..", "java.sql..")
        .because("a plan comes in and pages go out")
        .check(SHEETS);
  }

  @Test
  void itsPackagesDoNotGoRoundInCircles() {
    slices()
        .matching("fourpin.sheets.(*)..")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .check(SHEETS);
  }
}
