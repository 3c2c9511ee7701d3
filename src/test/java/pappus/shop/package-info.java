/** The demonstration catalogue: a seeded generator and the published bands its records keep. */
@NullMarked
package pappus.shop;

import org.jspecify.annotations.NullMarked;
