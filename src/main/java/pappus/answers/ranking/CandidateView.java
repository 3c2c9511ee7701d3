package pappus.answers.ranking;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.answers.drawing.Plan;
import pappus.answers.drawing.Rings;
import pappus.document.Chart;
import pappus.document.Table;

/**
 * One build on a page: a pick, a candidate, or both.
 *
 * @param anchor where it stands in the page
 * @param title what it is: "Longest", "Row 3"
 * @param number of it among the page's builds
 * @param names of its main parts
 * @param figures what matters most, in words
 * @param says why it stands there, and what to know
 * @param mass what it weighs
 * @param power where its power goes
 * @param curves what it does in the air
 * @param plan from above, to scale
 * @param rings how far its links reach; absent where that does not matter or nothing is known of them
 * @param parts what it is built from
 * @param rooms to everything that bounds it
 */
public record CandidateView(
    String anchor,
    String title,
    int number,
    String names,
    String figures,
    List<CandidateWords.Said> says,
    Chart mass,
    Chart power,
    List<Chart> curves,
    Plan plan,
    @Nullable Rings rings,
    Table parts,
    List<BuildTables.Room> rooms) {
  public CandidateView {
    says = List.copyOf(says);
    curves = List.copyOf(curves);
    rooms = List.copyOf(rooms);
  }

  /** Every chart of it. */
  Stream<Chart> charts() {
    return Stream.concat(Stream.of(mass, power), curves.stream());
  }
}
