package pappus.part;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** How shops print a fact: a column of a spreadsheet may be titled so, and a cell is read so. It stands in the schema. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface AlsoSaid {
  /** The title, and examples of a cell with their readings. */
  String value();
}
