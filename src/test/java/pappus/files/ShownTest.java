package pappus.files;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ShownTest {
  @Test
  void whatMovesTheCursorOrTurnsTheTextIsMadeVisible() {
    assertThat(Shown.safe("Rüschel 4×1.9 €")).isEqualTo("Rüschel 4×1.9 €");
    assertThat(Shown.safe("\u001B[31m")).isEqualTo("\\u001b[31m");
    assertThat(Shown.safe("\u0007\r\n\t")).isEqualTo("\\u0007\\u000d\\u000a\\u0009");
    assertThat(Shown.safe("a\u202Eb\u2066c\u200B")).isEqualTo("a\\u202eb\\u2066c\\u200b");
    assertThat(Shown.safe("\u2028\u2029\u009B")).isEqualTo("\\u2028\\u2029\\u009b");
    assertThat(Shown.safe("\uD800")).isEqualTo("\\ud800");
    assertThat(Shown.safe(Character.toString(0xE0041) + "1")).isEqualTo("\\u{e0041}1");
  }

  @Test
  void aTextMadeSafeStaysAsItIs() {
    var once = Shown.safe("a\\b\u001B[2J\u202E\uE000 \"c\"");

    assertThat(once).isEqualTo("a\\b\\u001b[2J\\u202e\\ue000 \"c\"");
    assertThat(Shown.safe(once)).isEqualTo(once);
    assertThat(new Problem("b\u0007.json", 2, once + "\n").toString())
        .isEqualTo("b\\u0007.json:2: " + once + "\\u000a");
  }

  @Test
  void whatLooksLikeABlankOrLikeNothingIsMadeVisible() {
    assertThat(Shown.safe("a\u00A0b\u202Fc\u2011d\u034Fe\u00ADf"))
        .isEqualTo("a\\u00a0b\\u202fc\\u2011d\\u034fe\\u00adf");
    assertThat(Shown.seen("a\u00A0\t\n\u200D")).isEqualTo("a\\u00a0\t\n\\u200d");
    for (var hiding : new String[] {
      "\u0000",
      "\u007F",
      "\u009B",
      "\u00A0",
      "\u00AD",
      "\u034F",
      "\u061C",
      "\u200B",
      "\u200C",
      "\u200D",
      "\u2011",
      "\u2028",
      "\u202E",
      "\u202F",
      "\u2060",
      "\u2066",
      "\uFEFF",
      "\uD800",
      "\uDC00",
      Character.toString(0xE0001),
      Character.toString(0xE0041)
    }) {
      assertThat(Shown.hides("a" + hiding + "b")).as(Shown.text(hiding)).isTrue();
      assertThat(Shown.safe("ö" + hiding)).as(Shown.text(hiding)).matches("ö\\\\u[0-9a-f{}]+");
    }
    assertThat(Shown.hides("Rüschel 4×1.9 € 日本 " + Character.toString(0x1F681))).isFalse();
  }
}
