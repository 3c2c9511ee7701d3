package pappus.answers.whatif;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pappus.document.Spoken;
import pappus.whatif.relax.ClashCount;
import pappus.whatif.relax.Demand;
import pappus.whatif.relax.Relaxation;
import pappus.whatif.relax.SmallestRelaxation;

/** What stands in the way of a scenario, in sentences. */
public final class RelaxWords {
  private RelaxWords() {}

  /**
   * Demands in conflict.
   *
   * @param isProof whether what is called impossible was searched to the end
   */
  public static String conflict(List<Demand> conflict, boolean isProof) {
    if (conflict.isEmpty() && !isProof) {
      return "No build was found, even with nothing asked for; that is not proven.";
    }
    if (conflict.isEmpty()) {
      return "No build goes together, even with nothing asked for: the parts themselves do not fit.";
    }
    var said = conflict.size() == 1
        ? "One demand alone rules out every build, even with nothing else asked for: "
        : "These demands together rule out every build, even with nothing else asked for; any one of them fewer would leave a build: ";
    return (isProof ? said : "In what was searched: " + decapitalised(said))
        + conflict.stream().map(RelaxWords::text).collect(Collectors.joining("; "))
        + ".";
  }

  private static String decapitalised(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** What is to be said of a build that comes with a change; empty where it is proven the best. */
  public static String notBest(boolean isBest) {
    return isBest ? "" : " Perhaps not the best then.";
  }

  private static String text(Demand demand) {
    return demand.text();
  }

  /** One change that helps by itself. */
  public static String relief(SmallestRelaxation relief) {
    if (relief.from().isEmpty()) {
      return Spoken.sentence(relief.demand().givenUp());
    }
    return label(relief.demand())
        + " "
        + relief.from()
        + " → "
        + relief.to()
        + (relief.isLeast() ? "" : " (maybe less)");
  }

  /** What a limit is called where its value follows. */
  private static String label(Demand demand) {
    return Spoken.sentence(demand.id().replace('-', ' '));
  }

  /** Demands given up together. */
  public static String together(Relaxation.Together together) {
    var texts = together.demands().stream().map(RelaxWords::text).collect(Collectors.joining("; "));
    return (together.demands().size() == 2
            ? "Without both of these: "
            : "No two were found to; without all of these, none of which can stay: ")
        + texts;
  }

  /** Pairs of parts that a rule sets apart. */
  public static String clashes(ClashCount count) {
    return "%s: %s of %s pairs of %s and %s (%s %%)."
        .formatted(
            count.rule(),
            grouped(count.clashes()),
            grouped(count.pairs()),
            count.one().label(),
            count.other().label(),
            Spoken.number(100 * count.share(), 0));
  }

  private static String grouped(int count) {
    return String.format(Locale.ROOT, "%,d", count);
  }

  /** That no change of one demand helps, as far as that is known. */
  public static String nothingAlone(Relaxation relaxation) {
    return relaxation.isProof()
        ? "Changing one of them alone does not help: other demands are in the way too."
        : "No change of one of them alone was found to help.";
  }

  /** How far all of it can be trusted. */
  public static String standing(Relaxation relaxation) {
    return (relaxation.isCutShort() ? "Ended early, with what was found by then. " : "")
        + (relaxation.isProof()
            ? "Proven: what is called impossible was searched to the end"
            : "Not proven: where nothing was found, something may exist")
        + (relaxation.searches() == 1
            ? ", in 1 search."
            : ", in %s searches.".formatted(relaxation.searches()));
  }
}
