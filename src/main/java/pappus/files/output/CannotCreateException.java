package pappus.files.output;

import java.util.List;
import java.util.stream.Collectors;
import pappus.files.Problem;

/** A result cannot be put where it belongs. The message names every file that is in the way. */
public final class CannotCreateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  CannotCreateException(List<Problem> problems) {
    super(problems.stream()
        .sorted()
        .distinct()
        .map(Problem::toString)
        .collect(Collectors.joining("\n")));
  }
}
