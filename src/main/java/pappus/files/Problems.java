package pappus.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Collects the problems of a run, so that a person hears of all of them at once. */
public final class Problems {
  private final List<Problem> problems = new ArrayList<>();
  private InputException.Kind worst = InputException.Kind.MISSING;

  public void add(Problem problem) {
    add(InputException.Kind.BAD_DATA, problem);
  }

  public void addAll(Collection<Problem> others) {
    others.forEach(this::add);
  }

  /** Takes over all of another collection. */
  public void addAll(Problems others) {
    others.problems.forEach(problem -> add(others.worst, problem));
  }

  void add(InputException.Kind kind, Problem problem) {
    problems.add(problem);
    if (kind.compareTo(worst) < 0) {
      worst = kind;
    }
  }

  public boolean isEmpty() {
    return problems.isEmpty();
  }

  /** All so far, by file and line. */
  public List<Problem> sorted() {
    return problems.stream().sorted().distinct().toList();
  }

  /**
   * Does nothing if all is well.
   *
   * @throws InputException with all problems otherwise
   */
  public void throwIfAny() {
    if (!problems.isEmpty()) {
      throw new InputException(worst, problems);
    }
  }
}
