package pappus.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;

/** Asks on a terminal for what a scenario begins with: an empty line takes what is usual. */
final class Questions {
  private final Beginning beginning;
  private final BufferedReader in;
  private final Printer err;

  Questions(Beginning beginning, BufferedReader in, Printer err) {
    this.beginning = beginning;
    this.in = in;
    this.err = err;
  }

  /**
   * Asks for all that is not said yet, each until its answer will do. Where answers end, what is usual is taken.
   *
   * @param said gains what is answered
   */
  void ask(Map<Opening, String> said) {
    err.line("An empty line takes what stands in brackets.");
    for (var opening : Opening.values()) {
      if (!said.containsKey(opening)) {
        var answer = answer(opening);
        if (!answer.isEmpty()) {
          said.put(opening, answer);
        }
      }
    }
  }

  /** Empty for what is usual. */
  private String answer(Opening opening) {
    while (true) {
      err.inPlace(
          "%s [%s]: ".formatted(opening.question(beginning.choice(opening)), opening.usual()));
      var line = line().strip();
      if (line.isEmpty()) {
        return line;
      }
      var alone = new EnumMap<Opening, String>(Map.of(opening, line));
      var problems = beginning.problems(alone);
      if (problems.isEmpty()) {
        return line;
      }
      problems.forEach(err::line);
    }
  }

  private String line() {
    try {
      var line = in.readLine();
      if (line == null) {
        err.line("");
        return "";
      }
      return line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
