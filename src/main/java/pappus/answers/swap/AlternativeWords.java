package pappus.answers.swap;

import java.util.ArrayList;
import pappus.answers.build.Changes;
import pappus.change.Alternative;
import pappus.change.HardwareChange;
import pappus.document.Spoken;
import pappus.part.Part;

/** What an alternative asks of the builder, in words. */
public final class AlternativeWords {
  private AlternativeWords() {}

  /** The heading of those that ask as much. */
  public static String heading(Alternative.Grade grade) {
    return switch (grade) {
      case DROP_IN -> "Drop in: nothing else changes but where the pack sits";
      case OTHER_HARDWARE -> "With other screws, strap or small things";
      case OTHER_PARTS -> "With another part too";
      case BREAKS_LIMIT -> "Fit, but the quad then breaks a limit";
      case DOES_NOT_FIT -> "Do not fit";
    };
  }

  /** What is said of so many of them. */
  static String counted(Alternative.Grade grade) {
    return switch (grade) {
      case DROP_IN -> "drop in";
      case OTHER_HARDWARE -> "need other small things";
      case OTHER_PARTS -> "need another part";
      case BREAKS_LIMIT -> "break a limit";
      case DOES_NOT_FIT -> "do not fit";
    };
  }

  /** What changes with it, or what is in its way. */
  public static String what(Alternative one) {
    var words = new ArrayList<String>();
    if (!one.inStock()) {
      words.add("not in stock");
    }
    switch (one.grade()) {
      case BREAKS_LIMIT, DOES_NOT_FIT -> words.add(Changes.broken(one.swap()));
      case DROP_IN, OTHER_HARDWARE, OTHER_PARTS -> {
        one.swap()
            .alongside()
            .forEach(change -> words.add(change
                .after()
                .map(part -> change.role().label() + " " + part.name())
                .orElse("no " + change.role().label())));
        one.hardware().forEach(change -> words.add(hardware(change)));
        one.packMillimetres().ifPresent(moved -> {
          if (Math.abs(moved) >= Alternative.NOTED_MM) {
            words.add("pack %s mm %s"
                .formatted(Spoken.number(Math.abs(moved), 0), moved > 0 ? "forward" : "backward"));
          }
        });
      }
    }
    return String.join(", ", words);
  }

  private static String hardware(HardwareChange change) {
    var isMore = change.before().map(Part::id).equals(change.after().map(Part::id));
    return change
        .after()
        .map(Part::name)
        .map(name -> (isMore ? "more " : "") + change.label() + " " + name)
        .orElse("no " + change.label());
  }
}
