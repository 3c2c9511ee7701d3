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
  record Layer(String name, List<String> mayUse) {
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
        Layer.of("pappus.spreadsheet", "pappus.files", "pappus.files.json"),
        Layer.of(
            "pappus.inspection",
            "pappus.part",
            "pappus.evidence",
            "pappus.evidence.prior",
            "pappus.files",
            "pappus.files.json",
            "pappus.evidence.filling",
            "pappus.catalog",
            "pappus.compatibility",
            "pappus.scenario.reading"),
        Layer.of(
            "pappus.answers.order",
            "pappus.part",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.change",
            "pappus.files",
            "pappus.files.json",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.result",
            "pappus.answers.whatif",
            "pappus.whatif.relax",
            "pappus.order",
            "pappus.order.column",
            "pappus.order.choice",
            "pappus.order.plan",
            ANNOTATIONS),
        Layer.of(
            "pappus.order.plan",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.change",
            "pappus.search",
            "pappus.ranking",
            "pappus.order",
            "pappus.order.column",
            "pappus.order.choice",
            "pappus.order.timefold"),
        Layer.of(
            "pappus.order.timefold",
            "pappus.order",
            "pappus.order.column",
            "pappus.order.choice",
            "ai.timefold.."),
        Layer.of("pappus.order.choice", "pappus.part", "pappus.order", "pappus.order.column"),
        Layer.of(
            "pappus.order.column",
            "pappus.quantity",
            "pappus.part",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.search",
            "pappus.search.exact",
            "pappus.order"),
        Layer.of(
            "pappus.order",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.scenario.reading",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.change",
            "pappus.offer",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.weighing",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.reliance",
            "pappus.doubt",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            "pappus.weighing",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.templates",
            "pappus.document",
            "pappus.answers.sheet",
            "pappus.answers.drawing",
            "pappus.offer",
            "pappus.answers.offer",
            "pappus.answers.order",
            "pappus.answers.whatif",
            "pappus.answers.ranking",
            "gg.jte.."),
        Layer.of(
            "pappus.answers.swap",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.change",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.ranking",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.reliance",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            "pappus.answers.drawing",
            "pappus.answers.explain",
            "pappus.answers.whatif",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.whatif",
            "pappus.quantity",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.whatif.sweep",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            "pappus.whatif.relax",
            ANNOTATIONS),
        Layer.of(
            "pappus.whatif.relax",
            "pappus.quantity",
            "pappus.part",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking",
            "pappus.change"),
        Layer.of(
            "pappus.answers.offer",
            "pappus.quantity",
            "pappus.part",
            "pappus.files.json",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.change",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.drawing",
            "pappus.offer",
            ANNOTATIONS),
        Layer.of(
            "pappus.offer",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.change",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.match",
            "pappus.quantity",
            "pappus.part",
            "pappus.files.json",
            "pappus.compatibility",
            "pappus.document",
            "pappus.answers.shape",
            "pappus.answers.result",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.explain",
            "pappus.sight",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.ranking",
            "pappus.change",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.sheet",
            "pappus.quantity",
            "pappus.part",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.link",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.reliance",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.document",
            "pappus.answers.build",
            "pappus.answers.shape",
            "pappus.answers.result",
            "pappus.answers.drawing",
            "pappus.weighing",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.drawing",
            "pappus.sight",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.document",
            "pappus.answers.build"),
        Layer.of(
            "pappus.weighing",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.assessment.flight",
            "pappus.assessment"),
        Layer.of(
            "pappus.answers.result",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.scenario",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.answers.build",
            "pappus.answers.shape",
            ANNOTATIONS,
            JACKSON),
        Layer.of(
            "pappus.answers.shape",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.physics.motor",
            "pappus.evidence",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.link",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.reliance",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.answers.build",
            "pappus.sight",
            "pappus.structure",
            ANNOTATIONS),
        Layer.of(
            "pappus.answers.check",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.inspection",
            "pappus.search.plain",
            ANNOTATIONS),
        Layer.of(
            "pappus.search.plain",
            "pappus.quantity",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search"),
        Layer.of(
            "pappus.answers.calibration",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.motor",
            "pappus.evidence",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.document",
            "pappus.answers.build",
            "pappus.calibration",
            ANNOTATIONS),
        Layer.of(
            "pappus.calibration",
            "pappus.quantity",
            "pappus.physics.motor",
            "pappus.files",
            HIPPARCHUS),
        Layer.of(
            "pappus.answers.build",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.motor",
            "pappus.evidence",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.link",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.reliance",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.document",
            "pappus.physics.structure",
            "pappus.sight",
            "pappus.structure"),
        Layer.of(
            "pappus.document",
            "pappus.quantity",
            "pappus.files",
            "pappus.files.json",
            "de.siegmar.fastcsv..",
            "gg.jte.."),
        Layer.of(
            "pappus",
            "pappus.part",
            "pappus.files",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.scenario.reading",
            "pappus.whatif.sweep"),
        Layer.of(
            "pappus.whatif.sweep",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking",
            "pappus.change",
            "pappus.whatif.relax",
            "pappus.structure"),
        Layer.of(
            "pappus.scenario.reading",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.structure"),
        Layer.of(
            "pappus.change",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.files.json",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search",
            "pappus.ranking"),
        Layer.of(
            "pappus.ranking",
            "pappus.part",
            "pappus.scenario",
            "pappus.assessment.flight",
            "pappus.assessment",
            "pappus.doubt",
            "pappus.search",
            "pappus.search.exact",
            "pappus.search.timefold"),
        Layer.of(
            "pappus.search.timefold",
            "pappus.part",
            "pappus.assessment",
            "pappus.search",
            "ai.timefold.."),
        Layer.of(
            "pappus.search.exact",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.physics.motor",
            "pappus.physics.propeller",
            "pappus.scenario",
            "pappus.physics.atmosphere",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.reliance",
            "pappus.compatibility",
            "pappus.assessment",
            "pappus.search"),
        Layer.of(
            "pappus.search",
            "pappus.quantity",
            "pappus.part",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.compatibility",
            "pappus.assessment"),
        Layer.of(
            "pappus.doubt",
            "pappus.quantity",
            "pappus.part",
            "pappus.assessment.flight",
            "pappus.reliance",
            "pappus.assessment"),
        Layer.of(
            "pappus.assessment",
            "pappus.sight",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.physics.motor",
            "pappus.evidence",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.airframe",
            "pappus.physics.atmosphere",
            "pappus.physics.flight",
            "pappus.assessment.flight",
            "pappus.reliance",
            "pappus.compatibility"),
        Layer.of(
            "pappus.reliance",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.motor",
            "pappus.physics.propeller",
            "pappus.evidence",
            "pappus.scenario",
            "pappus.links",
            "pappus.physics.airframe",
            "pappus.assessment.flight"),
        Layer.of(
            "pappus.compatibility",
            "pappus.quantity",
            "pappus.part",
            "pappus.catalog",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.link"),
        Layer.of(
            "pappus.assessment.flight",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.physics.motor",
            "pappus.physics.propeller",
            "pappus.evidence",
            "pappus.scenario",
            "pappus.fitting",
            "pappus.links",
            "pappus.physics.airframe",
            "pappus.physics.atmosphere",
            "pappus.physics.flight"),
        Layer.of(
            "pappus.physics.flight",
            "pappus.quantity",
            "pappus.physics.battery",
            "pappus.physics.motor",
            "pappus.physics.propeller",
            "pappus.physics.airframe"),
        Layer.of("pappus.physics.atmosphere", "pappus.quantity"),
        Layer.of("pappus.physics.airframe", "pappus.quantity", HIPPARCHUS),
        Layer.of("pappus.physics.link", "pappus.quantity"),
        Layer.of(
            "pappus.fitting", "pappus.quantity", "pappus.part", "pappus.scenario", "pappus.links"),
        Layer.of(
            "pappus.links",
            "pappus.quantity",
            "pappus.part",
            "pappus.evidence.prior",
            "pappus.scenario",
            "pappus.physics.link"),
        Layer.of(
            "pappus.scenario",
            "pappus.quantity",
            "pappus.part",
            "pappus.files",
            "pappus.catalog",
            ANNOTATIONS),
        Layer.of(
            "pappus.catalog",
            "pappus.quantity",
            "pappus.part",
            "pappus.evidence.filling",
            "pappus.files",
            "pappus.files.json",
            "pappus.files.output",
            ANNOTATIONS,
            JACKSON),
        Layer.of(
            "pappus.evidence.filling",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.evidence.prior",
            "pappus.evidence",
            "pappus.files",
            "pappus.files.json",
            "pappus.structure",
            JACKSON),
        Layer.of("pappus.structure", "pappus.part", "pappus.physics.structure"),
        Layer.of("pappus.sight", "pappus.quantity", "pappus.part", "pappus.physics.view"),
        Layer.of("pappus.physics.view"),
        Layer.of("pappus.files.output", "pappus.files", "pappus.files.json", JACKSON),
        Layer.of(
            "pappus.files.json",
            "pappus.quantity",
            "pappus.files",
            ANNOTATIONS,
            "com.networknt..",
            JACKSON),
        Layer.of("pappus.files", "pappus.quantity", "de.siegmar.fastcsv.."),
        Layer.of(
            "pappus.evidence",
            "pappus.quantity",
            "pappus.part",
            "pappus.physics.battery",
            "pappus.evidence.prior",
            "pappus.physics.motor",
            "pappus.physics.propeller",
            HIPPARCHUS),
        Layer.of("pappus.physics.propeller", "pappus.quantity"),
        Layer.of("pappus.physics.motor", "pappus.quantity"),
        Layer.of(
            "pappus.evidence.prior", "pappus.quantity", "pappus.part", "pappus.physics.battery"),
        Layer.of("pappus.physics.battery", "pappus.quantity", "pappus.physics.motor"),
        Layer.of("pappus.part", "pappus.quantity", "pappus.physics.structure", ANNOTATIONS),
        Layer.of("pappus.physics.structure", "pappus.quantity"),
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
