package pappus.answers.match;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.compatibility.Match;
import pappus.compatibility.Match.Grade;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Parts;
import pappus.part.Propeller;
import tools.jackson.databind.json.JsonMapper;

/** One part against others, and several side by side. */
class MatchReportTest {
  private static final Part MOTOR = with(Parts.motor(), "name", "Motor | one");
  private static final Part OTHER = with(Parts.motor(), "id", "other");
  private static final Part RINGS = with(Parts.reducingRings(), "name", "Rings, light");

  private static Propeller propeller(String id) {
    return with(with(Parts.propeller(), "id", id), "name", "Propeller " + id);
  }

  private static final List<Match> PROPELLERS = List.of(
      new Match(propeller("awn"), Grade.NOT, List.of(), List.of("Motor motor is small.")),
      new Match(
          propeller("frond"), Grade.ADAPTER, List.of(RINGS), List.of("frond sits with rings.")),
      new Match(propeller("ligule"), Grade.DIRECT, List.of(), List.of()));

  private static Map<Kind, List<Match>> matches() {
    var matches = new EnumMap<Kind, List<Match>>(Kind.class);
    matches.put(Kind.PROPELLER, PROPELLERS);
    matches.put(
        Kind.FRAME,
        List.of(new Match(
            Parts.frame(), Grade.UNKNOWN, List.of(), List.of("Not known: its circles."))));
    return matches;
  }

  private static final MatchReport REPORT = new MatchReport(List.of(MOTOR), List.of(), matches());

  /** The second has nothing to say of frames, and of one propeller only. */
  private static final MatrixReport MATRIX = new MatrixReport(
      List.of(MOTOR, OTHER), List.of(matches(), Map.of(Kind.PROPELLER, PROPELLERS.subList(2, 3))));

  @Test
  void aTerminalHasAListByKindAndGrade() {
    assertThat(REPORT.text(100, false)).isEqualTo("""
            What goes with Motor | one [motor], whatever the scenario:

            Frames: 1 not known.
            frame: Not known: its circles.

            Propellers: 1 directly, 1 with an adapter, 1 not.
            directly ligule
            frond: with Rings, light (0.2 g, EUR 1.5). frond sits with rings.
            not awn: Motor motor is small.

            Every part of the catalogue was checked by every fit rule that can judge these parts alone.

            ! Two parts that fit are not yet a quad: assess judges currents, ports, balance and mass of all of
              it. Check before you buy, and mind what lithium packs, propellers and radio power can do.
            """);
  }

  @Test
  void withoutAnythingToSayItSaysSo() {
    assertThat(new MatchReport(List.of(MOTOR, OTHER), List.of(), Map.of()).text(200, false))
        .isEqualTo("What goes with Motor | one [motor] and Motor [other], whatever the scenario:\n"
            + "No fit rule concerns this part.\n\n"
            + MatchWords.STANDING
            + "\n\n! "
            + MatchWords.CAUTION
            + "\n");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100, 200})
  void keepsToTheColumnsAndLosesNoWord(int width) {
    for (var texts : List.of(
        List.of(REPORT.text(width, false), REPORT.text(1000, false)),
        List.of(MATRIX.text(width), MATRIX.text(1000)))) {
      assertThat(texts.get(0).lines()).allMatch(line -> line.length() <= width);
      assertThat(texts.get(0).split("\\s+")).isEqualTo(texts.get(1).split("\\s+"));
    }
  }

  @Test
  void aSpreadsheetHasEachPart() {
    assertThat(REPORT.csv()).isEqualTo("""
            kind,name,id,fits,adapter,remarks
            frame,Frame,frame,not known,,Not known: its circles.
            propeller,Propeller awn,awn,no,,Motor motor is small.
            propeller,Propeller frond,frond,with adapter,"Rings, light (0.2 g, EUR 1.5)",frond sits with rings.
            propeller,Propeller ligule,ligule,yes,,
            """);
    assertThat(MATRIX.csv()).isEqualTo("""
            kind,name,id,motor,other
            frame,Frame,frame,Not known: its circles.,
            propeller,Propeller awn,awn,no: Motor motor is small.,
            propeller,Propeller frond,frond,"with Rings, light (0.2 g, EUR 1.5)",
            propeller,Propeller ligule,ligule,yes,yes
            """);
  }

  @Test
  void aPageHasTheSameTables() {
    assertThat(REPORT.markdown()).isEqualTo("""
            | kind | part | id | fits | with | remarks |
            | --- | --- | --- | --- | --- | --- |
            | frame | Frame | frame | not known |  | Not known&#58; its circles. |
            | propeller | Propeller awn | awn | no |  | Motor motor is small. |
            | propeller | Propeller frond | frond | with adapter | Rings, light \\(0.2 g, EUR 1.5\\) | frond sits with rings. |
            | propeller | Propeller ligule | ligule | yes |  |  |
            """);
    assertThat(MATRIX.markdown()).isEqualTo("""
            | kind | part | id | Motor \\| one | Motor |
            | --- | --- | --- | --- | --- |
            | frame | Frame | frame | Not known&#58; its circles. |  |
            | propeller | Propeller awn | awn | no&#58; Motor motor is small. |  |
            | propeller | Propeller frond | frond | with Rings, light \\(0.2 g, EUR 1.5\\) |  |
            | propeller | Propeller ligule | ligule | yes | yes |
            """);
  }

  @Test
  void theTextOfAMatrixHasAColumnForEach() {
    assertThat(MATRIX.text(200).lines().limit(5).toList())
        .containsExactly(
            "kind       part              id      Motor | one                         Motor",
            "frame      Frame             frame   Not known: its circles.",
            "propeller  Propeller awn     awn     no: Motor motor is small.",
            "propeller  Propeller frond   frond   with Rings, light (0.2 g, EUR 1.5)",
            "propeller  Propeller ligule  ligule  yes                                 yes");
  }

  @Test
  void theDocumentsHaveEveryPartThatIsNamed() {
    var json = JsonMapper.shared().readTree(REPORT.json());
    assertThat(json.path("status").asString()).isEqualTo("matched");
    assertThat(json.path("with").get(0).asString()).isEqualTo("motor");
    var frond = json.path("kinds").path("propeller").get(1);
    assertThat(frond.path("part").asString()).isEqualTo("frond");
    assertThat(frond.path("fits").asString()).isEqualTo("adapter");
    assertThat(frond.path("adapters").get(0).asString()).isEqualTo("rings");
    assertThat(frond.path("text").get(0).asString()).isEqualTo("frond sits with rings.");
    assertThat(json.path("parts").propertyNames())
        .containsExactly("awn", "frame", "frond", "ligule", "motor", "rings");

    var matrix = JsonMapper.shared().readTree(MATRIX.json());
    assertThat(matrix.path("columns"))
        .extracting(column -> column.path("with").asString())
        .containsExactly("motor", "other");
    assertThat(matrix.path("columns").get(1).path("kinds").path("propeller")).hasSize(1);
    assertThat(matrix.path("columns").get(1).path("kinds").has("frame")).isFalse();
    assertThat(matrix.path("parts").propertyNames())
        .containsExactly("awn", "frame", "frond", "ligule", "motor", "other", "rings");
  }
}
