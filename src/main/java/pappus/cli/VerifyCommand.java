package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import pappus.Inputs;
import pappus.answers.check.VerifyJson;
import pappus.assessment.Assessment;
import pappus.catalog.BuildText;
import pappus.document.Spoken;
import pappus.search.Question;
import pappus.search.plain.PlainSearch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Whether another route confirms what a result claims. */
@Command(
    name = "verify",
    description =
        "Reads scenario and catalogue of a result again, judges its builds anew, and looks for a better one by trying all.",
    footer = {
      "pappus verify out/bird-survey/result.json --effort 200000",
      "pappus verify out/bird-survey/result.json"
    })
final class VerifyCommand extends ToldCommand implements Callable<Integer> {
  @Parameters(index = "0", paramLabel = "RESULT.json", description = "What recommend wrote.")
  private Path resultFile;

  @Option(
      names = "--effort",
      paramLabel = "N",
      description = "Most combinations to look at; default all.")
  private @Nullable Long effort;

  /** A ranking is checked as a whole, and an order is none. */
  @Override
  String buildName() {
    return "";
  }

  @Override
  Path resultFile() {
    return resultFile;
  }

  @Override
  public Integer call() {
    format();
    if (effort != null && effort < 1) {
      throw new ParameterException(
          spec().commandLine(), "--effort must be at least 1, but is " + effort + ".");
    }
    var inputs = readAgain();
    var against = new ArrayList<String>();
    var changed = told().changed(inputs.files());
    var rows = rows(inputs, against);
    var question = inputs.question();
    var found = told().standing().proven() && against.isEmpty() ? look(question, rows) : null;
    if (found != null) {
      found.better().stream()
          .limit(3)
          .forEach(better -> against.add(
              "%s is not in it and should be: %s.".formatted(better.build(), figure(better))));
    }
    var confirmed =
        against.isEmpty() && told().standing().proven() && found != null && found.isWhole();
    print(confirmed, changed, against, rows.size(), found);
    return confirmed ? ExitCode.OK : ExitCode.NO;
  }

  private static String figure(Assessment assessment) {
    return Spoken.minutes(assessment.milliseconds() / 1000.0) + " min";
  }

  /** The rows judged anew; what is not as told goes against the result. */
  private List<Assessment> rows(Inputs inputs, List<String> against) {
    var rows = new ArrayList<Assessment>();
    for (var told : told().candidates()) {
      var rank = rows.size() + 1;
      try {
        var assessment = inputs.assessor().assess(BuildText.of(told.roles(), inputs.catalog()));
        rows.add(assessment);
        if (!assessment.isFeasible()) {
          against.add("Row %s breaks a rule or limit.".formatted(rank));
        } else if (assessment.milliseconds() != told.milliseconds()) {
          against.add(String.format(
              Locale.ROOT,
              "Row %d flies %.3f s, but is told to fly %.3f s.",
              rank,
              assessment.milliseconds() / 1000.0,
              told.milliseconds() / 1000.0));
        }
      } catch (IllegalArgumentException unknown) {
        against.add("Row %s cannot be built: %s".formatted(rank, unknown.getMessage()));
        return rows;
      }
    }
    return rows;
  }

  private PlainSearch.Found look(Question question, List<Assessment> rows) {
    var search = new PlainSearch(question, rows, rows.size() < told().standing().wanted());
    try (var progress = Progress.of(err(), isQuiet(), "trying all", Progress.ENDS);
        var interruption = Interruption.watch(search::stop)) {
      if (interruption.came()) {
        search.stop();
      }
      return search.run(
          effort == null ? Long.MAX_VALUE : effort,
          looks -> progress.show(
              String.format(Locale.ROOT, "trying all, %,d combinations looked at", looks)));
    }
  }

  private void print(
      boolean confirmed,
      List<String> changed,
      List<String> against,
      int rows,
      PlainSearch.@Nullable Found found) {
    var lines = new ArrayList<String>();
    changed.forEach(name ->
        lines.add(name + " has changed since, or was not read: this is about it as it is now."));
    lines.addAll(against);
    lines.add(summary(confirmed, against, rows, found));
    if (wantsJson()) {
      out()
          .document(VerifyJson.of(
              confirmed,
              changed,
              against,
              rows,
              Optional.ofNullable(found),
              lines.get(lines.size() - 1)));
    } else {
      lines.forEach(out()::line);
    }
  }

  private String summary(
      boolean confirmed, List<String> against, int rows, PlainSearch.@Nullable Found found) {
    if (found == null) {
      return against.isEmpty()
          ? "The %s rows are as told. The result claims no proof, so there is none to confirm."
              .formatted(rows)
          : "Not confirmed.";
    }
    var looked = String.format(
        Locale.ROOT,
        "%,d combinations looked at, %,d builds assessed",
        found.looks(),
        found.assessed());
    if (confirmed) {
      return "Confirmed: the %s rows are as told, and trying every build finds none that belongs among them. %s."
          .formatted(rows, looked);
    }
    return against.isEmpty()
        ? "Not confirmed yet: the %s rows are as told, and no better build was found with the %s of %s motors tried so far. %s."
            .formatted(rows, found.motors(), found.ofMotors(), looked)
        : "Not confirmed. " + looked + ".";
  }
}
