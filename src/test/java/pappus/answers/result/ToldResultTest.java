package pappus.answers.result;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import pappus.catalog.ResultFile;
import pappus.files.Fingerprint;
import pappus.files.InputException;
import pappus.files.Source;

/** What is read back of results, of this release and of earlier ones. */
class ToldResultTest {
  /** Written before the parts of a result told their kind. */
  private static final String EARLIER = "bird-survey-0.1.0.json";

  private static String earlier() throws IOException {
    try (var stream = Objects.requireNonNull(ToldResultTest.class.getResourceAsStream(EARLIER))) {
      return new String(stream.readAllBytes(), UTF_8);
    }
  }

  private static Source source(String text) {
    return Source.of("result.json", text.getBytes(UTF_8));
  }

  @Test
  void aResultOfAnEarlierReleaseIsRead() throws IOException {
    assertThat(earlier()).doesNotContain("\"kind\"");

    var told = ToldResult.of(source(earlier()));

    assertThat(told.standing()).isEqualTo(new ToldResult.Standing(true, 10));
    assertThat(told.catalogs()).containsExactly("(shipped)");
    assertThat(told.inputs().get(0))
        .isEqualTo(new Fingerprint(
            "scenarios/bird-survey.json",
            "bdd6929ef31d7dc9615a8c72dd42a235b66867aae4a6e54251578ecb8e8d1eb7"));
    assertThat(told.candidates()).hasSize(10).allMatch(ToldRow::feasible);
    assertThat(told.candidates().get(0).milliseconds()).isEqualTo(2_774_343);
    assertThat(told.candidates().get(0).roles())
        .containsEntry("motor", "cypsela-1404-2800")
        .containsEntry("lead", "tether-30-20-short")
        .hasSize(11);
    assertThat(ResultFile.roles(source(earlier()), "1"))
        .isEqualTo(told.candidates().get(0).roles());
  }

  @Test
  void whatIsNotReadMayBeMissingOrNew() throws IOException {
    var other = earlier()
        .replace("\"cheapestOfGroup\": false,", "\"ofAnotherRelease\": {\"a\": [1]},")
        .replace("\"seed\": 20260101,", "");

    assertThat(other).isNotEqualTo(earlier());
    assertThat(ToldResult.of(source(other))).isEqualTo(ToldResult.of(source(earlier())));
  }

  @Test
  void whatIsReadMustBeThereAndBeWhatItIs() throws IOException {
    assertRefused(
        earlier().replace("\"milliseconds\": 2774343,", ""),
        "result\\.json:\\d+: candidates\\[0]\\.milliseconds is missing\\.");
    assertRefused(
        earlier().replace("\"proven\": true", "\"proven\": \"yes\""),
        "result\\.json:\\d+: standing\\.proven must be true or false, but is the text \"yes\"\\.");
    assertRefused(
        earlier().replaceFirst("\"roles\": \\{", "\"roles\": 3, \"was\": {"),
        "result\\.json:\\d+: candidates\\[0]\\.roles must be as this tool writes it, but is 3\\.");
    assertRefused(
        earlier().replace("\"wanted\": 10,", ""),
        "result\\.json:\\d+: standing\\.wanted is missing\\.");
  }

  private static void assertRefused(String text, String line) {
    assertThatThrownBy(() -> ToldResult.of(source(text)))
        .isInstanceOfSatisfying(
            InputException.class,
            refused -> assertThat(refused.problems()).singleElement().asString().matches(line));
  }

  @Test
  void otherFilesAreNoResults() {
    assertThatThrownBy(() -> ToldResult.of(source("{\"inputs\": [], \"candidates\": []}")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("must be a result of recommend, but has no candidates, inputs and standing.");
    assertThatThrownBy(() -> ToldResult.of(source("{\"candidates\": [")))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("must be a result of this tool, but is not JSON.");
  }
}
