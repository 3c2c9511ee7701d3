/** How far picture and control of a build reach, and what its video transmitter is set to for that. */
@NullMarked
package pappus.links;

import org.jspecify.annotations.NullMarked;
