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
    this(bounded(problems), kind);
  }

  private InputException(List<Problem> bounded, Kind kind) {
    super(bounded.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.kind = kind;
    this.problems = bounded;
  }

  private static List<Problem> bounded(List<Problem> problems) {
    var kept = new Problems();
    kept.addAll(problems);
    return List.copyOf(kept.sorted());
  }

  /** One problem that is bad data. */
  public static InputException badData(Problem problem) {
    return new InputException(Kind.BAD_DATA, List.of(problem));
  }

  public Kind kind() {
    return kind;
  }

  /** The problems by file and line, as {@link Problems} bounds them. */
  public List<Problem> problems() {
    return problems;
  }
}
