package pappus.links;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How far a build's links reach.
 *
 * @param video of the picture; empty where nothing is known of what sends it, as in a lump
 * @param control of the sticks; empty where nothing is known of what hears them
 */
public record Reach(Optional<Link> video, Optional<Link> control) {
  /** Those of which something is known. */
  public Stream<Link> links() {
    return Stream.concat(video.stream(), control.stream());
  }

  /** The one that reaches less far by the likeliest figures. */
  public Optional<Link> shorter() {
    return links().min(Comparator.comparingDouble(Link::metres));
  }

  /** The one that can be relied on less far: where all is one standard deviation worse. */
  public Optional<Link> lesser() {
    return links().min(Comparator.comparingDouble(Link::lowMetres));
  }
}
