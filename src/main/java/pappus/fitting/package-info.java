/**
 * How a build goes together: places of boards, rails, ports, small hardware, the pack along its bay. Plans; the fit
 * rules judge.
 */
@NullMarked
package pappus.fitting;

import org.jspecify.annotations.NullMarked;
