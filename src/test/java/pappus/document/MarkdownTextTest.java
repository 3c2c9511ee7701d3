package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkdownTextTest {
  @Test
  void setsNumbersToTheRightAndWritesEveryDigit() {
    var text = MarkdownText.of(
        List.of("part", "g", "pieces"),
        List.of(false, true, true),
        List.of(List.of("Reed 4", 12.5, 4), List.of("Sedge", 40.0, 1), List.of("", "", 7L)));

    assertThat(text).isEqualTo("""
            | part | g | pieces |
            | --- | ---: | ---: |
            | Reed 4 | 12.5 | 4 |
            | Sedge | 40 | 1 |
            |  |  | 7 |
            """);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(delimiter = '§', quoteCharacter = '%', textBlock = """
      *a* _b_            § \\*a\\* \\_b\\_
      `rm`               § \\`rm\\`
      a\\b               § a\\\\b
      ~~a~~              § \\~\\~a\\~\\~
      $x^2$              § \\$x\\^2\\$
      a|b                § a\\|b
      # a # b            § \\# a # b
      - a - b            § \\- a - b
      + a + b            § \\+ a + b
      [x](http://y)      § \\[x\\]\\(http&#58;//y\\)
      ![x](y)            § \\!\\[x\\]\\(y\\)
      [x]: http://y      § \\[x\\]&#58; http&#58;//y
      http://y.example   § http&#58;//y.example
      www.y.example      § www&#46;y.example
      WwW.y.example      § WwW&#46;y.example
      ww.y wwwy.         § ww.y wwwy.
      a@y.example        § a&#64;y.example
      <script>           § &#60;script&#62;
      <http://y>         § &#60;http&#58;//y&#62;
      &lt;b&gt;          § &#38;lt;b&#38;gt;
      a="b" c='d'        § a=&#34;b&#34; c=&#39;d&#39;
      4×1.9×2 für 20 €   § 4×1.9×2 für 20 €
      """)
  void aTextIsNoMoreThanText(String text, String escaped) {
    assertThat(MarkdownText.escaped(text)).isEqualTo(escaped);
  }

  @Test
  void aControlCharacterIsABlank() {
    assertThat(MarkdownText.escaped("a\nb\rc\td\u0000e\u001B[2Jf\u0085g\u2028h\u2029i"))
        .isEqualTo("a b c d e \\[2Jf g h i");
    assertThat(MarkdownText.escaped("\n a \r\n")).isEqualTo("a");
    assertThat(MarkdownText.escaped("\u0007# a")).isEqualTo("\\# a");
    assertThat(MarkdownText.escaped("  - a")).isEqualTo("\\- a");
  }

  @Test
  void noCellAndNoTitleBreaksTheTable() {
    var text = MarkdownText.of(
        List.of("a|b", "c\nd"), List.of(false, true), List.of(List.of("e | f", "g\n| h |")));

    assertThat(text).isEqualTo("| a\\|b | c d |\n| --- | ---: |\n| e \\| f | g \\| h \\| |\n");
  }
}
