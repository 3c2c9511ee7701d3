package pappus.cli;

/** What a scenario begins with: options of {@code new}, and its questions in their order. */
enum Opening {
  MASS_CAP("--mass-cap", "Mass cap, g: with everything aboard it weighs less", "250 g"),
  THRUST("--thrust", "Least thrust-to-weight", "2"),
  BUDGET("--budget", "Budget, %s", "no bound"),
  FLIGHT("--flight", "How it flies: %s", "hover"),
  GOGGLES("--goggles", "Goggles: %s", "any"),
  RADIO("--radio", "Radio: %s", "any"),
  CELLS("--cells", "Cells in series: %s", "any"),
  PROPELLER("--propeller", "Propeller, inches: %s", "any"),
  AT_HAND("--at-hand", "Parts at hand, ids with commas between", "none");

  private final String option;
  private final String question;
  private final String usual;

  /**
   * @param question with a place for what there is to choose from
   * @param usual what is taken where nothing is said, in words
   */
  Opening(String option, String question, String usual) {
    this.option = option;
    this.question = question;
    this.usual = usual;
  }

  String option() {
    return option;
  }

  /** @param choice what there is to choose from */
  String question(String choice) {
    return question.formatted(choice);
  }

  String usual() {
    return usual;
  }
}
