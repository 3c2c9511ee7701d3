package pappus.part;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.Map;

/**
 * A part with other values in some of its fields, of which nothing is assumed any more. Every kind is a record, so that
 * one copy serves all.
 */
public final class PartCopy {
  private PartCopy() {}

  /**
   * A copy.
   *
   * @param values by name of the component; each of its type
   * @throws IllegalArgumentException if the record refuses one
   */
  public static <P extends Part> P with(P part, Map<String, ?> values) {
    var record = part.getClass();
    var components = record.getRecordComponents();
    try {
      var all = new Object[components.length];
      for (var i = 0; i < components.length; i++) {
        var name = components[i].getName();
        all[i] = values.containsKey(name)
            ? values.get(name)
            : name.equals("assumed")
                ? Assumed.without(part.assumed(), values.keySet())
                : components[i].getAccessor().invoke(part);
      }
      @SuppressWarnings("unchecked")
      var copy = (P) record
          .getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new))
          .newInstance(all);
      return copy;
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refused) {
        throw refused;
      }
      throw new IllegalStateException("A record failed on its own values.", e);
    } catch (NoSuchMethodException | InstantiationException | IllegalAccessException e) {
      throw new IllegalStateException("Every part is a public record.", e);
    }
  }
}
