/**
 * Finds the best builds and proves that no other does better: best-first branch and bound.
 *
 * <p>A {@link pappus.search.exact.Node} is some builds that were not told apart yet. It starts as boxes of motors,
 * propellers and batteries with all frames; {@link pappus.search.exact.Halving} halves the box in which most can be
 * gained until each has one part. {@link pappus.search.exact.Branching} then takes the frames one by one, the lightest
 * with its motors first, and {@link pappus.search.exact.KitSearch} the accessories role by role, itself best first. {@link
 * pappus.search.exact.BestFirst} always branches the node with the greatest bound and tells a build once no open node has
 * a greater one. What is not branched is closed in {@link pappus.search.exact.Closings}, each with its reason.
 *
 * <p><b>Bounds.</b> A box's relaxation holds for each quantity the value that is best among its parts, so that one bound
 * serves a box and a single part alike.
 *
 * <ol>
 *   <li>Masses, prices, draws and resistances add up, small hardware included: what fastens motors counts as on the
 *       shortest frame of the same arms, a strap as the lightest that holds ({@code BoundsTest}).
 *   <li>Accessories are chosen one by one but for rules on two of them, so their least sums are sums of leasts over
 *       {@link pappus.search.exact.KitClasses}. Mass plus draw at many rates of exchange, the Lagrange multipliers of
 *       mass, are a {@link pappus.search.exact.Support} function: they leave a region that every set is in ({@code
 *       BoundsTest}).
 *   <li>Rules that two parts decide are asked once for parts of equal signatures ({@code SignaturesTest}); rules of sizes
 *       with the least sizes of a box, since what is too large for a frame stays so when it grows ({@code
 *       SizeRulesTest}). A rule with neither is asked when its last part is chosen.
 *   <li>At a thrust a motor takes ω (Q + a) + R Kv² (Q + a)² and its controllers' ripple, all rising in what a
 *       relaxation has the least of; the pack by power, V (V_oc − V)/R, falls above half of V_oc: power that is less at
 *       any volts is current that is less ({@code LoadTest}, {@code BoundsTest}).
 *   <li>Full throttle carries a thrust only if motors, plug, leads and cells stand its current ({@code BoundsTest}).
 *   <li>At a speed power is that of hover, less what induced power falls by, more profile power and drag: see {@link
 *       pappus.search.exact.SpeedBound}, which bounds rounds of several stretches by their shares ({@code BoundsTest}).
 *   <li>The flight of whole main parts is that of the assessment's own physics with the least of the accessories, {@link
 *       pappus.assessment.flight.PartialBound}; a gram is traded for watts where it is known what it costs.
 * </ol>
 *
 * <p>Hundreds of random catalogues equal plain enumeration row for row ({@code ExactSearchTest}); other searches find
 * nothing better ({@code OtherSearchesTest}); {@code SearchCountsTest} holds the nodes that are branched.
 */
@NullMarked
package pappus.search.exact;

import org.jspecify.annotations.NullMarked;
