package pappus.scenario;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A field that a scenario file may write shorter than the record has it: it is completed before it is read. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD})
public @interface Shortened {
  /** How. */
  Way value();

  /** How a field is shortened. */
  enum Way {
    /** It may be left out. */
    LEFT_OUT,
    /** It may be a plain number in place of an object. */
    NUMBER,
    /** It may be the name of a record of the catalogue in place of an object. */
    NAME
  }
}
