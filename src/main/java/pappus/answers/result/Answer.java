package pappus.answers.result;

import java.util.Optional;
import java.util.stream.Stream;
import pappus.answers.shape.FlightJson;

/** The documents that commands write for a machine; each has a schema of its name. */
public enum Answer {
  RESULT,
  ASSESSMENT,
  EXPLANATION,
  WHY_NOT,
  COMPARISON,
  ALTERNATIVES,
  RELAXATION,
  SWEEP,
  MATCHES,
  MATRIX,
  WEIGHING,
  SHEET,
  OFFER,
  PLANNED_ORDER,
  UNSERVED_ORDER,
  CALIBRATION,
  CHECK,
  VERIFICATION,
  IMPORTED,
  REFUSAL;

  /** The word on the command line, which is also the name of its schema. */
  public String key() {
    return FlightJson.key(this);
  }

  /** The document of a word on the command line. */
  public static Optional<Answer> ofKey(String key) {
    return Stream.of(values()).filter(answer -> answer.key().equals(key)).findFirst();
  }
}
