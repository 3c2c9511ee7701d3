/** What the builder wants: limits, air, payload, wishes, and parts fixed, owned or left out. */
@NullMarked
package pappus.scenario;

import org.jspecify.annotations.NullMarked;
