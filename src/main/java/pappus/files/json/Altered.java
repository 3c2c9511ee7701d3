package pappus.files.json;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Records with some of their fields changed, held to all that a record from a file is held to. */
public final class Altered {
  private Altered() {}

  /**
   * A record with other values in some of its fields.
   *
   * @param changes values by path, such as {@code massCap.grams}: records, lists, texts, numbers; null leaves the
   *     field out
   * @throws IllegalArgumentException naming the path if the record refuses a value, or has no such field
   */
  public static <T> T record(Class<T> record, T original, Map<String, ?> changes) {
    var root = (ObjectNode) JsonMapper.shared().readTree(JsonText.of(original));
    changes.forEach((path, value) -> set(root, path, value));
    var bytes = root.toString().getBytes(UTF_8);
    try {
      return StrictMapper.bind(StrictMapper.readerFor(record), record, bytes, 0, bytes.length);
    } catch (UnrecognizedPropertyException unknown) {
      throw new IllegalArgumentException(path(unknown) + ": is no field here.", unknown);
    } catch (JacksonException refused) {
      throw new IllegalArgumentException(
          told(changes.keySet().stream().sorted().toList(), reason(refused)), refused);
    }
  }

  /** What records say begins with the name of a field or its path: the path says as much, and once. */
  private static String told(List<String> paths, String reason) {
    for (var path : paths) {
      for (var name : List.of(path, path.substring(path.lastIndexOf('.') + 1))) {
        if (reason.startsWith(name + " ")) {
          return path + reason.substring(name.length());
        }
      }
    }
    return String.join(", ", paths) + ": " + reason;
  }

  private static void set(ObjectNode root, String path, @Nullable Object value) {
    var names = List.of(path.split("\\."));
    var at = root;
    for (var name : names.subList(0, names.size() - 1)) {
      at = at.get(name) instanceof ObjectNode inner ? inner : at.putObject(name);
    }
    var last = names.get(names.size() - 1);
    if (value == null) {
      at.remove(last);
    } else {
      at.set(last, JsonMapper.shared().readTree(JsonText.of(value)));
    }
  }

  private static String path(JacksonException refused) {
    return refused.getPath().stream()
        .map(step -> step.getPropertyName() == null
            ? String.valueOf(step.getIndex())
            : step.getPropertyName())
        .collect(Collectors.joining("."));
  }

  /** What the record itself says, which knows the range. */
  private static String reason(JacksonException refused) {
    for (Throwable cause = refused; cause != null; cause = cause.getCause()) {
      if (cause instanceof IllegalArgumentException) {
        return String.valueOf(cause.getMessage());
      }
    }
    return refused.getOriginalMessage();
  }
}
