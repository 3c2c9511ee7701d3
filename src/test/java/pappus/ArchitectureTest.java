package pappus;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** Which package may use which: every arrow points down this list, and only as far as it says. */
final class ArchitectureTest {
  private static final JavaClasses TOOL = new ClassFileImporter()
      .withImportOption(new ImportOption.DoNotIncludeTests())
      .importPackages("pappus");

  private static final String ANNOTATIONS = "com.fasterxml.jackson.annotation..";
  private static final String JACKSON = "tools.jackson..";
  private static final String HIPPARCHUS = "org.hipparchus..";

  /** A package and what it may use besides itself, the JDK and the nullness annotations. */
  private record Layer(String name, List<String> mayUse) {
    static Layer of(String name, String... mayUse) {
      return new Layer(name, List.of(mayUse));
    }

    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Layer> layers() {
    return Stream.of(
        Layer.of("pappus.cli", "pappus..", "picocli.."),
        Layer.of("pappus.report.page.templates", "pappus.report..", "pappus.offer", "gg.jte.."),
        Layer.of(
            "pappus.report.page",
            "pappus.report",
            "pappus.offer",
            "pappus.weighing",
            "pappus.whatif",
            "pappus.calibration",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.physics.flight",
            "pappus.physics.battery",
            "pappus.explanation",
            "gg.jte.."),
        Layer.of(
            "pappus.offer",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.change",
            ANNOTATIONS),
        Layer.of(
            "pappus.report",
            "pappus.offer",
            "pappus.weighing",
            "pappus.match",
            "pappus.whatif",
            "pappus.change",
            "pappus.calibration",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.evidence",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.explanation",
            "pappus.physics..",
            JACKSON),
        Layer.of(
            "pappus.weighing",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment"),
        Layer.of("pappus.match", "pappus.catalog", "pappus.scenario", "pappus.compatibility"),
        Layer.of(
            "pappus.whatif",
            "pappus.change",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking"),
        Layer.of(
            "pappus.change",
            "pappus.physics.flight",
            "pappus.physics.battery",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking"),
        Layer.of(
            "pappus.explanation",
            "pappus.weighing",
            "pappus.match",
            "pappus.whatif",
            "pappus.change",
            "pappus.quantity",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.evidence",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.physics.flight"),
        Layer.of(
            "pappus.ranking",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search.."),
        Layer.of(
            "pappus.search.exact",
            "pappus.quantity",
            "pappus.physics..",
            "pappus.search",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment"),
        Layer.of(
            "pappus.search.plain",
            "pappus.quantity",
            "pappus.search",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment"),
        Layer.of(
            "pappus.search.timefold",
            "pappus.search",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "ai.timefold.."),
        Layer.of(
            "pappus.search",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment"),
        Layer.of(
            "pappus.doubt",
            "pappus.quantity",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.evidence",
            "pappus.assessment",
            "pappus.physics.."),
        Layer.of(
            "pappus.assessment",
            "pappus.quantity",
            "pappus.catalog",
            "pappus.evidence",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.physics.."),
        Layer.of(
            "pappus.inspection",
            "pappus.quantity",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.plausibility"),
        Layer.of(
            "pappus.evidence",
            "pappus.quantity",
            "pappus.catalog",
            "pappus.plausibility",
            "pappus.physics.."),
        Layer.of("pappus.spreadsheet", "pappus.quantity", "pappus.files"),
        Layer.of("pappus.calibration", "pappus.quantity", "pappus.files", HIPPARCHUS),
        Layer.of(
            "pappus.plausibility", "pappus.quantity", "pappus.catalog", "pappus.physics.battery"),
        Layer.of("pappus.compatibility", "pappus.quantity", "pappus.catalog", "pappus.scenario"),
        Layer.of(
            "pappus.scenario", "pappus.quantity", "pappus.files", "pappus.catalog", ANNOTATIONS),
        Layer.of("pappus.catalog", "pappus.quantity", "pappus.files", ANNOTATIONS),
        Layer.of(
            "pappus.files",
            "pappus.quantity",
            JACKSON,
            ANNOTATIONS,
            "de.siegmar.fastcsv..",
            "com.networknt.."),
        Layer.of("pappus.physics.flight", "pappus.physics..", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.airframe", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.battery", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.motor", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.propeller", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.atmosphere", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.quantity"));
  }

  @ParameterizedTest
  @MethodSource("layers")
  void usesOnlyWhatItMay(Layer layer) {
    var allowed =
        Stream.concat(Stream.of("java..", "org.jspecify..", layer.name()), layer.mayUse().stream());

    classes()
        .that()
        .resideInAPackage(layer.name())
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed.toArray(String[]::new))
        .check(TOOL);
  }

  /** A rule for a package that was renamed or removed would pass without checking anything. */
  @Test
  void listsExactlyThePackagesThatExist() {
    var existing = TOOL.stream().map(JavaClass::getPackageName).distinct();

    assertThat(existing)
        .containsExactlyInAnyOrderElementsOf(layers().map(Layer::name).toList());
  }

  /** Whatever else prints could print a name that steers the terminal. */
  @Test
  void onlyThePrinterAndMainKnowTheStreams() {
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("pappus.cli.Printer")
        .should()
        .callMethod(CommandLine.class, "getOut")
        .orShould()
        .callMethod(CommandLine.class, "getErr")
        .check(TOOL);
    noClasses()
        .that()
        .doNotHaveFullyQualifiedName("pappus.cli.Main")
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(TOOL);
  }
}
