package pappus.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTextTest {
  @Test
  void noTextIsAFormulaAndNoNumberIsAText() {
    var text = CsvText.of(
        List.of("text", "number"),
        List.of(
            List.of("=1+1", -1.5),
            List.of("+a", 12),
            List.of("-a", 0.1),
            List.of("@a", 1e7),
            List.of("\ta", ""),
            List.of("a=b, \"c\"", "")));

    assertThat(text)
        .isEqualTo(
            "text,number\n'=1+1,-1.5\n'+a,12\n'-a,0.1\n'@a,10000000\n'\ta,\n\"a=b, \"\"c\"\"\",\n");
  }
}
