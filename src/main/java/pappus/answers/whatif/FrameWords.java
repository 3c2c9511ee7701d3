package pappus.answers.whatif;

import java.util.Optional;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.compatibility.PropellerRoom;
import pappus.document.Spoken;
import pappus.part.Frame;
import pappus.quantity.Require;
import pappus.whatif.sweep.FrameAdvice;

/** What a designer of a frame asks next, in sentences. */
public final class FrameWords {
  private final FrameAdvice advice;
  private final boolean isForRange;
  private final Changes changes;

  /**
   * @param isForRange whether builds are ranked by metres over ground, else by seconds in the air
   */
  public FrameWords(FrameAdvice advice, boolean isForRange) {
    this.advice = advice;
    this.isForRange = isForRange;
    this.changes = new Changes(isForRange, "");
  }

  /** The frame as it is drawn and its best build. */
  public String frame() {
    var name = advice.frame().name();
    var best = advice.best();
    return best.build()
        .map(build -> "%s as it is drawn, %s g: with its best build%s, %s%s."
            .formatted(
                name,
                Spoken.number(advice.frame().mass().grams(), 1),
                best.isProof() ? ", proven" : ", not proven",
                new Figures(isForRange).sentence(build),
                build.isBeyondBelief() ? "; ? too good to be true" : ""))
        .orElse(name + " as it is drawn: "
            + (best.isProof()
                ? "proven, no build with it keeps every rule and limit."
                : "no build with it was found."));
  }

  /** What a gram of it is worth. */
  public Optional<String> gram() {
    return advice
        .rates()
        .map(rates -> "Each gram off it gives %s.".formatted(changes.amount(rates.perGram())));
  }

  /** How a size of propeller fits between the motors. */
  public static String room(PropellerRoom room, Frame frame) {
    var spacing = Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
    if (room.isLargerThanStated(frame)) {
      return spacing < room.leastMillimetres()
          ? "does not fit"
          : "has room, but the frame says %s inch at most"
              .formatted(Require.plain(frame.largestPropellerInches()));
    }
    return spacing < room.leastMillimetres()
        ? "does not fit"
        : spacing < room.usualMillimetres() ? "fits, tighter than usual" : "fits";
  }

  /** What one more hole pattern or bolt circle would add. */
  public String addition(FrameAdvice.Addition addition) {
    return "%s: %s of %s %s go on it in place of %s (%s in place of %s %%); %s."
        .formatted(
            addition.what(),
            addition.fitAfter(),
            addition.of(),
            addition.parts(),
            addition.fitBefore(),
            percent(addition.fitAfter(), addition.of()),
            percent(addition.fitBefore(), addition.of()),
            flown(addition));
  }

  private String flown(FrameAdvice.Addition addition) {
    var isProof = addition.best().isProof();
    if (addition.best().build().isEmpty()) {
      return isProof ? "no build keeps every rule and limit" : "no build was found";
    }
    return "the best build flies %s%s"
        .formatted(changes.longer(addition.gained()), isProof ? "" : ", not proven");
  }

  /** That nothing more on the frame is of use, as far as that is known. */
  public String nothingToAdd() {
    return advice.additions().stream().allMatch(addition -> addition.best().isProof())
        ? "No other hole pattern or bolt circle of this catalogue would add anything."
        : "No other hole pattern or bolt circle of this catalogue was found to add anything.";
  }

  private static String percent(int some, int all) {
    return Spoken.number(100.0 * some / Math.max(1, all), 0);
  }
}
