package pappus.answers.calibration;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.calibration.Calibration;
import pappus.calibration.Comparison;
import pappus.calibration.ErrorSummary;
import pappus.files.json.JsonText;

/** Fitted coefficients with every digit. */
public record CalibrationJson(
    @JsonPropertyDescription("What the answer is, in a word.")
    String status,

    @JsonPropertyDescription("What all controllers have in common.")
    Calibration.ControllerLaw law,

    @JsonPropertyDescription(
        "The part-load loss k of these controllers, as a board's record states it in controllerLoss.")
    Calibration.Figure controllerLoss,

    @JsonPropertyDescription("Of each motor with its controller and leads.")
    Map<String, Calibration.MotorFit> motors,

    @JsonPropertyDescription("Of each propeller.") Map<String, Calibration.PropellerFit> propellers,

    @JsonPropertyDescription("Of bus power at equal thrust, of the rows fitted.")
    ErrorSummary errors,

    @JsonPropertyDescription("Of two coefficients, 0.5 and beyond either way, the strongest first.")
    List<Calibration.Correlation> correlations,

    @JsonPropertyDescription(
        "Motors whose speeds seem to belong to another number of poles and are not used, and what tells.")
    Map<String, String> wrongPoles,

    @JsonPropertyDescription("Rows, or their speed, not used, and why.")
    List<Calibration.LeftOut> leftOut,

    @JsonPropertyDescription("Cost of the fit from each start, the lowest first.")
    List<Double> starts,

    @JsonPropertyDescription("To heed before use.") List<String> cautions,

    @JsonPropertyDescription("The fit against rows it was not made from.")
    Optional<Comparison> against) {
  /** One document. */
  public static String of(Calibration calibration, Optional<Comparison> against) {
    return JsonText.of(new CalibrationJson(
        "found",
        calibration.law(),
        calibration.statedLoss(),
        calibration.motors(),
        calibration.propellers(),
        calibration.errors(),
        calibration.correlations(),
        calibration.wrongPoles(),
        calibration.leftOut(),
        calibration.starts(),
        calibration.cautions(),
        against));
  }
}
