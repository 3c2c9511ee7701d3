package pappus.answers.ranking;

import java.util.List;
import java.util.stream.Stream;
import pappus.answers.drawing.Plan;
import pappus.document.Chart;
import pappus.document.Table;

/**
 * One candidate on a page.
 *
 * @param number its rank, from 1
 * @param names of its main parts
 * @param figures what matters most, in words
 * @param says why it stands there, and what to know
 * @param bars what it weighs and where its power goes
 * @param curves what it does in the air
 * @param plan from above, to scale
 * @param parts what it is built from
 * @param margins room to everything that bounds it
 * @param cautions that go with it
 */
public record CandidateView(
    int number,
    String names,
    String figures,
    List<CandidateWords.Said> says,
    List<Chart> bars,
    List<Chart> curves,
    Plan plan,
    Table parts,
    Table margins,
    List<String> cautions) {
  public CandidateView {
    says = List.copyOf(says);
    bars = List.copyOf(bars);
    curves = List.copyOf(curves);
    cautions = List.copyOf(cautions);
  }

  /** Every chart of it. */
  Stream<Chart> charts() {
    return Stream.concat(bars.stream(), curves.stream());
  }
}
