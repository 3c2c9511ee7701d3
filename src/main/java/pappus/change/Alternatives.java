package pappus.change;

import java.util.Comparator;
import java.util.List;
import pappus.assessment.Assessment;
import pappus.catalog.Catalog;
import pappus.part.Antenna;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;

/** What could take the place of a part in a quad that is there. */
public final class Alternatives {
  private Alternatives() {}

  /**
   * Every other part of the catalogue for a role that meets the scenario's wishes, whatever it fixes or allows there,
   * but for what it excludes: what asks least of the builder first, then what flies longest.
   *
   * @param base the quad
   */
  public static List<Alternative> of(
      Assessment base, Role role, Catalog catalog, Question question) {
    var swapper = new Swapper(question);
    var scenario = question.assessor().scenario();
    var excluded = scenario.choice().excludedIds();
    var where = scenario.whereOrAny();
    return catalog.parts().stream()
        .filter(part -> serves(part, role, base)
            && !excluded.contains(part.id())
            && where.admits(role, part)
            && !base.build().part(role).map(Part::id).filter(part.id()::equals).isPresent())
        .map(part -> Alternative.of(
            swapper.swap(base, role, part),
            question.assessor().purse().canHave(part, base.build().count(role))))
        .sorted(Comparator.comparing(Alternative::grade)
            .thenComparing(one -> one.swap().assessment(), Incumbents.BEST_FIRST)
            .thenComparing(one -> one.swap().part().id()))
        .toList();
  }

  /** An antenna does not say what it is for: the port's band does. */
  private static boolean serves(Part part, Role role, Assessment base) {
    if (!(part instanceof Antenna antenna)) {
      return !part.fills().isEmpty() && part.fills().get(0) == role;
    }
    return base.build().port(role).filter(port -> port.band() == antenna.band()).isPresent();
  }
}
