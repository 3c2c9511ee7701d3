package pappus.assessment;

import java.util.Optional;
import pappus.compatibility.Verdict;
import pappus.scenario.Waiver;

/**
 * What a fit rule says of a build.
 *
 * @param rule id of the rule
 * @param verdict its verdict
 * @param waiver why a clash is set aside, if it is
 * @param breaks whether it keeps the build from being a candidate
 */
public record Finding(String rule, Verdict verdict, Optional<Waiver> waiver, boolean breaks) {}
