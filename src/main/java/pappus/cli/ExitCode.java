package pappus.cli;

import pappus.files.InputException;

/** Exit codes of every command. */
final class ExitCode {
  static final int OK = 0;

  /** The answer is no: nothing feasible, or the build breaks something. */
  static final int NO = 1;

  static final int USAGE = 2;
  static final int BAD_DATA = 65;
  static final int NO_INPUT = 66;
  static final int BUG = 70;
  static final int CANNOT_CREATE = 73;
  static final int IO = 74;

  private ExitCode() {}

  /** Of an input that was refused. */
  static int of(InputException.Kind kind) {
    return switch (kind) {
      case MISSING -> NO_INPUT;
      case UNREADABLE -> IO;
      case BAD_DATA -> BAD_DATA;
    };
  }
}
