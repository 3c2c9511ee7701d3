package pappus;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import pappus.assessment.Assessment;
import pappus.assessment.Supply;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.ReadCatalog;
import pappus.compatibility.Rules;
import pappus.files.InputException;
import pappus.files.Problems;
import pappus.part.Build;
import pappus.ranking.Finder;
import pappus.ranking.Ranking;
import pappus.scenario.reading.ScenarioReader;
import pappus.scenario.reading.Setting;
import pappus.whatif.sweep.Axes;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.Sweep;
import pappus.whatif.sweep.Sweeper;

/**
 * The tool as a library: reads, judges, ranks and asks what if. Records in, records out; it prints nothing and never ends
 * the machine. Whatever it returns may be read from several threads; a {@link Finder} finds for one at a time.
 *
 * <pre>{@code
 * var inputs = Pappus.read(Path.of("scenarios/bird-survey.json"), List.of(CatalogFolder.shipped()));
 * var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.MOVES, said -> {});
 * var best = Pappus.recommend(inputs, 10, finder).candidates();
 * }</pre>
 */
public final class Pappus {
  private Pappus() {}

  /**
   * Reads scenario and catalogues, and holds each to the other.
   *
   * @param scenario its file
   * @param folders of the catalogue; a later one's part replaces an earlier one's of the same id
   * @throws InputException with all that is wrong in all files
   */
  public static Inputs read(Path scenario, List<CatalogFolder> folders) {
    return read(scenario, InputStream.nullInputStream(), folders, read -> {});
  }

  /**
   * Reads a scenario that may come from elsewhere, and catalogues, and holds each to the other.
   *
   * @param standardInput read where the file is a hyphen
   * @param remarks told what was read, once all of it is sound
   * @throws InputException with all that is wrong in all files
   */
  public static Inputs read(
      Path scenario,
      InputStream standardInput,
      List<CatalogFolder> folders,
      Consumer<ReadCatalog> remarks) {
    return read(scenario, standardInput, List.of(), folders, remarks);
  }

  /**
   * Reads a scenario with some of its values otherwise, and catalogues, and holds each to the other.
   *
   * @param standardInput read where the file is a hyphen
   * @param settings in place of what the file says, in their order
   * @param remarks told what was read, once all of it is sound
   * @throws InputException with all that is wrong in all files
   */
  public static Inputs read(
      Path scenario,
      InputStream standardInput,
      List<Setting> settings,
      List<CatalogFolder> folders,
      Consumer<ReadCatalog> remarks) {
    var wrong = new Problems();
    var parts = CatalogReader.read(folders, wrong);
    var isWhole = wrong.isEmpty();
    var asked = reading(
        () -> ScenarioReader.read(
            scenario, standardInput, settings, parts.catalog().currency(), parts.lumps()),
        wrong);
    if (asked == null || !isWhole) {
      wrong.throwIfAny();
      throw new IllegalStateException("What was not read was refused.");
    }
    var supply = Supply.of(parts).drafting(asked.scenario());
    var problems = new ArrayList<>(asked.problemsWith(supply.catalog()));
    problems.addAll(asked.contradictions(parts.catalog()));
    problems.addAll(asked.problemsWithRules(Rules.waivableIds()));
    problems.addAll(asked.problemsWithCurrency(supply.catalog()));
    if (!problems.isEmpty()) {
      throw new InputException(InputException.Kind.BAD_DATA, problems);
    }
    var files = new ArrayList<>(List.of(asked.input()));
    var built = asked
        .aboard(supply.catalog(), result -> files.add(result.fingerprint()))
        .map(supply::aboard)
        .orElse(supply);
    remarks.accept(parts);
    files.addAll(parts.inputs());
    return new Inputs(asked.scenario(), built, built.assessor(asked.scenario()), files);
  }

  private static <T> @Nullable T reading(Supplier<T> read, Problems wrong) {
    try {
      return read.get();
    } catch (InputException refused) {
      wrong.addAll(refused);
      return null;
    }
  }

  /** Everything about one build, feasible or not. */
  public static Assessment assess(Inputs inputs, Build build) {
    return inputs.assessor().assess(build);
  }

  /**
   * Which builds, best first, how much of what is possible was looked at, and which of all builds to choose among.
   *
   * @param count builds wanted, 1 to 100
   */
  public static Ranking recommend(Inputs inputs, int count, Finder finder) {
    var question = inputs.question();
    var ranking = finder.rank(question, count);
    return ranking.with(finder.picks(question, ranking));
  }

  /**
   * What varies in a sweep.
   *
   * @param typed each as on the command line, such as {@code mass-cap=200:250:25}; one or two
   * @throws IllegalArgumentException saying what one of them must be
   */
  public static List<Axis> axes(Inputs inputs, List<String> typed) {
    var axes = typed.stream().map(one -> Axes.of(one, inputs.asked())).toList();
    var ids = axes.stream().map(Axis::id).distinct().count();
    if (ids < axes.size()) {
      throw new IllegalArgumentException(
          "must be over two things, but is twice over " + axes.get(0).id() + ".");
    }
    return axes;
  }

  /**
   * The best build at each step of what varies.
   *
   * @throws IllegalArgumentException saying what cannot be swept
   */
  public static Sweep sweep(Inputs inputs, List<Axis> axes, Finder finder) {
    return new Sweeper(inputs.asked(), axes, finder, finder::tell).sweep();
  }
}
