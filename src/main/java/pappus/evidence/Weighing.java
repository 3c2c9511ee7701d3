package pappus.evidence;

/** Which number stands for an uncertain figure. */
public enum Weighing {
  /** The record's own: what a search would be fooled by. */
  STATED,
  /** The likeliest. */
  EXPECTED,
  /** The likeliest moved by half its deviation the way that shortens flights. */
  CAUTIOUS
}
