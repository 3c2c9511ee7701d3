package pappus.files;

import java.util.List;
import java.util.stream.Collectors;

/** The input is wrong. The message lists every problem of the run, one a line. */
public final class InputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final transient List<Problem> problems;

  /** What is wrong with the input, the worst first. */
  public enum Kind {
    /** It was read and makes no sense. */
    BAD_DATA,
    /** It is there and cannot be read. */
    UNREADABLE,
    /** It is not there. */
    MISSING
  }

  public InputException(Kind kind, List<Problem> problems) {
    super(problems.stream()
        .sorted()
        .distinct()
        .map(Problem::toString)
        .collect(Collectors.joining("\n")));
    this.kind = kind;
    this.problems = problems.stream().sorted().distinct().toList();
  }

  /** One problem that is bad data. */
  public static InputException badData(Problem problem) {
    return new InputException(Kind.BAD_DATA, List.of(problem));
  }

  public Kind kind() {
    return kind;
  }

  /** All problems, by file and line. */
  public List<Problem> problems() {
    return problems;
  }
}
