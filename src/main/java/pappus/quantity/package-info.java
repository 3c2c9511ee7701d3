/** Units, money and range checks: what every other package counts with. */
@NullMarked
package pappus.quantity;

import org.jspecify.annotations.NullMarked;
