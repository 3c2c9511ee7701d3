package pappus.answers.ranking;

import java.util.List;

/**
 * What a page says before anything is scrolled.
 *
 * @param chips what was asked, a few words each
 * @param chosen the build to take
 * @param savings what giving up a little saves; empty where nothing does
 * @param savingsAgainst what they are counted against
 * @param byPrice what more money brings, in a sentence
 * @param byMass what more mass brings
 * @param standing what is not as it should be with the pick, in a sentence; empty if nothing
 */
public record FirstScreen(
    List<String> chips,
    Chosen chosen,
    List<Saving> savings,
    String savingsAgainst,
    String byPrice,
    String byMass,
    String standing) {
  public FirstScreen {
    chips = List.copyOf(chips);
    savings = List.copyOf(savings);
  }

  /**
   * A number, and what it is.
   *
   * @param figure with its unit
   * @param note how much room it has, or how sure it is
   */
  public record Told(String figure, String note) {}

  /**
   * A build in large.
   *
   * @param number of it among the page's builds
   * @param anchor where its details stand
   * @param figure what it was chosen for
   * @param unit what that is
   * @param names of its main parts
   * @param told what else matters
   */
  public record Chosen(
      int number, String anchor, String figure, String unit, List<String> names, List<Told> told) {
    public Chosen {
      names = List.copyOf(names);
      told = List.copyOf(told);
    }
  }

  /**
   * A build that flies a little less and saves something.
   *
   * @param number of it among the page's builds
   * @param planWith its flight to plan with
   * @param lost by how much that is less, with its sign
   * @param price what it costs more or less
   * @param grams what it weighs more or less
   * @param name what it is known as, or what it has otherwise
   * @param isSteepestInPrice whether it saves most money for what it gives up
   * @param isSteepestInMass whether it saves most mass
   */
  public record Saving(
      int number,
      String planWith,
      String lost,
      String price,
      String grams,
      String name,
      boolean isSteepestInPrice,
      boolean isSteepestInMass) {}
}
