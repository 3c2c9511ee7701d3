package pappus.compatibility;

import java.util.List;
import java.util.function.Function;
import pappus.quantity.Sentence;

/** What one rule says about one build. */
public sealed interface Verdict {
  /** The parts fit, and there is nothing to note. */
  Verdict FITS = new Fits(List.of());

  /** Java 17 cannot switch over types; with this method the compiler still finds missing cases. */
  <R> R match(Function<Fits, R> fits, Function<Clashes, R> clashes, Function<Unknown, R> unknown);

  /** The parts fit, with something to note. */
  static Verdict fitsBut(String template, Object... values) {
    return new Fits(List.of(Sentence.of(template, values)));
  }

  /** The parts fit, with what there is to note. */
  static Verdict fitsWith(List<Sentence> notes) {
    return notes.isEmpty() ? FITS : new Fits(notes);
  }

  /** The parts do not fit. */
  static Verdict clashes(String template, Object... values) {
    return new Clashes(Sentence.of(template, values));
  }

  /** The catalogue does not say. */
  static Verdict unknown(String template, Object... values) {
    return new Unknown(Sentence.of(template, values));
  }

  /**
   * The parts fit.
   *
   * @param notes what the builder should know all the same
   */
  record Fits(List<Sentence> notes) implements Verdict {
    public Fits {
      notes = List.copyOf(notes);
    }

    @Override
    public <R> R match(
        Function<Fits, R> fits, Function<Clashes, R> clashes, Function<Unknown, R> unknown) {
      return fits.apply(this);
    }
  }

  /**
   * The parts do not fit.
   *
   * @param reason a full sentence with both numbers
   */
  record Clashes(Sentence reason) implements Verdict {
    @Override
    public <R> R match(
        Function<Fits, R> fits, Function<Clashes, R> clashes, Function<Unknown, R> unknown) {
      return clashes.apply(this);
    }
  }

  /**
   * The catalogue does not say. A scenario keeps such a build with a note, or leaves it out.
   *
   * @param missingFact what has to be looked up
   */
  record Unknown(Sentence missingFact) implements Verdict {
    @Override
    public <R> R match(
        Function<Fits, R> fits, Function<Clashes, R> clashes, Function<Unknown, R> unknown) {
      return unknown.apply(this);
    }
  }
}
