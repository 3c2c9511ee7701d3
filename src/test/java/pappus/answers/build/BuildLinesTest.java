package pappus.answers.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BuildLinesTest {

  @Test
  void saysWhereThePackSits() {
    assertThat(BuildLines.pack(3.4))
        .isEqualTo("Pack: its middle 3 mm before the middle of the motors.");
    assertThat(BuildLines.pack(-12.6))
        .isEqualTo("Pack: its middle 13 mm behind the middle of the motors.");
    assertThat(BuildLines.pack(-0.4)).isEqualTo("Pack: its middle is that of the motors.");
  }
}
