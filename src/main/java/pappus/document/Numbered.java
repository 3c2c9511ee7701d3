package pappus.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Things by number in the order in which they came, each once: a page that has a thing often holds it once. */
public final class Numbered {
  private final Map<Object, Integer> numbers = new LinkedHashMap<>();

  /** The number of a thing, from 0; a thing that was not there before gets the next. */
  public int of(Object thing) {
    return numbers.computeIfAbsent(thing, fresh -> numbers.size());
  }

  /** All of them by number. */
  public List<Object> all() {
    return List.copyOf(numbers.keySet());
  }
}
