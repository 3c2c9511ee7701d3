package pappus.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Things of which the same is to be said, told together. */
public final class Alike {
  private static final int MOST_NAMED = 3;

  /** In the place of a thing's own id. */
  private static final String ITSELF = "\uE000";

  private Alike() {}

  /**
   * Those of which the same is said, or the same but for numbers; what most of them share comes first. A few of them are
   * named, and what is said of the first stands for all.
   *
   * @param said by id what is said of it
   */
  public static List<String> briefly(Map<String, String> said) {
    return grouped(said, true).entrySet().stream()
        .sorted(Comparator.comparingInt(group -> -group.getValue().size()))
        .map(group -> {
          var ids = group.getValue();
          var more = ids.size() - MOST_NAMED;
          var isSame = ids.stream().map(id -> itself(id, said)).distinct().count() == 1;
          return (more <= 1
                  ? String.join(", ", ids)
                  : String.join(", ", ids.subList(0, MOST_NAMED)) + " and " + more + " more")
              + (isSame ? ": " : ", such as: ")
              + (isSame ? text(ids, said) : said.get(ids.get(0)));
        })
        .toList();
  }

  /**
   * Those of which the very same is said, all named.
   *
   * @param said by id what is said of it
   */
  public static List<String> whole(Map<String, String> said) {
    return grouped(said, false).values().stream()
        .map(ids -> String.join(", ", ids) + ": " + text(ids, said))
        .toList();
  }

  private static String text(List<String> ids, Map<String, String> said) {
    return itself(ids.get(0), said).replace(ITSELF, ids.size() == 1 ? ids.get(0) : "…");
  }

  private static String itself(String id, Map<String, String> said) {
    return said.getOrDefault(id, "").replace(id, ITSELF);
  }

  private static Map<String, List<String>> grouped(
      Map<String, String> said, boolean isButForNumbers) {
    var groups = new LinkedHashMap<String, List<String>>();
    for (var id : said.keySet()) {
      var text = itself(id, said);
      groups
          .computeIfAbsent(
              isButForNumbers ? text.replaceAll("[0-9]+(\\.[0-9]+)?", "0") : text,
              fresh -> new ArrayList<>())
          .add(id);
    }
    return groups;
  }
}
