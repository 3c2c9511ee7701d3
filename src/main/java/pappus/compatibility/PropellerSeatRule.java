package pappus.compatibility;

import java.util.Set;
import pappus.fitting.Fitting;
import pappus.fitting.HardwarePlanner;
import pappus.part.Battery;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;
import pappus.part.Role;
import pappus.part.Seat;
import pappus.part.SmallThing;

/** The propeller must sit on what the motor has for it. */
public final class PropellerSeatRule implements CompatibilityRule {
  /** Up to here friction alone holds (common practice, no published source). */
  private static final double PRESS_FIT_INCHES = 3;

  private static final int PRESS_FIT_CELLS = 3;

  @Override
  public String id() {
    return "propeller-seat";
  }

  @Override
  public Set<Role> reads() {
    return Set.of(Role.MOTOR, Role.PROPELLER, Role.BATTERY);
  }

  /** A battery only adds a note. */
  @Override
  public boolean mayStillFit(Fitting begun) {
    return !(check(begun) instanceof Verdict.Clashes);
  }

  @Override
  public boolean foresees(Set<Role> decided) {
    return decided.contains(Role.MOTOR) && decided.contains(Role.PROPELLER);
  }

  @Override
  public Object signature(Part part) {
    if (part instanceof Motor motor) {
      return motor.propellerSeat();
    }
    return part instanceof Propeller propeller ? propeller.seats() : part.id();
  }

  @Override
  public Verdict check(Fitting fitting) {
    var build = fitting.build();
    if (build.motor().isEmpty() || build.propeller().isEmpty()) {
      return Verdict.FITS;
    }
    var motor = build.motor().get();
    var propeller = build.propeller().get();
    var seat = motor.propellerSeat();
    if (!propeller.seats().contains(seat)) {
      if (HardwarePlanner.needsReducingRings(build)
          && fitting.hardware().items().stream()
              .anyMatch(item -> item.label().equals(SmallThing.REDUCING_RINGS.label()))) {
        return Verdict.fitsBut(
            "Propeller %s goes on motor %s with reducing rings.", propeller.id(), motor.id());
      }
      return Verdict.clashes(
          "Motor %s has %s, but propeller %s takes %s.",
          motor.id(),
          seat.label(),
          propeller.id(),
          String.join(" or ", propeller.seats().stream().map(Seat::label).toList()));
    }
    var cells = build.battery().map(Battery::cellsInSeries).orElse(1);
    if (seat.isPressFit()
        && (propeller.diameterInches() > PRESS_FIT_INCHES || cells > PRESS_FIT_CELLS)) {
      return Verdict.fitsBut(
          "Propeller %s (%s inch, %s cells) is held by friction alone, which lets go above 3 inch or 3 cells.",
          propeller.id(), propeller.diameterInches(), cells);
    }
    return Verdict.FITS;
  }
}
