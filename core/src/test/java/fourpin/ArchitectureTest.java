package fourpin;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The order of the packages in core, and what core may not reach for. */
class ArchitectureTest {

  /** Each package uses only those before it; therefore there is no cycle either. */
  static final List<String> PACKAGES =
      List.of(
          "measure",
          "reference",
          "job",
          "bench",
          "cutting",
          "casework",
          "strength",
          "contents",
          "boring",
          "plan");

  /** Packages that know pieces, holes and cuts, but no furniture. */
  static final List<String> KNOW_NO_FURNITURE = List.of("bench", "cutting");

  private static final String[] ALLOWED_LIBRARIES = {
    "java..", "org.jspecify.annotations..", "de.siegmar.fastcsv..", "org.ejml..", "org.ojalgo.."
  };

  private static final DescribedPredicate<JavaClass> ARRAYS_OF_PRIMITIVES =
      DescribedPredicate.describe(
          "arrays of primitives", type -> type.getBaseComponentType().isPrimitive());

  private static final JavaClasses CORE =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("fourpin");

  @ParameterizedTest
  @FieldSource("PACKAGES")
  void eachPackageUsesOnlyThoseBeforeIt(String name) {
    List<String> before = PACKAGES.subList(0, PACKAGES.indexOf(name) + 1);
    mayUseOnly(name, before, "the packages of core are built up in the order " + PACKAGES);
  }

  @ParameterizedTest
  @FieldSource("KNOW_NO_FURNITURE")
  void theBenchAndCuttingUseOnlyMeasure(String name) {
    mayUseOnly(name, List.of("measure", name), name + " knows no furniture");
  }

  private static void mayUseOnly(String name, List<String> allowed, String reason) {
    String[] usable =
        Stream.concat(allowed.stream().map(ArchitectureTest::pattern), Stream.of(ALLOWED_LIBRARIES))
            .toArray(String[]::new);
    classes()
        .that()
        .resideInAPackage(pattern(name))
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(usable).or(ARRAYS_OF_PRIMITIVES))
        .as("fourpin." + name + " uses only " + allowed + " and " + List.of(ALLOWED_LIBRARIES))
        .because(reason)
        .allowEmptyShould(true)
        .check(CORE);
  }

  @Test
  void everyClassStandsInAKnownPackage() {
    classes()
        .should()
        .resideInAnyPackage(patterns(PACKAGES))
        .because("a new package of core needs its place in the order " + PACKAGES)
        .check(CORE);
  }

  @Test
  void everyPackageSaysWhereNullMayBe() {
    assertThat(CORE.stream().map(JavaClass::getPackage).distinct())
        .filteredOn(itsPackage -> !itsPackage.isAnnotatedWith(NullMarked.class))
        .as("packages without @NullMarked in their package-info.java")
        .isEmpty();
  }

  @Test
  void coreTouchesNoFileAndNoNetwork() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net..", "java.nio.file..", "java.nio.channels..", "java.sql..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching("java\\.io\\.(File|RandomAccessFile).*")
        .because("a Job comes into core and a Plan goes out; files and network belong to the shop")
        .check(CORE);
  }

  @Test
  void coreReadsNoClockAndDrawsNoUnseededNumber() {
    noClasses()
        .should()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .callMethod(Math.class, "random")
        .orShould()
        .callConstructor(Random.class)
        .orShould()
        .callMethod(Instant.class, "now")
        .orShould()
        .callMethod(LocalDate.class, "now")
        .because("the same job gives the same plan, byte for byte")
        .check(CORE);
  }

  private static String pattern(String name) {
    return "fourpin." + name + "..";
  }

  private static String[] patterns(Collection<String> names) {
    return names.stream().map(ArchitectureTest::pattern).toArray(String[]::new);
  }
}
