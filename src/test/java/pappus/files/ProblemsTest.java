package pappus.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemsTest {
  private static void add(Problems problems, String file, int from, int to) {
    for (var line = to; line >= from; line--) {
      problems.add(new Problem(file, line, "must be so."));
    }
  }

  @Test
  void endAtAHundredOfAFileAndCountTheOthers() {
    var problems = new Problems();
    add(problems, "a.json", 1, 1000);
    add(problems, "b.json", 1, 100);
    problems.add(new Problem("a.json", 7, "must be so."));

    var lines = problems.sorted().stream().map(Problem::toString).toList();
    assertThat(lines).hasSize(201);
    assertThat(lines.get(0)).isEqualTo("a.json:1: must be so.");
    assertThat(lines.get(99)).isEqualTo("a.json:100: must be so.");
    assertThat(lines.get(100)).isEqualTo("a.json: and 900 more.");
    assertThat(lines.get(200)).isEqualTo("b.json:100: must be so.");
  }

  @Test
  void areCountedOnceWhoeverPassesThemOn() {
    var inner = new Problems();
    add(inner, "a.json", 1, 150);
    var outer = new Problems();
    add(outer, "a.json", 151, 160);
    outer.addAll(inner);
    outer.count("a.json");
    var thrown = catchThrowableOfType(InputException.class, outer::throwIfAny);
    var again = new InputException(thrown.kind(), thrown.problems());

    assertThat(again.problems()).hasSize(101);
    assertThat(again.problems().get(100)).hasToString("a.json: and 61 more.");
    assertThat(again.getMessage()).endsWith("a.json:100: must be so.\na.json: and 61 more.");
  }

  @Test
  void thatAreOnlyCountedAreThereAllTheSame() {
    var counted = Problems.counted();
    assertThat(counted.isEmpty()).isTrue();
    assertThat(counted.isFull("a.json")).isTrue();
    counted.count("a.json");

    assertThat(counted.isEmpty()).isFalse();
    assertThat(counted.sorted()).isEqualTo(List.of(Problem.rest("a.json", 1)));
  }
}
