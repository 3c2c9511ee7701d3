package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import gg.jte.output.StringOutput;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class PageOutputTest {
  private static String in(String tag, @Nullable String attribute, String text) {
    var page = new StringOutput();
    var output = new PageOutput(page);
    output.setContext(tag, attribute);
    output.writeUserContent(text);
    return page.toString();
  }

  @Test
  void whatHidesOrTurnsTheTextIsMadeVisibleAndMarkupStaysText() {
    var hostile = "a\u202Eb\n<script>&\u001B";

    assertThat(in("p", null, hostile)).isEqualTo("a\\u202eb\\u000a&lt;script&gt;&amp;\\u001b");
    assertThat(in("td", "data-value", "\"\u202E")).isEqualTo("&#34;\\u202e");
  }

  /** Hebrew and Arabic letters; the numbers after them belong to the sentence. */
  @Test
  void namesFromRightToLeftStandByThemselves() {
    assertThat(in("p", null, "1. \u05D0\u05D1 \u05D2 1404, \u0627\u0628: 5.1 g & more"))
        .isEqualTo(
            "1. <bdi>\u05D0\u05D1 \u05D2</bdi> 1404, <bdi>\u0627\u0628</bdi>: 5.1 g &amp; more");
    assertThat(in("p", null, "\u05D0\"4\u05D1")).isEqualTo("<bdi>\u05D0\"4\u05D1</bdi>");
    assertThat(in("p", null, "R\u00FCschel 4\u00D71.9")).isEqualTo("R\u00FCschel 4\u00D71.9");
  }

  /** Elements of text alone hold no other, attributes none at all. */
  @Test
  void namesInAttributesAndTitlesStayAsTheyAre() {
    assertThat(in("title", null, "\u05D0")).isEqualTo("\u05D0");
    assertThat(in("text", null, "\u05D0")).isEqualTo("\u05D0");
    assertThat(in("svg", "aria-label", "\u05D0")).isEqualTo("\u05D0");
  }
}
