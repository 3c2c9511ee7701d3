package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.compatibility.Bench.FITS;
import static pappus.part.Parts.build;
import static pappus.part.Parts.motor;
import static pappus.part.Parts.with;

import org.junit.jupiter.api.Test;
import pappus.part.CellRange;

final class MotorCellsRuleTest {
  private final MotorCellsRule rule = new MotorCellsRule();

  @Test
  void fitsAtTheMostCellsAllowed() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesAboveThem() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "cells", new CellRange(2, 3)))))
        .isEqualTo("clashes: Motor motor takes 2 to 3 cells, but pack battery has 4.");
  }

  @Test
  void clashesBelowThem() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "cells", new CellRange(6, 6)))))
        .isEqualTo("clashes: Motor motor takes 6 cells, but pack battery has 4.");
  }

  @Test
  void cannotBeWaived() {
    assertThat(rule.mayBeWaived()).isFalse();
  }
}
