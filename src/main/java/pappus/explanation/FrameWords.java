package pappus.explanation;

import java.util.Optional;
import pappus.catalog.Frame;
import pappus.compatibility.PropellerRoom;
import pappus.whatif.FrameAdvice;

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
    var name = Spoken.safe(advice.frame().name());
    var best = advice.best();
    return best.build()
        .map(build -> "%s as it is drawn, %s g: %s with its best build%s."
            .formatted(
                name,
                Spoken.number(advice.frame().mass().grams(), 1),
                Journey.figure(isForRange, pappus.assessment.Assessment.figure(build.objective())),
                best.isProof() ? ", proven" : ", not proven"))
        .orElse(name + " as it is drawn: "
            + (best.isProof()
                ? "proven, no build with it keeps every rule and limit."
                : "no build with it was found."));
  }

  /** What a gram of it is worth. */
  public Optional<String> gram() {
    return advice
        .rates()
        .map(rates -> "Each gram less of it gives %s.".formatted(changes.amount(rates.perGram())));
  }

  /** How a size of propeller fits between the motors. */
  public static String room(PropellerRoom room, Frame frame) {
    var spacing = Math.min(frame.frontSpacingMillimetres(), frame.sideSpacingMillimetres());
    return spacing < room.leastMillimetres()
        ? "does not fit"
        : spacing < room.usualMillimetres() ? "fits, tighter than usual" : "fits";
  }

  /** What one more hole pattern or bolt circle would add. */
  public String addition(FrameAdvice.Addition addition) {
    return "%s: %s of %s %s go on it in place of %s (%s in place of %s %%); the best build flies %s."
        .formatted(
            Spoken.safe(addition.what()),
            addition.fitAfter(),
            addition.of(),
            addition.parts(),
            addition.fitBefore(),
            percent(addition.fitAfter(), addition.of()),
            percent(addition.fitBefore(), addition.of()),
            changes.longer(addition.gained()));
  }

  private static String percent(int some, int all) {
    return Spoken.number(100.0 * some / Math.max(1, all), 0);
  }
}
