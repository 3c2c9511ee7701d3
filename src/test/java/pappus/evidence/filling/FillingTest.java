package pappus.evidence.filling;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.evidence.Evidence;
import pappus.evidence.Weighing;
import pappus.evidence.prior.ClassPriors;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.part.Assumed;
import pappus.part.Battery;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.shop.SmallShop;
import pappus.structure.DrawnMass;
import tools.jackson.databind.json.JsonMapper;

/** What a page of a shop prints is a whole part. */
class FillingTest {
  private static final String COMMON =
      "\"id\": \"a\", \"name\": \"A\", \"price\": {\"amount\": 9.9, \"currency\": \"EUR\"}, \"mass\": {\"grams\": %s}";

  private final Problems problems = new Problems();

  /** What a page prints of a part of a kind. */
  private static String page(Kind kind) {
    return switch (kind) {
      case MOTOR ->
        of(9.3)
            + ", \"statorDiameterMillimetres\": 14, \"statorHeightMillimetres\": 4, \"speedConstantRpmPerVolt\": 3800, \"boltCirclesMillimetres\": [9], \"propellerSeat\": \"screws-1.5mm\"";
      case PROPELLER ->
        of(2.1)
            + ", \"diameterInches\": 4, \"pitchInches\": 2.5, \"blades\": 2, \"seats\": [\"screws-1.5mm\"]";
      case BATTERY ->
        of(78)
            + ", \"chemistry\": \"lipo\", \"cellsInSeries\": 4, \"capacityMilliampHours\": 650, \"connector\": \"xt30\", \"massIncludesLeads\": true";
      case BOARD ->
        of(6)
            + ", \"layout\": \"all-in-one\", \"mount\": {\"pattern\": \"25.5x25.5\"}, \"input\": {\"lowVolts\": 6, \"highVolts\": 17.6}, \"continuousAmpsPerMotor\": 15, \"overlay\": true, \"receiver\": {\"link\": \"thrennel\"}";
      case FRAME ->
        of(48)
            + ", \"diagonalMillimetres\": 182, \"largestPropellerInches\": 4, \"motorBoltCirclesMillimetres\": [{\"fromMillimetres\": 9, \"toMillimetres\": 12}], \"positions\": [{\"patterns\": [{\"pattern\": \"20x20\"}]}], \"cameraWidthsMillimetres\": [14], \"bay\": {\"place\": \"top\"}";
      case TRANSMITTER ->
        of(4)
            + ", \"family\": \"analogue\", \"input\": {\"lowVolts\": 7, \"highVolts\": 26}, \"powers\": [{\"milliwatts\": 25}, {\"milliwatts\": 400}]";
      case CAMERA -> of(2.5) + ", \"family\": \"analogue\", \"widthMillimetres\": 14";
      case RECEIVER -> of(0.8) + ", \"link\": \"thrennel\"";
      case ANTENNA -> of(1.2) + ", \"connector\": \"mmcx\", \"band\": \"5.8-ghz\"";
      case GPS -> of(5) + ", \"compass\": true";
      case LEAD -> of(4) + ", \"batterySide\": \"xt30\", \"gauge\": 18";
      case BUZZER -> of(1);
      case CAPACITOR -> of(2) + ", \"microfarads\": 470, \"ratedVolts\": 25";
      case STRAP -> of(3) + ", \"widthMillimetres\": 12, \"lengthMillimetres\": 180";
      case SCREW ->
        of(0.2) + ", \"thread\": \"M2\", \"lengthMillimetres\": 6, \"material\": \"steel\"";
      case SUNDRY -> of(2) + ", \"purpose\": \"solder-and-ties\"";
      case ADAPTER -> of(1) + ", \"purpose\": \"reducing-rings\", \"heightMillimetres\": 0";
      case PAYLOAD_CAMERA ->
        of(30)
            + ", \"lengthMillimetres\": 40, \"widthMillimetres\": 30, \"heightMillimetres\": 25, \"watts\": 0";
    };
  }

  private static String of(double grams) {
    return COMMON.formatted(grams);
  }

  private static String file(Kind kind, String... records) {
    return "{\"%s\": [\n%s\n]}\n"
        .formatted(
            kind.listName(),
            String.join(
                ",\n", List.of(records).stream().map(each -> "{" + each + "}").toList()));
  }

