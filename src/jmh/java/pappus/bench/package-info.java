/** How fast, measured: {@code mvn -Pjmh -DskipTests verify}, a part of it with {@code -Djmh.only=REGEX}. */
@NullMarked
package pappus.bench;

import org.jspecify.annotations.NullMarked;
