package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JourneyTest {
  /** Who relies on kilometres is never told more than was counted, on either side of ten. */
  @Test
  void roundsDownWhatIsReliedOn() {
    assertThat(Journey.atMost(12_399)).isEqualTo("12.3");
    assertThat(Journey.atMost(12_400)).isEqualTo("12.4");
    assertThat(Journey.atMost(10_000)).isEqualTo("10.0");
    assertThat(Journey.atMost(9_999)).isEqualTo("9.95");
    assertThat(Journey.atMost(2_049.9)).isEqualTo("2.00");
    assertThat(Journey.kilometres(12_399)).isEqualTo("12.4");
  }
}