  private List<? extends Part> read(Kind kind, String text) {
    return Filling.read(
            Source.of("f.json", text.getBytes(UTF_8)), kind, kind.recordClass(), problems)
        .stream()
        .map(listed -> listed.value())
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void whatAPagePrintsIsAPart(Kind kind) {
    var parts = read(kind, file(kind, page(kind)));

    assertThat(problems.sorted()).isEmpty();
    assertThat(parts).hasSize(1);
    assertThat(parts.get(0).assumed())
        .extracting(Assumed::path)
        .contains("maker", "sold", "mass.known", "source")
        .doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void theRecordStaysAsRead(Kind kind) {
    var part = read(kind, file(kind, page(kind))).get(0);

    var asRead = JsonMapper.shared().readTree(JsonText.of(Filling.asRead(part))).toString();
    var page = JsonMapper.shared().readTree("{" + page(kind) + "}").toString();
    assertThat(asRead.replaceAll("\\.0\\b", "")).isEqualTo(page.replaceAll("\\.0\\b", ""));
  }

  /** Of whole records only what they may leave out is filled: cell resistance, and widths of arms. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void whatIsStatedStays(Kind kind) {
    var shipped = SmallShop.all().ofKind(kind);
    var text = JsonText.of(java.util.Map.of(kind.listName(), shipped));
    var parts = read(kind, text);

    assertThat(parts).hasSameSizeAs(shipped);
    for (var i = 0; i < parts.size(); i++) {
      var assumed = parts.get(i).assumed().stream().map(Assumed::path).toList();
      assertThat(List.of("resistance", "armWidthMillimetres")).containsAll(assumed);
      assertThat(JsonText.of(Filling.asRead(parts.get(i)))).isEqualTo(JsonText.of(shipped.get(i)));
    }
  }

  @Test
  void propellersAreSoldByFourAndTheRestByOne() {
    assertThat(read(Kind.PROPELLER, file(Kind.PROPELLER, page(Kind.PROPELLER)))
            .get(0)
            .sold()
            .pieces())
        .isEqualTo(4);
    assertThat(
            read(Kind.MOTOR, file(Kind.MOTOR, page(Kind.MOTOR))).get(0).sold().pieces())
        .isEqualTo(1);
  }

  @Test
  void aMissingFigureCountsHalfASpreadTheHarmfulWay() {
    var motor = (Motor) read(Kind.MOTOR, file(Kind.MOTOR, page(Kind.MOTOR))).get(0);
    var winding = Evidence.NONE.motor(motor).winding();

    assertThat(winding.stated()).isEmpty();
    assertThat(winding.deviation()).isEqualTo(Filling.WINDING_SPREAD);
    assertThat(winding.by(Weighing.EXPECTED, 1))
        .isCloseTo(1000 * ClassPriors.usualWindingOhms(motor) * Math.exp(0.15), within(1.0));
    var pack =
        (Battery) read(Kind.BATTERY, file(Kind.BATTERY, page(Kind.BATTERY))).get(0);
    assertThat(pack.assumed("resistance").orElseThrow().inWords())
        .startsWith("cell resistance ")
        .contains(" mΩ ± ");
  }

  /** 4000 mm² by 2 mm: 12.4 g; arms by their lengths; all 5 mm forward. */
  @Test
  void aFrameWeighsWhatItsDrawingSays() {
    var drawing =
        ", \"drawing\": {\"plates\": [{\"name\": \"bottom\", \"thicknessMillimetres\": 2, \"squareMillimetres\": 4000, \"xMillimetres\": 5}], \"arms\": [{\"pair\": \"rear\", \"lengthMillimetres\": 60}, {\"pair\": \"front\", \"lengthMillimetres\": 60}]}";
    var text = page(Kind.FRAME).replace(", \"mass\": {\"grams\": 48.0}", "") + drawing;
    var frame = (Frame) read(Kind.FRAME, file(Kind.FRAME, text)).get(0);

    assertThat(problems.sorted()).isEmpty();
    var drawn = DrawnMass.of(frame);
    assertThat(drawn.items().get(0).grams()).isCloseTo(12.4, within(1e-9));
    assertThat(frame.mass().grams()).isCloseTo(drawn.grams(), within(0.005)).isGreaterThan(15);
    assertThat(frame.centreOfMassXMillimetres())
        .isCloseTo(drawn.x(), within(0.005))
        .isPositive();
    assertThat(frame.assumed("mass").orElseThrow().inWords())
        .isEqualTo("mass " + frame.mass().grams() + " g ± 6 %");
    assertThat(frame.assumed("mass").orElseThrow().from()).isEqualTo("its drawing");
    assertThat(JsonText.of(Filling.asRead(frame))).doesNotContain("grams");

    // A mass that is stated stays.
    var stated =
        (Frame) read(Kind.FRAME, file(Kind.FRAME, page(Kind.FRAME) + drawing)).get(0);
    assertThat(stated.mass().grams()).isEqualTo(48);
    // Without a drawing of all of it nothing tells the mass.
    read(Kind.FRAME, file(Kind.FRAME, text.replaceFirst("\\{\"name\": \"bottom\".*?\\}", "")));
    assertThat(problems.sorted().stream().map(Problem::toString))
        .containsExactly("f.json:2: frames[0].mass is missing.");
  }

  @Test
  void everyErrorKeepsItsLine() {
    var wrong = new ArrayList<String>();
    wrong.add(page(Kind.MOTOR));
    wrong.add(page(Kind.MOTOR).replace("\"a\"", "\"b\"").replace("\"A\"", "\"\""));
    wrong.add(page(Kind.MOTOR)
        .replace("\"a\"", "\"c\"")
        .replace("\"speedConstantRpmPerVolt\": 3800, ", ""));
    var parts = read(Kind.MOTOR, file(Kind.MOTOR, wrong.toArray(String[]::new)));

    assertThat(parts).extracting(Part::id).containsExactly("a");
    assertThat(problems.sorted().stream().map(Problem::toString))
        .containsExactly(
            "f.json:3: motors[1].name must hold text, but is empty.",
            "f.json:4: motors[2].speedConstantRpmPerVolt is missing.");
  }

  @Test
  void whatIsNoJsonIsToldAsEver() {
    read(Kind.MOTOR, "{\"motors\": [{\"id\": ");
    assertThat(problems.sorted()).hasSize(1);
  }
}
