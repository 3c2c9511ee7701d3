/**
 * A planned order, as text, JSON, page and lists to buy from.
 */
@NullMarked
package pappus.answers.order;

import org.jspecify.annotations.NullMarked;
