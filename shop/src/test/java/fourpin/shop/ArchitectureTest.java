package fourpin.shop;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/**
 * The shop stands on top: nothing below uses it, which the order of the modules already sees to.
 */
class ArchitectureTest {

  private static final ImportOption THIS_MODULE = location -> location.contains("/shop/target/");

  private static final JavaClasses SHOP =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .withImportOption(THIS_MODULE)
          .importPackages("fourpin");

  @Test
  void everyClassStandsBelowShop() {
    classes()
        .should()
        .resideInAPackage("fourpin.shop..")
        .because("the folder of a class tells its package")
        .check(SHOP);
  }

  @Test
  void everyPackageSaysWhereNullMayBe() {
    assertThat(SHOP.stream().map(JavaClass::getPackage).distinct())
        .filteredOn(itsPackage -> !itsPackage.isAnnotatedWith(NullMarked.class))
        .as("packages without @NullMarked in their package-info.java")
        .isEmpty();
  }

  @Test
  void itsPackagesDoNotGoRoundInCircles() {
    slices()
        .matching("fourpin.shop.(*)..")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .check(SHOP);
  }
}
