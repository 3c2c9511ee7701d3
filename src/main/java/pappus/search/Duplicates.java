package pappus.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import pappus.assessment.Assessor;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/**
 * Parts that differ in nothing but who makes them and what they are called: the same ware under several brands. One
 * stands for all, since ten brands of every part would make ten million builds of each, all equal.
 */
final class Duplicates {
  private Duplicates() {}

  /**
   * Parts that may fill a role, each with those that it stands for.
   *
   * @param parts in the order of ids
   */
  static Map<Part, List<Part>> of(Role role, List<Part> parts, Assessor assessor) {
    var named = named(assessor);
    // Few parts share even mass and price: only those are looked at closely.
    var alike = new HashMap<List<Object>, Integer>();
    parts.forEach(part -> alike.merge(List.of(part.mass(), part.price()), 1, Integer::sum));
    var firsts = new HashMap<List<Object>, Part>();
    var twins = new LinkedHashMap<Part, List<Part>>();
    for (var part : parts) {
      var isAlone = Objects.equals(alike.get(List.of(part.mass(), part.price())), 1);
      var first = isAlone || named.contains(part.id())
          ? part
          : firsts.computeIfAbsent(looks(role, part, assessor), fresh -> part);
      var others = twins.computeIfAbsent(first, fresh -> new ArrayList<>());
      if (first != part) {
        others.add(part);
      }
    }
    return twins;
  }

  /** What the scenario says something of by name is not like others. */
  private static Set<String> named(Assessor assessor) {
    var scenario = assessor.scenario();
    var named = new TreeSet<String>();
    named.addAll(scenario.choice().fixedIds());
    named.addAll(scenario.choice().ownedIds());
    assessor
        .aboard()
        .ifPresent(quad -> quad.build().parts().values().forEach(part -> named.add(part.id())));
    scenario.waived().forEach(waiver -> named.addAll(waiver.parts()));
    return named;
  }

  /** All of a part but its id, maker, name and source, and what it costs the builder. */
  private static List<Object> looks(Role role, Part part, Assessor assessor) {
    var names = "id=%s, maker=%s, name=%s, ".formatted(part.id(), part.maker(), part.name());
    var source = "source=" + part.source();
    return List.of(
        part.toString().replace(names, "").replace(source, ""),
        assessor.prospects().begun(Build.empty().with(role, part)).cents());
  }
}
