package pappus.search.exact;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pappus.assessment.Assessor;
import pappus.catalog.Build;
import pappus.catalog.Frame;
import pappus.catalog.Part;
import pappus.catalog.Role;
import pappus.search.Question;

/** Frames, motors, propellers and batteries, and which of them no rule on two of them sets apart. */
final class Mains {
  private final Question question;
  private final Assessor assessor;
  private final Goods goods;
  private final Map<Role, List<Part>> parts = new EnumMap<>(Role.class);
  private final List<List<Seated>> framesOfMotor = new ArrayList<>();
  private final List<BitSet> framesOfPropeller;
  private final List<BitSet> framesOfBattery;
  private final List<BitSet> propellersOfMotor;
  private final List<BitSet> batteriesOfMotor;

  /**
   * A frame under certain motors.
   *
   * @param grams what the two add to a build beyond the motors alone, g
   */
  record Seated(int frame, double grams) {}

  Mains(Goods goods) {
    this.goods = goods;
    this.question = goods.question();
    this.assessor = goods.assessor();
    for (var role : Goods.MAIN) {
      parts.put(role, question.options(role));
    }
    framesOfPropeller = pairs(Role.PROPELLER, Role.FRAME);
    framesOfBattery = pairs(Role.BATTERY, Role.FRAME);
    propellersOfMotor = pairs(Role.MOTOR, Role.PROPELLER);
    batteriesOfMotor = pairs(Role.MOTOR, Role.BATTERY);
    var seats = pairs(Role.MOTOR, Role.FRAME);
    for (var motor = 0; motor < seats.size(); motor++) {
      framesOfMotor.add(seated(motor, seats.get(motor)));
    }
  }

  List<Part> of(Role role) {
    return parts.getOrDefault(role, List.of());
  }

  Part of(Role role, int index) {
    return of(role).get(index);
  }

  /** Frames that a motor goes on, the lightest together first. */
  List<Seated> frames(int motor) {
    return framesOfMotor.get(motor);
  }

  boolean takes(int frame, int propeller, int battery) {
    return framesOfPropeller.get(propeller).get(frame)
        && framesOfBattery.get(battery).get(frame);
  }

  BitSet propellers(int motor) {
    return propellersOfMotor.get(motor);
  }

  BitSet batteries(int motor) {
    return batteriesOfMotor.get(motor);
  }

  private List<Seated> seated(int motor, BitSet frames) {
    var part = of(Role.MOTOR, motor);
    var alone = goods.grams(Role.MOTOR, part) + goods.nothing().grams();
    return frames.stream()
        .mapToObj(frame -> new Seated(
            frame,
            assessor
                    .begun(Build.empty()
                        .with(Role.FRAME, of(Role.FRAME, frame))
                        .with(Role.MOTOR, part))
                    .grams()
                - alone))
        .sorted(Comparator.comparingDouble(Seated::grams).thenComparingInt(Seated::frame))
        .toList();
  }

  private List<BitSet> pairs(Role one, Role other) {
    var rules = assessor.rules().stream()
        .filter(rule -> rule.reads().equals(Set.of(one, other)))
        .toList();
    var all = new ArrayList<BitSet>();
    for (var part : of(one)) {
      var with = new BitSet();
      for (var index = 0; index < of(other).size(); index++) {
        var pair = Build.empty().with(one, part).with(other, of(other, index));
        if (rules.stream().noneMatch(rule -> assessor.isBroken(rule, pair))
            && assessor.mayStillFit(pair)) {
          with.set(index);
        }
      }
      all.add(with);
    }
    return all;
  }

  /** Whether no rule on two roles alone sets the parts of a build in them apart. */
  boolean pair(Build build, Role one, Role other) {
    return assessor.rules().stream()
        .filter(rule -> rule.reads().equals(Set.of(one, other)))
        .noneMatch(rule -> assessor.isBroken(rule, build));
  }

  /** Whether nothing sets four apart that reads no other role. */
  boolean fit(Build four) {
    return assessor.rules().stream()
            .filter(rule -> Goods.MAIN.containsAll(rule.reads()) && rule.reads().size() > 2)
            .noneMatch(rule -> assessor.isBroken(rule, four))
        && assessor.mayStillFit(four);
  }

  /** Least drag area of any frame, m². */
  double leastDragArea() {
    return of(Role.FRAME).stream()
        .mapToDouble(frame -> assessor.dragArea((Frame) frame))
        .min()
        .orElse(0);
  }
}
