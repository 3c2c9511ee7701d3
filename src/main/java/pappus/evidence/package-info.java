/**
 * How much of a record's own figures counts.
 *
 * <p>A search over millions of builds picks the parts whose figures are luckiest. Each uncertain figure is
 * therefore shrunk toward the prior of its class, the more the less it is known. Once per record: the
 * search sees one number for each figure, and the record keeps its own.
 */
@NullMarked
package pappus.evidence;

import org.jspecify.annotations.NullMarked;
