package pappus.compatibility;

import static org.assertj.core.api.Assertions.assertThat;
import static pappus.catalog.Parts.build;
import static pappus.catalog.Parts.motor;
import static pappus.catalog.Parts.with;
import static pappus.compatibility.Bench.FITS;

import org.junit.jupiter.api.Test;
import pappus.catalog.CellRange;

final class MotorCellsRuleTest {
  private final MotorCellsRule rule = new MotorCellsRule();

  @Test
  void fitsAtTheMostCellsAllowed() {
    assertThat(Bench.plain().says(rule, build())).isEqualTo(FITS);
  }

  @Test
  void clashesAboveThem() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "cells", new CellRange(2, 3)))))
        .isEqualTo("clashes: Motor motor is made for 2 to 3 cells, but pack battery has 4.");
  }

  @Test
  void clashesBelowThem() {
    assertThat(Bench.plain().says(rule, build(with(motor(), "cells", new CellRange(6, 6)))))
        .isEqualTo("clashes: Motor motor is made for 6 cells, but pack battery has 4.");
  }

  @Test
  void cannotBeWaived() {
    assertThat(rule.mayBeWaived()).isFalse();
  }
}
