package pappus.spreadsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Builds a JSON object out of values at paths such as {@code positions[0].name}. */
final class JsonObject {
  private static final Pattern ELEMENT = Pattern.compile("(.*)\\[([0-9]+)\\]");

  private JsonObject() {}

  /** Sets a value; objects and lists around it are made, and places of a list before it are empty objects. */
  static void put(Map<String, Object> object, String path, Object value) {
    var steps = path.split("\\.", -1);
    var at = object;
    for (var i = 0; i < steps.length - 1; i++) {
      at = inner(at, steps[i]);
    }
    at.put(steps[steps.length - 1], value);
  }

  /** Sets a value where there is none; objects around it are made. */
  static void putNew(Map<String, Object> object, String path, Object value) {
    var steps = path.split("\\.", -1);
    var at = object;
    for (var i = 0; i < steps.length - 1; i++) {
      at = inner(at, steps[i]);
    }
    at.putIfAbsent(steps[steps.length - 1], value);
  }

  /** Sets a value where there is none; not inside an object that is not there. */
  static void putIfAbsent(Map<String, Object> object, String path, Object value) {
    var steps = path.split("\\.", -1);
    var at = object;
    for (var i = 0; i < steps.length - 1; i++) {
      if (!at.containsKey(steps[i])) {
        return;
      }
      at = inner(at, steps[i]);
    }
    at.putIfAbsent(steps[steps.length - 1], value);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> inner(Map<String, Object> object, String step) {
    var element = ELEMENT.matcher(step);
    if (!element.matches()) {
      return (Map<String, Object>)
          object.computeIfAbsent(step, key -> new LinkedHashMap<String, Object>());
    }
    var list = (List<Map<String, Object>>)
        object.computeIfAbsent(element.group(1), key -> new ArrayList<Map<String, Object>>());
    var index = Integer.parseInt(element.group(2));
    while (list.size() <= index) {
      list.add(new LinkedHashMap<>());
    }
    return list.get(index);
  }
}
