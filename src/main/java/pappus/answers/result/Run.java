package pappus.answers.result;

import java.util.List;
import pappus.files.Fingerprint;

/**
 * What an answer was made from and by.
 *
 * @param version of the tool, with its commit
 * @param seed of the search
 * @param moves changes the search was given
 * @param catalogs catalogue folders as given, in order
 * @param inputs every file read
 */
public record Run(
    String version, long seed, long moves, List<String> catalogs, List<Fingerprint> inputs) {
  public Run {
    catalogs = List.copyOf(catalogs);
    inputs = List.copyOf(inputs);
  }
}
