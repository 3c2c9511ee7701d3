package pappus.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Collects the problems of a run, so that a person hears of all of them at once: of each file the first {@link #MOST},
 * and how many more there are.
 */
public final class Problems {
  /** Of a file; who reads as many has seen what is the matter. */
  public static final int MOST = 100;

  private final Map<String, TreeSet<Problem>> byFile = new TreeMap<>();
  private final Map<String, Integer> more = new TreeMap<>();
  private final int most;
  private InputException.Kind worst = InputException.Kind.MISSING;

  public Problems() {
    this(MOST);
  }

  private Problems(int most) {
    this.most = most;
  }

  /** Those that are only counted. */
  public static Problems counted() {
    return new Problems(0);
  }

  public void add(Problem problem) {
    add(InputException.Kind.BAD_DATA, problem);
  }

  public void addAll(Collection<Problem> others) {
    others.forEach(this::add);
  }

  /** Takes over all of another collection. */
  public void addAll(Problems others) {
    others.byFile.values().forEach(kept -> kept.forEach(problem -> add(others.worst, problem)));
    others.more.forEach((file, number) -> add(others.worst, Problem.rest(file, number)));
  }

  /** Takes over all that refused an input. */
  public void addAll(InputException refused) {
    refused.problems().forEach(problem -> add(refused.kind(), problem));
  }

  /** The worst kind of problem so far. */
  public InputException.Kind worst() {
    return worst;
  }

  void add(InputException.Kind kind, Problem problem) {
    if (kind.compareTo(worst) < 0) {
      worst = kind;
    }
    if (problem.isRest()) {
      more.merge(problem.file(), problem.rest(), Integer::sum);
      return;
    }
    var kept = byFile.computeIfAbsent(problem.file(), file -> new TreeSet<>());
    if (kept.add(problem) && kept.size() > most) {
      kept.pollLast();
      more.merge(problem.file(), 1, Integer::sum);
    }
  }

  public boolean isEmpty() {
    return byFile.isEmpty() && more.isEmpty();
  }

  /** Whether a file has as many as are told: what else is wrong in it need only be counted. */
  public boolean isFull(String file) {
    var kept = byFile.get(file);
    return most == 0 || (kept != null && kept.size() >= most);
  }

  /** Counts one more of a file that is full. */
  public void count(String file) {
    add(Problem.rest(file, 1));
  }

  /** Those that are kept of all so far, by file and line, and of each file that has more, how many. */
  public List<Problem> sorted() {
    var sorted = new ArrayList<Problem>();
    byFile.values().forEach(sorted::addAll);
    more.forEach((file, number) -> sorted.add(Problem.rest(file, number)));
    sorted.sort(null);
    return sorted;
  }

  /**
   * Does nothing if all is well.
   *
   * @throws InputException with all problems otherwise
   */
  public void throwIfAny() {
    if (!isEmpty()) {
      throw new InputException(worst, sorted());
    }
  }
}
