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
 * @param set what was asked otherwise than the scenario's file says, each as it was typed
 */
public record Run(
    String version,
    long seed,
    long moves,
    List<String> catalogs,
    List<Fingerprint> inputs,
    List<String> set) {
  public Run {
    set = List.copyOf(set);
    catalogs = List.copyOf(catalogs);
    inputs = List.copyOf(inputs);
  }
}
