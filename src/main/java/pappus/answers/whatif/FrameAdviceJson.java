package pappus.answers.whatif;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Optional;
import pappus.answers.result.BriefJson;
import pappus.answers.result.NamedParts;
import pappus.answers.result.PartJson;
import pappus.change.Rates;
import pappus.scenario.Scenario;
import pappus.whatif.sweep.FrameAdvice;

/** What a designer of a frame asks next, with every digit. */
record FrameAdviceJson(
    @JsonPropertyDescription("The frame.") PartJson frame,
    @JsonPropertyDescription("The best build on it.") Optional<BriefJson> best,

    @JsonPropertyDescription("Whether no build on it is proven to be better.")
    boolean proven,

    @JsonPropertyDescription("What one gram more costs, s, or m where the goal is range.")
    Optional<Double> lostPerGram,

    @JsonPropertyDescription("Spacing of the motors that propellers need.")
    List<Room> propellers,

    @JsonPropertyDescription("What one more hole pattern or bolt circle would add.")
    List<Addition> additions) {
  /** Room for one size of propeller. */
  record Room(
      @JsonPropertyDescription("Its diameter, inches.") double inches,

      @JsonPropertyDescription("Least spacing of the motors, mm.")
      double leastMillimetres,

      @JsonPropertyDescription("Usual spacing of the motors, mm.")
      double usualMillimetres,

      @JsonPropertyDescription("Between discs on this frame, mm; below 0 where they meet.")
      double gapMillimetres) {}

  /** One more hole pattern or bolt circle. */
  record Addition(
      @JsonPropertyDescription("What it is, with its size.") String what,
      @JsonPropertyDescription("What goes on it.") String parts,

      @JsonPropertyDescription("How many go on the frame as it is.")
      int fitBefore,

      @JsonPropertyDescription("How many go on it with the addition.")
      int fitAfter,

      @JsonPropertyDescription("All of them.") int of,

      @JsonPropertyDescription("What the best build gains, s, or m where the goal is range.")
      double gained,

      @JsonPropertyDescription("Whether no build then is proven to be better.")
      boolean proven,

      @JsonPropertyDescription("The best build then.") Optional<BriefJson> best) {
    static Addition of(FrameAdvice.Addition addition, Scenario scenario, NamedParts parts) {
      return new Addition(
          addition.what(),
          addition.parts(),
          addition.fitBefore(),
          addition.fitAfter(),
          addition.of(),
          addition.gained(),
          addition.best().isProof(),
          addition.best().build().map(build -> BriefJson.of(build, scenario, parts)));
    }
  }

  static FrameAdviceJson of(FrameAdvice advice, Scenario scenario, NamedParts parts) {
    return new FrameAdviceJson(
        PartJson.of(advice.frame()),
        advice.best().build().map(build -> BriefJson.of(build, scenario, parts)),
        advice.best().isProof(),
        advice.rates().map(Rates::perGram),
        advice.rooms().stream()
            .map(room -> new Room(
                room.inches(),
                room.leastMillimetres(),
                room.usualMillimetres(),
                room.clearanceMillimetres(advice.frame())))
            .toList(),
        advice.additions().stream()
            .map(addition -> Addition.of(addition, scenario, parts))
            .toList());
  }
}
