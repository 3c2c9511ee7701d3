package pappus.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.Shipped;
import pappus.files.Problem;

/** What is said of a catalogue that can be read. */
final class InspectionTest {
  private static final List<Problem> SHIPPED = Inspection.of(Shipped.READ, file -> true);

  @TempDir
  private Path folder;

  /** Warnings on one file of a catalogue that is changed in one place, fitted to the shipped. */
  private List<Problem> afterChange(String name, String from, String to) throws IOException {
    var text = Files.readString(Path.of("catalog", name));
    assertThat(text).contains(from);
    var file = folder.resolve(name);
    Files.writeString(file, text.replaceFirst(Pattern.quote(from), to));
    var read = CatalogReader.read(List.of(CatalogFolder.shipped(), CatalogFolder.of(folder)));
    return Inspection.of(read, file.toString()::equals);
  }

  @Test
  void theTrapsOfTheShippedCatalogueAreWarnings() {
    assertThat(SHIPPED)
        .anyMatch(problem -> problem.text().startsWith("frond-4.5x3.2x3: figure of merit"))
        .anyMatch(problem -> problem.text().startsWith("rushlight-600: "));
  }

  @Test
  void everyWarningHasItsLine() {
    assertThat(SHIPPED).allMatch(problem -> problem.line() > 0);
  }

  @Test
  void noShippedFamilyDisagrees() {
    assertThat(SHIPPED).noneMatch(problem -> problem.text().contains("R·Kv²"));
  }

  @Test
  void aWindingThatDisagreesWithItsFamilyIsNamed() throws IOException {
    assertThat(afterChange(
            "motors.json", "\"resistanceMilliohms\": 149", "\"resistanceMilliohms\": 230"))
        .anyMatch(problem -> problem.line() == 4
            && problem.text().startsWith("achene-1103-10000: R·Kv² is ")
            && problem.text().contains("above that of achene-1103-"));
  }

  @Test
  void aMotorThatNoFrameIsDrilledForIsNamed() throws IOException {
    assertThat(afterChange(
            "motors.json", "\"boltCirclesMillimetres\": [6.6]", "\"boltCirclesMillimetres\": [31]"))
        .anyMatch(problem -> problem
            .text()
            .startsWith("achene-1103-10000: fits no frame of the catalogue, such as: "));
  }

  @Test
  void aBoardWithBarePadsMeetsItsPackByAPigtail() {
    assertThat(SHIPPED)
        .noneMatch(problem -> problem.text().contains("culvert-12: fits no battery"));
  }

  @Test
  void aMakerWhoseFiguresLieToOneSideIsNamedOnceAFigure() {
    assertThat(SHIPPED.stream()
            .filter(problem -> problem.text().contains(" and others of Havrekel: winding")))
        .singleElement()
        .satisfies(problem -> assertThat(problem.text())
            .startsWith("cypsela-1103-11000 and others of Havrekel: winding resistance averages ")
            .contains(" % below what such parts have, over 14 records"));
  }

  @Test
  void aRecordThatTheOthersMakeDoubtfulIsNamed() throws IOException {
    var from = "\"deliveredMilliampHours\": 275";

    assertThat(afterChange("batteries.json", from, from.replace("275", "200")))
        .anyMatch(problem -> problem
            .text()
            .startsWith("ebb-2s-300: charge delivered lies 30 % below what such parts have,"));
    assertThat(afterChange("batteries.json", from, from))
        .noneMatch(problem -> problem.text().startsWith("ebb-2s-300: charge delivered"));
  }

  @Test
  void whatIsMissingIsSaidOnceAFileWithWhatItCosts() {
    assertThat(SHIPPED.stream()
            .filter(problem -> problem.text().contains(" test is missing: it flies by blade")))
        .singleElement()
        .satisfies(problem -> assertThat(problem.text()).contains(" and 12 more: "));
  }

  @Test
  void onlyFilesAskedAboutAreSpokenOf() throws IOException {
    assertThat(afterChange("gps.json", "\"gps\"", "\"gps\""))
        .allMatch(problem -> problem.file().equals(folder.resolve("gps.json").toString()));
  }

  @Test
  void onePartUnderTwoIdsIsNamedWithBothPlaces() throws IOException {
    var file = folder.resolve("straps.json");
    var text = Files.readString(Path.of("catalog/straps.json"));
    Files.writeString(
        file,
        text.replaceAll("\"id\": \"", "\"id\": \"my-")
            .replace("Brissimer", "BRISSIMER")
            .replace("Bindweed 10×130", "bindweed  10×130"));
    var read = CatalogReader.read(List.of(CatalogFolder.shipped(), CatalogFolder.of(folder)));

    assertThat(Inspection.of(read, file.toString()::equals))
        .filteredOn(problem -> problem.text().contains("entered twice"))
        .hasSize(10)
        .anySatisfy(
            problem -> assertThat(problem.text())
                .isEqualTo(
                    "my-bindweed-10x130: has the maker and name of bindweed-10x130 at catalog/straps.json:4: maybe it is one part entered twice."));
    assertThat(SHIPPED).noneMatch(problem -> problem.text().contains("entered twice"));
  }
}
