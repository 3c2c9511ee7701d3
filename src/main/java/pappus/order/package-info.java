/**
 * What a club orders: who is to fly what, the shops, the shelf, and how parts are bought together.
 */
@NullMarked
package pappus.order;

import org.jspecify.annotations.NullMarked;
