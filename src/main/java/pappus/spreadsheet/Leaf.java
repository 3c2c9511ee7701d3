package pappus.spreadsheet;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import pappus.files.json.SchemaFields;

/**
 * A field that one cell can hold.
 *
 * @param path of the field in its record; {@code []} stands for the place in a list
 * @param type as {@link SchemaFields.Field#type()}
 * @param isRequired whether every record has it
 * @param name words of a title, without a unit
 * @param measure what its number is in, if in anything
 * @param isMoney whether the unit of its title is a currency
 */
record Leaf(
    String path,
    String type,
    boolean isRequired,
    String name,
    Optional<Measure> measure,
    boolean isMoney) {
  private static final String AMOUNT = ".amount";
  private static final Pattern HUMP =
      Pattern.compile("(?<=[a-z0-9])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])");
  private static final String SHOWN_CURRENCY = "EUR";

  static Leaf of(SchemaFields.Field field, boolean isRequired) {
    var path = field.path();
    if (path.endsWith(AMOUNT)) {
      var name = name(path.substring(0, path.length() - AMOUNT.length()), Optional.empty());
      return new Leaf(path, field.type(), isRequired, name, Optional.empty(), true);
    }
    var last = words(path.substring(path.lastIndexOf('.') + 1));
    var measure = field.type().contains("number") ? Measure.in(last) : Optional.<Measure>empty();
    return new Leaf(path, field.type(), isRequired, name(path, measure), measure, false);
  }

  /** What a column is best called; places in lists are the first. */
  String title() {
    var unit = isMoney ? SHOWN_CURRENCY : measure.map(Measure::symbol).orElse("");
    return unit.isEmpty() ? name : "%s (%s)".formatted(name, unit);
  }

  /** The path with places in lists, from 0. */
  String path(List<Integer> places) {
    var at = path;
    for (var place : places) {
      at = at.replaceFirst("\\[\\]", "[" + place + "]");
    }
    return at;
  }

  /** How many places in lists a title must name. */
  int depth() {
    return path.split("\\[\\]", -1).length - 1;
  }

  /** Letters alone, small, with # for a number: so many ways to type a title are one. */
  static String key(String title) {
    return Normalizer.normalize(title, Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[0-9]+", "#")
        .replaceAll("[^a-z#]", "");
  }

  private static String name(String path, Optional<Measure> measure) {
    var words = new ArrayList<String>();
    var steps = path.split("\\.", -1);
    for (var i = 0; i < steps.length; i++) {
      var own = words(steps[i].replace("[]", ""));
      // A list is named by the unit of what is in it; that of the field itself goes behind the
      // title.
      var named = i == steps.length - 1 ? measure : Measure.in(own);
      if (named.isPresent()) {
        own = named.get().without(own);
        var quantity = named.get().quantity();
        if (own.isEmpty() && (words.isEmpty() || !words.get(words.size() - 1).equals(quantity))) {
          own = List.of(quantity);
        }
      }
      words.addAll(own);
      if (steps[i].endsWith("[]")) {
        words.add("1");
      }
    }
    return String.join(" ", words);
  }

  private static List<String> words(String step) {
    return HUMP.splitAsStream(step)
        .map(word -> word.toLowerCase(Locale.ROOT))
        .collect(Collectors.toCollection(ArrayList::new));
  }
}
