package pappus.order.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Random;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** Linear programs, also as the library solves them that tells no prices. */
class SimplexTest {
  private static final int PROGRAMS = 200;

  private static final class Drawn {
    private final double[] gain;
    private final double[][] rows;
    private final double[] right;

    private Drawn(double[] gain, double[][] rows, double[] right) {
      this.gain = gain;
      this.rows = rows;
      this.right = right;
    }

    double[] gain() {
      return gain;
    }

    double[][] rows() {
      return rows;
    }

    double[] right() {
      return right;
    }

    static Drawn of(int seed) {
      var random = new Random(seed);
      var gain = new double[2 + random.nextInt(12)];
      var rows = new double[1 + random.nextInt(10)][gain.length];
      var right = new double[rows.length];
      for (var column = 0; column < gain.length; column++) {
        gain[column] = random.nextInt(10);
      }
      for (var row = 0; row < rows.length; row++) {
        // Every program has an end; some right sides are 0, where programs are degenerate.
        right[row] = random.nextInt(4) == 0 ? 0 : random.nextInt(20);
        for (var column = 0; column < gain.length; column++) {
          rows[row][column] = row == 0 ? 1 + random.nextInt(3) : random.nextInt(7) - 2;
        }
      }
      return new Drawn(gain, rows, right);
    }
  }

  @Test
  void hasTheValueThatALibraryFinds() {
    for (var seed = 0; seed < PROGRAMS; seed++) {
      var drawn = Drawn.of(seed);
      var constraints = new ArrayList<LinearConstraint>();
      for (var row = 0; row < drawn.rows().length; row++) {
        constraints.add(
            new LinearConstraint(drawn.rows()[row], Relationship.LEQ, drawn.right()[row]));
      }
      var theirs = new SimplexSolver()
          .optimize(
              new LinearObjectiveFunction(drawn.gain(), 0),
              new LinearConstraintSet(constraints),
              GoalType.MAXIMIZE,
              new NonNegativeConstraint(true))
          .getValue();

      var ours = Simplex.maximise(drawn.gain(), drawn.rows(), drawn.right());

      assertThat(ours.value()).as("program %s", seed).isCloseTo(theirs, within(1e-3));
    }
  }

  /** Weak duality needs no solver: prices that pay for every gain bound the value. */
  @Test
  void pricesPayForEveryGain() {
    for (var seed = 0; seed < PROGRAMS; seed++) {
      var drawn = Drawn.of(seed);

      var solved = Simplex.maximise(drawn.gain(), drawn.rows(), drawn.right());

      var worth = 0.0;
      for (var row = 0; row < drawn.rows().length; row++) {
        assertThat(solved.price(row)).isNotNegative();
        worth += solved.price(row) * drawn.right()[row];
      }
      for (var column = 0; column < drawn.gain().length; column++) {
        var paid = 0.0;
        for (var row = 0; row < drawn.rows().length; row++) {
          paid += solved.price(row) * drawn.rows()[row][column];
        }
        assertThat(paid).isGreaterThanOrEqualTo(drawn.gain()[column] - 1e-7);
      }
      assertThat(worth).isCloseTo(solved.value(), within(1e-3));
    }
  }

  @Test
  void refusesARightSideBelowZeroAndAProgramWithoutEnd() {
    assertThatThrownBy(
            () -> Simplex.maximise(new double[] {1}, new double[][] {{1}}, new double[] {-1}))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () -> Simplex.maximise(new double[] {1}, new double[][] {{-1}}, new double[] {1}))
        .isInstanceOf(ArithmeticException.class);
  }
}
