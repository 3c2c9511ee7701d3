package pappus.catalog;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import pappus.part.Part;
import pappus.quantity.Money;

/** A part at another price. Every kind is a record, so that one copy serves all. */
final class Repriced {
  private Repriced() {}

  static Part of(Part part, Money price) {
    var record = part.getClass();
    var components = record.getRecordComponents();
    try {
      var values = new Object[components.length];
      for (var i = 0; i < components.length; i++) {
        values[i] = components[i].getName().equals("price")
            ? price
            : components[i].getAccessor().invoke(part);
      }
      return record
          .getDeclaredConstructor(
              Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new))
          .newInstance(values);
    } catch (InvocationTargetException
        | NoSuchMethodException
        | InstantiationException
        | IllegalAccessException e) {
      throw new IllegalStateException("Every part is a public record with a price.", e);
    }
  }
}
