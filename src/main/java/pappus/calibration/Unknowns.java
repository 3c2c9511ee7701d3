package pappus.calibration;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.RealVector;
import pappus.quantity.Units;

/**
 * What a fit looks for, as one vector: c of the ripple of motors that are not small, idle current and growth of
 * all controllers; ln Kv, ln R, ln i₀ and ln of the air's density over the stated one for each motor; a, b and c of ln C_T and of ln C_P for each propeller.
 */
final class Unknowns {
  private final List<String> motors;
  private final List<String> propellers;
  private final double[] labelKv;
  private final double[] statorMillimetres;

  /** Of the motors and propellers that the rows name, in the order of their keys. */
  Unknowns(List<BenchRow> rows) {
    motors = List.copyOf(new TreeSet<>(rows.stream().map(BenchRow::motorKey).toList()));
    propellers =
        List.copyOf(new TreeSet<>(rows.stream().map(BenchRow::propellerKey).toList()));
    labelKv = ofMotors(rows, BenchRow::labelKvRpmPerVolt);
    statorMillimetres = ofMotors(rows, BenchRow::statorMillimetres);
  }

  private double[] ofMotors(List<BenchRow> rows, ToDoubleFunction<BenchRow> figure) {
    return motors.stream()
        .mapToDouble(key -> rows.stream()
            .filter(row -> row.motorKey().equals(key))
            .mapToDouble(figure)
            .findFirst()
            .orElseThrow())
        .toArray();
  }

  /** Of a motor, by its first row; 0 if that is not known. */
  double statorMillimetres(int motor) {
    return statorMillimetres[motor];
  }

  List<String> motors() {
    return motors;
  }

  List<String> propellers() {
    return propellers;
  }

  int count() {
    return propellerAt(propellers.size());
  }

  /** Where a search may begin: c and resistance as told, the rest as usual. */
  double[] start(Calibration.ControllerLaw law, double loss, double ohm) {
    var point = new double[count()];
    point[0] = loss;
    point[1] = law.idleA().value();
    point[2] = law.growth().value();
    for (var m = 0; m < motors.size(); m++) {
      point[motorAt(m)] = expectedKv(m);
      point[motorAt(m) + 1] = StrictMath.log(ohm);
      point[motorAt(m) + 2] = StrictMath.log(0.5);
    }
    for (var p = 0; p < propellers.size(); p++) {
      point[propellerAt(p)] = StrictMath.log(0.16);
      point[propellerAt(p) + 3] = StrictMath.log(0.08);
    }
    return point;
  }

  /** Neither loss nor idle current below zero, a growth that a record can hold, and no curve run wild. */
  RealVector physical(RealVector point) {
    var held = point.copy();
    hold(held, 0, 0, 0.5);
    hold(held, 1, 0, 2);
    hold(held, 2, 0, 1);
    for (var m = 0; m < motors.size(); m++) {
      hold(held, motorAt(m), expectedKv(m) - 0.5, expectedKv(m) + 0.5);
      hold(held, motorAt(m) + 1, StrictMath.log(0.002), StrictMath.log(5));
      hold(held, motorAt(m) + 2, StrictMath.log(0.005), StrictMath.log(20));
      hold(held, motorAt(m) + 3, -0.2, 0.2);
    }
    for (var p = 0; p < propellers.size(); p++) {
      for (var i = propellerAt(p); i < propellerAt(p) + RowModel.OF_PROPELLER; i += 3) {
        hold(held, i, -8, 2);
        hold(held, i + 1, -1.5, 1.5);
        hold(held, i + 2, -1, 1);
      }
    }
    return held;
  }

  private static void hold(RealVector point, int index, double low, double high) {
    point.setEntry(index, Math.min(high, Math.max(low, point.getEntry(index))));
  }

  /** ln of the loaded Kv that the label leads to expect, rad/s/V. */
  double expectedKv(int motor) {
    return StrictMath.log(Units.rpmToRadPerS(labelKv[motor]) / 1.055);
  }

  int motorAt(int motor) {
    return RowModel.SHARED + RowModel.OF_MOTOR * motor;
  }

  int propellerAt(int propeller) {
    return RowModel.SHARED + RowModel.OF_MOTOR * motors.size() + RowModel.OF_PROPELLER * propeller;
  }

  int motorAt(BenchRow row) {
    return motorAt(motors.indexOf(row.motorKey()));
  }

  int propellerAt(BenchRow row) {
    return propellerAt(propellers.indexOf(row.propellerKey()));
  }

  /** Numbers of the law and of a row's motor, as {@link RowModel} takes them. */
  double[] motor(double[] point, BenchRow row) {
    var motor = new double[RowModel.SHARED + RowModel.OF_MOTOR];
    System.arraycopy(point, 0, motor, 0, RowModel.SHARED);
    var at = motorAt(row);
    System.arraycopy(point, at, motor, RowModel.SHARED, RowModel.OF_MOTOR);
    return motor;
  }

  /** Numbers of a row's propeller. */
  double[] propeller(double[] point, BenchRow row) {
    var at = propellerAt(row);
    return Arrays.copyOfRange(point, at, at + RowModel.OF_PROPELLER);
  }
}
