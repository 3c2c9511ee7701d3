package pappus.calibration;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import pappus.files.Problems;
import pappus.files.Source;

/** Rows of P. Cao and J. Strawson, "motor_propeller_testing", 2018, MIT licence, kept with its text. */
final class PublishedBench {
  static final List<String> MOTORS = List.of("a", "c", "j", "k");

  private PublishedBench() {}

  static List<BenchRow> rows() {
    var name = "motor_propeller_bench.csv";
    try (var stream = PublishedBench.class.getResourceAsStream(name)) {
      var problems = new Problems();
      var rows = BenchReader.read(Source.of(name, stream.readAllBytes()), problems);
      problems.throwIfAny();
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
