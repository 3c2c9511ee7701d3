package pappus.answers.ranking;

import java.util.ArrayList;
import java.util.List;
import pappus.answers.build.BuildLines;
import pappus.assessment.Assessment;
import pappus.part.Role;
import pappus.ranking.Candidate;
import pappus.ranking.Picks;

/** How builds are told apart in a line: by what they are known as already, or by what they have otherwise. */
record Naming(List<Candidate> rows, Picks picks) {
  private static final int MOST_ROLES = 2;

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

  /** The parts of a build that another has not: main parts by name, or else the roles of the accessories. */
  static List<String> otherwise(Assessment build, Assessment than) {
    var names = new ArrayList<String>();
    for (var role : Role.MAIN) {
      var mine = build.build().part(role);
      if (!mine.equals(than.build().part(role))) {
        mine.ifPresent(part -> names.add(part.name()));
      }
    }
    return names.isEmpty() ? List.of(accessories(build, than)) : names;
  }

  /**
   * As many of some names as there is room for, and how many more there are.
   *
   * @param room columns
   */
  static String within(List<String> names, int room) {
    var told = names.size();
    while (told > 1 && text(names, told).length() > room) {
      told--;
    }
    return text(names, told);
  }

  private static String text(List<String> names, int told) {
    var left = names.size() - told;
    return String.join(", ", names.subList(0, told)) + (left == 0 ? "" : " +" + left);
  }

  private static String accessories(Assessment build, Assessment than) {
    var roles = new ArrayList<String>();
    for (var role : Role.values()) {
      if (!build.build().part(role).equals(than.build().part(role))) {
        roles.add(role.label());
      }
    }
    return roles.size() > MOST_ROLES
        ? "%s accessories".formatted(roles.size())
        : roles.isEmpty() ? BuildLines.names(build) : "another " + String.join(", ", roles);
  }
}
