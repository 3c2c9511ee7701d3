package pappus.document;

/** Whether a terminal shows weight, by the sequences of ECMA-48. */
public enum Style {
  /** Letters alone. */
  PLAIN,
  /** Bold for what matters most, faint for what matters least. */
  WEIGHTED;

  private static final String BOLD = "\u001b[1m";
  private static final String FAINT = "\u001b[2m";
  private static final String NORMAL = "\u001b[0m";

  String strong(String text) {
    return this == PLAIN ? text : BOLD + text + NORMAL;
  }

  String faint(String text) {
    return this == PLAIN ? text : FAINT + text + NORMAL;
  }
}
