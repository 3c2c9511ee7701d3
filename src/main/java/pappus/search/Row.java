package pappus.search;

import java.util.List;
import pappus.assessment.Assessment;

/**
 * A build of a ranking, with those that differ from it in one main part, or in how the frame is ordered.
 *
 * @param variants best first
 * @param isCutShort whether there may be more of them, after these, since looking for them took too long
 */
public record Row(Assessment assessment, List<Assessment> variants, boolean isCutShort) {
  /** So many variants are told. */
  public static final int MOST_VARIANTS = 5;

  public Row {
    variants = List.copyOf(variants);
  }
}
