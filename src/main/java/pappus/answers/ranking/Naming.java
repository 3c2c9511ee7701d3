package pappus.answers.ranking;

import java.util.List;
import pappus.assessment.Assessment;
import pappus.ranking.Candidate;
import pappus.ranking.Picks;

/** How builds are told apart in a line: by what they are known as already, or by what they have otherwise. */
record Naming(List<Candidate> rows, Picks picks) {
  Naming {
    rows = List.copyOf(rows);
  }

  /** What a build is known as, a pick or a row; empty if it is neither. */
  String known(Assessment build) {
    return picks.of(build).map(pick -> pick.kind().word()).orElseGet(() -> row(build));
  }

  /** The row that a build is, in words; empty if it is none. */
  String row(Assessment build) {
    for (var i = 0; i < rows.size(); i++) {
      if (rows.get(i).assessment().build().equals(build.build())) {
        return "row " + (i + 1);
      }
    }
    return "";
  }
}
