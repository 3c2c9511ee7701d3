package pappus.search.exact;

import org.jspecify.annotations.Nullable;
import pappus.part.Battery;
import pappus.part.Frame;

/**
 * What accessories have to go with.
 *
 * @param frame absent where none is decided
 * @param kind of the two: with equal kinds go equal accessories, and add as much
 */
record With(Battery battery, @Nullable Frame frame, String kind) {}
