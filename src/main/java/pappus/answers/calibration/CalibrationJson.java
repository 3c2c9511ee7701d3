package pappus.answers.calibration;

import java.util.LinkedHashMap;
import java.util.Optional;
import pappus.calibration.Calibration;
import pappus.calibration.Comparison;
import pappus.files.json.JsonText;

/** Fitted coefficients as JSON with every digit. */
public final class CalibrationJson {
  private CalibrationJson() {}

  /** One document. */
  public static String of(Calibration calibration, Optional<Comparison> against) {
    var document = new LinkedHashMap<String, Object>();
    document.put("status", "found");
    document.put("law", calibration.law());
    document.put("motors", calibration.motors());
    document.put("propellers", calibration.propellers());
    document.put("errors", calibration.errors());
    document.put("correlations", calibration.correlations());
    document.put("leftOut", calibration.leftOut());
    document.put("starts", calibration.starts());
    document.put("cautions", calibration.cautions());
    against.ifPresent(comparison -> document.put("against", comparison));
    return JsonText.of(document);
  }
}
