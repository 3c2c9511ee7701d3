package pappus.compatibility;

import java.util.List;
import java.util.Optional;
import pappus.part.Part;

/**
 * How a part goes with others.
 *
 * @param part the part
 * @param grade how well
 * @param adapters what makes it fit, where it does not by itself
 * @param text what there is to say, a sentence each; empty for what fits directly
 */
public record Match(Part part, Grade grade, List<Part> adapters, List<String> text) {
  public Match {
    adapters = List.copyOf(adapters);
    text = List.copyOf(text);
  }

  /** How well two parts go together. */
  public enum Grade {
    /** As they come. */
    DIRECT,
    /** With a part between them that the catalogue has. */
    ADAPTER,
    /** With something that the builder should know. */
    WARNING,
    /** Not at all. */
    NOT,
    /** The catalogue does not say enough. */
    UNKNOWN
  }

  /** The first adapter, if one is needed. */
  public Optional<Part> adapter() {
    return adapters.stream().findFirst();
  }
}
