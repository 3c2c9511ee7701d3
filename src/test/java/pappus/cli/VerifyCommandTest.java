package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.shop.SmallShop;

/** Whether results are confirmed that are right, and no others. */
class VerifyCommandTest {
  @TempDir
  private Path folder;

  private Path result;

  @BeforeEach
  void recommend() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    recommend("auto");
  }

  private void recommend(String search) {
    var typed = CommandRun.typed(folder);
    var run = CommandRun.recommend(typed, "--force", "--search", search);
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    result = typed.resolve("out/result.json");
  }

  @Test
  void confirmsWhatIsRight() {
    var run = CommandRun.of("verify", result.toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .matches(
            "Confirmed: the [0-9]+ rows are as told, and trying every build finds none that belongs"
                + " among them\\. [0-9,]+ combinations looked at, [0-9,]+ builds assessed\\.\n");
  }

  @Test
  void isOneDocumentToo() {
    var run = CommandRun.of("verify", result.toString(), "--format", "json");

    assertThat(run.json().path("status").asString()).isEqualTo("confirmed");
    assertThat(run.json().path("against").size()).isZero();
    assertThat(run.json().path("motorsDone").asInt())
        .isEqualTo(run.json().path("motors").asInt());
  }

  @Test
  void findsTheRowThatWasTakenOut() throws IOException {
    var text = Files.readString(result);
    var first = text.indexOf("\"rank\": 1,");
    var second = text.indexOf("\"rank\": 2,");
    var start = text.lastIndexOf('{', first);
    Files.writeString(
        result, text.substring(0, start) + text.substring(text.lastIndexOf('{', second)));

    var run = CommandRun.of("verify", result.toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains(" is not in it and should be: ").contains("Not confirmed. ");
  }

  @Test
  void findsMinutesThatWereChanged() throws IOException {
    var text = Files.readString(result);
    Files.writeString(result, text.replaceFirst("\"milliseconds\": [0-9]+", "\"milliseconds\": 1"));

    var run = CommandRun.of("verify", result.toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("Row 1 flies ").contains(" s, but is told to fly 0.001 s.");
  }

  @Test
  void namesAFileThatHasChanged() throws IOException {
    Files.writeString(folder.resolve("marsh.json"), SmallShop.scenarioText(" "));

    var run = CommandRun.of("verify", result.toString());

    assertThat(run.out()).contains("marsh.json has changed since, or was not read: ");
  }

  @Test
  void saysWhatIsStillToBeTried() {
    var run = CommandRun.of("verify", result.toString(), "--effort", "1");

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("Not confirmed yet: ").contains(" motors tried so far. ");
  }

  @Tag("slow")
  @Test
  void hasNothingToConfirmWhereNothingIsClaimed() {
    recommend("heuristic");

    var run = CommandRun.of("verify", result.toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.NO);
    assertThat(run.out()).contains("The result claims no proof, so there is none to confirm.");
  }

  @Test
  void refusesWhatIsNoResult() {
    var run =
        CommandRun.of("verify", CommandRun.typed(folder).resolve("marsh.json").toString());

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains(
            "marsh.json: must be a result of recommend, but has no candidates, inputs and standing.");
  }
}
