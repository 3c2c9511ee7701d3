/** Records that the JSON of several answers shares: a build, its flight, mass, price, limits and findings. */
@NullMarked
package pappus.answers.shape;

import org.jspecify.annotations.NullMarked;
