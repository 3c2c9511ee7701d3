package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.assessment.Assessor;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.compatibility.Rules;
import pappus.fitting.Stock;
import pappus.scenario.reading.ScenarioReader;
import pappus.search.Ending;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.Row;
import pappus.shop.Siblings;

/**
 * What a proof costs in nodes, assessments and prepared numbers, which no clock can tell apart from other work: a tenth
 * more is a bound that got loose, or a table that got larger. The catalogues are made of the shop's: when it gained
 * drawings of frames, 5 000 of each kind came to 249 183 nodes in place of the 154 596 that the same code takes of those
 * before.
 */
@Tag("slow")
class SearchCountsTest {
  private static final double MORE = 1.1;

  @TempDir
  private Path folder;

  private Question question(int ofEachKind) throws IOException {
    Siblings.write(folder.resolve("catalogue"), ofEachKind, 1, false);
    var read = CatalogReader.read(List.of(CatalogFolder.of(folder.resolve("catalogue"))));
    var scenario = ScenarioReader.read(
            Path.of("scenarios", "bird-survey.json"), InputStream.nullInputStream())
        .scenario();
    var stock = Stock.of(List.copyOf(read.catalog().parts()));
    return Question.of(read.catalog(), new Assessor(scenario, stock, Rules.ALL));
  }

  @ParameterizedTest
  @CsvSource({"120, 9928, 63, 169964", "1000, 55139, 61, 1444204", "5000, 249183, 60, 7236204"})
  void aProofCostsNoMoreThanItDid(int ofEachKind, long nodes, long assessed, long numbers)
      throws IOException {
    var question = question(ofEachKind);
    var incumbents = new Incumbents();
    var search = new ExactSearch(question, 2);

    var found = search.run(10, Long.MAX_VALUE, incumbents, done -> {});

    assertThat(found.ending()).isEqualTo(Ending.PROVEN);
    assertThat(found.rows().size()).isEqualTo(10);
    assertThat(found.rows().stream().filter(Row::isCutShort).count())
        .as("cut short")
        .isZero();
    assertThat(found.nodes()).as("nodes").isLessThan((long) (MORE * nodes));
    assertThat(incumbents.assessed()).as("assessed").isLessThan((long) (MORE * assessed));
    assertThat(numbers(question)).as("numbers").isLessThan((long) (MORE * numbers));
    assertThat(search.closed()).containsOnlyKeys(Closings.Reason.values());
  }

  /** In the relaxations of all boxes: two to a part but for one. */
  private static long numbers(Question question) {
    var goods = new Goods(question);
    var frames = new Frames(goods);
    var boxes = new Boxes(goods, frames, new KitRelaxations(goods));
    var motors = boxes.motors();
    var propellers = boxes.propellers();
    var numbers = (2L * motors.size() - 1) * 2 * motors.relaxation().dragNm().size()
        + (2L * propellers.size() - 1) * 5 * propellers.relaxation().shaft().size();
    for (var batteries : boxes.batteries()) {
      numbers += (2L * batteries.size() - 1)
          * 4
          * batteries.relaxation().drain().ohms().size();
    }
    return numbers;
  }
}
