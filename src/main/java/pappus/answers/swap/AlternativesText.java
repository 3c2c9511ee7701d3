package pappus.answers.swap;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import pappus.answers.build.BuildLines;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.assessment.Assessment;
import pappus.change.Alternative;
import pappus.change.Alternative.Grade;
import pappus.document.Alike;
import pappus.document.Excerpt;
import pappus.document.Lines;
import pappus.document.Spoken;
import pappus.part.Part;
import pappus.part.Role;

/** What could take the place of a part, for a terminal: what asks least first, and of that what serves best. */
final class AlternativesText {
  /** Where names begin. */
  private static final int NAMES = 36;

  private final Assessment base;
  private final Role role;
  private final List<Alternative> alternatives;
  private final Figures figures;

  AlternativesText(Assessment base, Role role, List<Alternative> alternatives, Figures figures) {
    this.base = base;
    this.role = role;
    this.alternatives = alternatives;
    this.figures = figures;
  }

  /**
   * Says it.
   *
   * @param foot lines that follow
   * @param all whether every part is told
   */
  void say(Lines lines, int width, int foot, boolean all) {
    var there = base.build().part(role);
    lines.say("In place of %s as %s of %s: %s."
        .formatted(
            there.map(part -> part.name() + " [" + part.id() + "]").orElse("nothing"),
            role.label(),
            BuildLines.names(base),
            counts()));
    if (!base.isFeasible()) {
      lines.say("As it is, this quad breaks %s; what follows comes on top of that."
          .formatted(Changes.allBroken(base)));
    }
    lines.blank().whole(figures.heading("to buy") + "   " + figures.unit());
    lines.row(row(base, "", there.map(Part::id).orElse("nothing") + ", as it is"), NAMES);
    var excerpt = new Excerpt(width);
    for (var grade : Grade.values()) {
      var some = alternatives.stream().filter(one -> one.grade() == grade).toList();
      if (!some.isEmpty()) {
        excerpt.add(
            AlternativeWords.heading(grade) + (grade == Grade.DOES_NOT_FIT ? ", by reason" : ""),
            grade == Grade.DOES_NOT_FIT
                ? reasons(some, all)
                : some.stream().map(this::row).toList(),
            grade == Grade.DOES_NOT_FIT ? 2 : NAMES,
            true);
      }
    }
    if (all) {
      excerpt.sayAll(lines);
    } else {
      excerpt.sayWithin(Excerpt.MOST_LINES - lines.size() - foot - 3, lines);
      if (excerpt.isShortened()) {
        lines.blank().say("--all shows every part.");
      }
    }
  }

  private String counts() {
    var counts = new ArrayList<String>();
    for (var grade : Grade.values()) {
      var count = alternatives.stream().filter(one -> one.grade() == grade).count();
      if (count > 0) {
        counts.add(count + " " + AlternativeWords.counted(grade));
      }
    }
    return counts.isEmpty() ? "no other part" : String.join(", ", counts);
  }

  private String row(Alternative one) {
    var assessment = one.swap().assessment();
    var what =
        one.grade() == Grade.BREAKS_LIMIT ? Changes.why(one.swap()) : AlternativeWords.what(one);
    return row(
        assessment,
        Spoken.price(one.cents(), BuildLines.currency(assessment)),
        one.swap().part().id() + (what.isEmpty() ? "" : ", " + what));
  }

  private String row(Assessment build, String price, String what) {
    return figures.of(build, price) + " %1s %s".formatted(Figures.mark(build), what);
  }

  /** Why parts do not fit, the same reason once. */
  private static List<String> reasons(List<Alternative> some, boolean all) {
    var reasons = new LinkedHashMap<String, String>();
    some.forEach(one -> reasons.put(one.swap().part().id(), Changes.why(one.swap())));
    return all ? Alike.whole(reasons) : Alike.briefly(reasons);
  }
}
