package pappus.ranking;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import pappus.assessment.Assessment;
import pappus.doubt.Band;
import pappus.part.Part;
import pappus.search.Question;

/**
 * One row of a ranking.
 *
 * @param assessment our opinion on it
 * @param band how sure its endurance is
 * @param variants builds that differ from it in one of frame, motor, propeller and battery, or in how the frame is ordered, best first
 * @param areVariantsCutShort whether there may be more of them, since looking for them took too long
 * @param twins by part of the build, those that are the same in every number
 * @param equalTo rank, from 1, of the first candidate that it is not surely worse than; empty if it
 *     is surely worse than that of the group before, or the first of its own group
 * @param cheapestOfGroup whether it is the cheapest of a group of equals of at least two
 */
public record Candidate(
    Assessment assessment,
    Band band,
    List<Assessment> variants,
    boolean areVariantsCutShort,
    Map<Part, List<Part>> twins,
    OptionalInt equalTo,
    boolean cheapestOfGroup) {
  public Candidate {
    variants = List.copyOf(variants);
    twins = Collections.unmodifiableMap(new LinkedHashMap<>(twins));
  }

  /** The same builds as another question limits them. */
  Candidate as(Question question) {
    var assessor = question.assessor();
    return new Candidate(
        question.held(assessor.assess(assessment.build())),
        band,
        variants.stream().map(variant -> assessor.assess(variant.build())).toList(),
        areVariantsCutShort,
        twins,
        equalTo,
        cheapestOfGroup);
  }
}
