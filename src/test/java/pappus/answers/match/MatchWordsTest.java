package pappus.answers.match;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.part.Parts.with;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.compatibility.Match;
import pappus.compatibility.Match.Grade;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.part.Parts;

class MatchWordsTest {
  private static final Part RINGS = with(Parts.reducingRings(), "name", "Rings 5 to 2");
  private static final Part SHIMS = with(Parts.cameraShims(19, 14), "name", "Shims\u001B[2J");

  private static Match match(String id, Grade grade, String... text) {
    return new Match(with(Parts.propeller(), "id", id), grade, List.of(), List.of(text));
  }

  private static Match adapted(String id, List<Part> adapters, String... text) {
    return new Match(with(Parts.propeller(), "id", id), Grade.ADAPTER, adapters, List.of(text));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "DIRECT, yes",
    "ADAPTER, with adapter",
    "WARNING, with care",
    "NOT, no",
    "UNKNOWN, not known"
  })
  void aGradeIsAWord(Grade grade, String word) {
    assertThat(MatchWords.word(grade)).isEqualTo(word);
  }

  @Test
  void countsEachGradeThatIsThere() {
    var one = match("one", Grade.DIRECT);
    var all = List.of(
        one,
        match("two", Grade.UNKNOWN, "Not known: its seat."),
        match("three", Grade.NOT, "Too large."),
        one,
        match("four", Grade.WARNING, "Mind it."),
        adapted("five", List.of(RINGS)));

    assertThat(MatchWords.counts(Kind.PROPELLER, all))
        .isEqualTo("Propellers: 2 directly, 1 with an adapter, 1 with a note, 1 not, 1 not known.");
    assertThat(MatchWords.counts(Kind.PAYLOAD_CAMERA, List.of(one)))
        .isEqualTo("Payload cameras: 1 directly.");
  }

  @Test
  void thoseOfWhichTheSameIsSaidShareASentence() {
    var three = List.of(
        match("awn", Grade.NOT, "Propeller awn is 4.5 inch."),
        match("frond", Grade.NOT, "Propeller frond is 5 inch."),
        match("ligule", Grade.NOT, "Propeller ligule is 4.5 inch."));

    assertThat(MatchWords.each(three, true))
        .containsExactly(
            "not awn, ligule: Propeller … is 4.5 inch.", "not frond: Propeller frond is 5 inch.");
    assertThat(MatchWords.each(three, false))
        .containsExactly("not awn, frond, ligule, such as: Propeller awn is 4.5 inch.");
    assertThat(MatchWords.each(List.of(), true)).isEmpty();
  }

  @Test
  void idsThatBeginAlikeShareTheirBeginning() {
    assertThat(MatchWords.folded(List.of(
            match("awn-4x2", Grade.DIRECT),
            match("frond", Grade.DIRECT),
            match("awn-5x3-light", Grade.DIRECT))))
        .containsExactly("directly awn-4x2, 5x3-light", "directly frond");
  }

  @Test
  void eachGradeSaysItsOwn() {
    assertThat(MatchWords.each(List.of(match("awn", Grade.WARNING, "Mind awn.", "It hums.")), true))
        .containsExactly("note on awn: Mind awn. It hums.");
    assertThat(MatchWords.each(
            List.of(match("awn", Grade.UNKNOWN, "Not known: the seat of awn.")), true))
        .containsExactly("awn: Not known: the seat of awn.");
    assertThat(MatchWords.each(List.of(match("awn", Grade.DIRECT)), true))
        .containsExactly("awn: directly.");
    assertThat(MatchWords.each(
            List.of(
                adapted("awn", List.of(RINGS), "Propeller awn sits with rings."),
                adapted("frond", List.of(RINGS))),
            true))
        .containsExactly(
            "awn: with Rings 5 to 2 (0.2 g, EUR 1.5). Propeller awn sits with rings.",
            "frond: with Rings 5 to 2 (0.2 g, EUR 1.5).");
  }

  @Test
  void adaptersAreToldWithMassAndPrice() {
    assertThat(MatchWords.adapters(adapted("awn", List.of(RINGS, SHIMS))))
        .isEqualTo("Rings 5 to 2 (0.2 g, EUR 1.5), Shims\u001B[2J (1.0 g, EUR 1.5)");
    assertThat(MatchWords.adapters(match("awn", Grade.DIRECT))).isEmpty();
  }

  @Test
  void aCellSaysItInShort() {
    assertThat(MatchWords.cell(match("awn", Grade.DIRECT))).isEqualTo("yes");
    assertThat(MatchWords.cell(adapted("awn", List.of(RINGS), "It sits with rings.")))
        .isEqualTo("with Rings 5 to 2 (0.2 g, EUR 1.5)");
    assertThat(MatchWords.cell(match("awn", Grade.WARNING, "Mind it.", "It hums.")))
        .isEqualTo("with care: Mind it. It hums.");
    assertThat(MatchWords.cell(match("awn", Grade.NOT, "Too large."))).isEqualTo("no: Too large.");
    assertThat(MatchWords.cell(match("awn", Grade.UNKNOWN, "Not known: its seat.")))
        .isEqualTo("Not known: its seat.");
  }
}
