package pappus.luck;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A few of the worlds whose whole table the benchmark of the same name fills; so few leave the mean unsure, which the
 * limits allow for.
 */
@Tag("slow")
class LuckOfTheWinnerTest {
  private static final int OF_EACH = 24;
  private static final int WORLDS = 4;
  private static final double SURE = 2;

  @ParameterizedTest
  @EnumSource
  void theWinnersFlightIsNotItsLuckAndCautionCostsLittle(World.Kind kind) {
    var luck = Luck.in(kind, OF_EACH, WORLDS);

    var bias = luck.meanBias();
    var more = luck.meanLostToCaution();
    System.out.printf(
        Locale.ROOT,
        "%s, %d of each, %d worlds: predicted over true %+.1f ± %.1f %%, lost %.1f %%, of it to caution %.1f ± %.1f%n",
        kind,
        OF_EACH,
        WORLDS,
        100 * bias.value(),
        100 * bias.error(),
        100 * luck.meanLoss().value(),
        100 * more.value(),
        100 * more.error());
    assertThat(Math.abs(bias.value()))
        .isLessThan((kind == World.Kind.AS_ASSUMED ? 0.02 : 0.04) + SURE * bias.error());
    assertThat(more.value()).isLessThan(0.03 + SURE * more.error());
  }

  @Test
  void whoBelievesRecordsIsFooled() {
    var bias = Luck.believing(World.Kind.BLUNDERS_5, OF_EACH, WORLDS);

    assertThat(bias.value()).isGreaterThan(0.10);
  }
}
