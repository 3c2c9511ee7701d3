package pappus.search.timefold;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.assessment.Supply;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.scenario.reading.ScenarioReader;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.LocalSearch;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.shop.Siblings;

/** Changes on a catalogue of a shop's size against the proof. */
@Tag("slow")
class ShopSizeTest {
  private static final int OF_EACH_KIND = 300;
  private static final long MOVES = 16_000;
  private static final int ROWS = 3;

  /** Share of the proven best that changes may miss. */
  private static final double MISSED = 0.04;

  @TempDir
  private Path folder;

  @Test
  void changesComeNearTheProof() throws IOException {
    Siblings.write(folder.resolve("catalogue"), OF_EACH_KIND, 1, false);
    var read = CatalogReader.read(List.of(CatalogFolder.of(folder.resolve("catalogue"))));
    var scenario = ScenarioReader.read(
            Path.of("scenarios", "bird-survey.json"), InputStream.nullInputStream())
        .scenario();
    var question = Question.of(read.catalog(), Supply.of(read).assessor(scenario));
    var proven =
        new ExactSearch(question, 2).run(ROWS, Long.MAX_VALUE, new Incumbents(), done -> {});
    var incumbents = new Incumbents();

    var ending = new TimefoldSearch(question, MOVES).run(incumbents, done -> {});
    new LocalSearch(question, incumbents).improve(ROWS, () -> false);

    assertThat(ending).isEqualTo(Ending.MOVES);
    var best = proven.rows().get(0).assessment().objective();
    assertThat(incumbents.bestFirst().get(0).objective())
        .isBetween((long) ((1 - MISSED) * best), best);
  }
}
