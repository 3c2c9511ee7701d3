package pappus.cli;

/** A command that may be asked for JSON, and then answers in JSON even when its input is wrong. */
interface JsonAnswer {
  boolean wantsJson();
}
