package pappus.document;

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

  @Test
  void aFormulaIsFoundBehindBlanksAndInFullWidthSigns() {
    assertThat(first(" =cmd")).isEqualTo("' =cmd");
    assertThat(first("   -1")).isEqualTo("'   -1");
    assertThat(first(" \t@a")).isEqualTo("' \t@a");
    assertThat(first("\u2003+a")).isEqualTo("'\u2003+a");
    assertThat(first("\u00A0=a")).isEqualTo("'\\u00a0=a");
    assertThat(first("\uFEFF=a")).isEqualTo("'\\ufeff=a");
    assertThat(first("\u200B\u0007=a")).isEqualTo("'\\u200b\\u0007=a");
    assertThat(first("\uFF1Da")).isEqualTo("'\uFF1Da");
    assertThat(first("\uFF0Ba")).isEqualTo("'\uFF0Ba");
    assertThat(first("\uFF0Da")).isEqualTo("'\uFF0Da");
    assertThat(first(" \uFF20a")).isEqualTo("' \uFF20a");
    assertThat(first("\ra")).isEqualTo("'\\u000da");
    assertThat(first("\na")).isEqualTo("\"'\na\"");
    assertThat(first("\n=a")).isEqualTo("\"'\n=a\"");
  }

  /** As the steps of a sweep below zero are. */
  @Test
  void aPlainNumberIsNoFormula() {
    assertThat(CsvText.of(List.of("at"), List.of(List.of("-5"), List.of("-5+1"), List.of("-A1"))))
        .isEqualTo("at\n-5\n'-5+1\n'-A1\n");
  }

  @Test
  void signsThatSteerATerminalAreToldByTheirNumbers() {
    assertThat(first("a\u001b[2J\u009b\u202eb")).isEqualTo("a\\u001b[2J\\u009b\\u202eb");
  }

  @Test
  void whatIsNoFormulaStaysAsItIs() {
    assertThat(first("a-b")).isEqualTo("a-b");
    assertThat(first(" a = b")).isEqualTo(" a = b");
    assertThat(first("4\u00D71.9\u00D72")).isEqualTo("4\u00D71.9\u00D72");
    assertThat(first("'a")).isEqualTo("'a");
    assertThat(CsvText.of(List.of("a", "b"), List.of(List.of("", " ")))).isEqualTo("a,b\n, \n");
  }

  /** One text as the only cell below its title. */
  private static String first(String text) {
    var table = CsvText.of(List.of("t"), List.of(List.of(text)));
    assertThat(table).startsWith("t\n").endsWith("\n");
    return table.substring(2, table.length() - 1);
  }
}
