package pappus.compatibility;

import java.util.List;
import java.util.Set;
import pappus.fitting.Discs;
import pappus.fitting.Fitting;
import pappus.part.Frame;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.quantity.Units;

/** The propeller must be within what the frame allows and clear of its neighbours. */
public final class PropellerClearanceRule implements SizeRule {
  /** Label sizes are rounded; a tenth of an inch more is the same size class. */
  static final double INCH_TOLERANCE = 0.1;

  /** Tip to tip (common practice, no published source). */
  static final double USUAL_MM = 3;

  static final double LEAST_MM = 2;

  @Override
  public String id() {
    return "propeller-clearance";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.FRAME, Role.PROPELLER);
  }

  /** A hair more than there is, since inches are turned into millimetres. */
  private static final double HAIR_MM = 1e-6;

  @Override
  public Sizes room(Frame frame) {
    var largest = Math.min(
        Units.inchesToMillimetres(frame.largestPropellerInches() + INCH_TOLERANCE),
        Discs.betweenMotors(frame) - LEAST_MM);
    return new Sizes(
        largest + HAIR_MM,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Frame frame) {
      return List.of(
          frame.largestPropellerInches(),
          frame.frontSpacingMillimetres(),
          frame.sideSpacingMillimetres());
    }
    return part instanceof Propeller propeller ? propeller.diameterInches() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.frame().isEmpty() || build.propeller().isEmpty()) {
      return Verdict.FITS;
    }
    var frame = build.frame().get();
    var propeller = build.propeller().get();
    if (propeller.diameterInches() > frame.largestPropellerInches() + INCH_TOLERANCE) {
      return Verdict.clashes(
          "Propeller %s is %s inch, but frame %s takes %s inch.",
          propeller.id(), propeller.diameterInches(), frame.id(), frame.largestPropellerInches());
    }
    var clearance = Discs.betweenTips(frame, propeller);
    if (clearance < LEAST_MM) {
      return Verdict.clashes(
          "Propeller %s leaves %s mm to its neighbour on frame %s, but needs %s mm.",
          propeller.id(), clearance, frame.id(), LEAST_MM);
    }
    return clearance >= USUAL_MM
        ? Verdict.FITS
        : Verdict.fitsBut(
            "Propeller %s passes its neighbour at %s mm; %s mm are usual.",
            propeller.id(), clearance, USUAL_MM);
  }
}
