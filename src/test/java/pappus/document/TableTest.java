package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {
  private static final String LONG =
      "battery lead Isthmus 30 to PH, battery strap Bindweed 10×130, pack 12 mm backward";

  private static final Table TABLE = new Table(
      List.of(
          Table.Column.text("id", "id"),
          Table.Column.number("min", "flight_min", 1),
          Table.Column.number("g", "all_up_g", 0),
          Table.Column.text("changes with it", "what")),
      List.of(
          List.of("neap-2s-350", 7.8349, 106.27, LONG),
          List.of("tidewell-2s-3400", 45.36, 188.1, ""),
          List.of("ebb", "", 99.5, "no buzzer")));

  @Test
  void setsNumbersToTheRightAndTextsToTheLeft() {
    assertThat(TABLE.lines(200))
        .containsExactly(
            "id                 min    g  changes with it",
            "neap-2s-350        7.8  106  " + LONG,
            "tidewell-2s-3400  45.4  188",
            "ebb                     100  no buzzer");
  }

  /** Twenty-nine columns before the last one leave it 71. */
  @Test
  void theLastColumnGoesOnBelow() {
    assertThat(TABLE.lines(100))
        .containsExactly(
            "id                 min    g  changes with it",
            "neap-2s-350        7.8  106  battery lead Isthmus 30 to PH, battery strap Bindweed 10×130, pack 12",
            "                             mm backward",
            "tidewell-2s-3400  45.4  188",
            "ebb                     100  no buzzer");
  }

  @Test
  void theLastColumnHasLinesOfItsOwnWhereItHasNoRoom() {
    assertThat(TABLE.lines(40))
        .containsExactly(
            "id                 min    g",
            "    changes with it",
            "neap-2s-350        7.8  106",
            "    battery lead Isthmus 30 to PH,",
            "    battery strap Bindweed 10×130, pack",
            "    12 mm backward",
            "tidewell-2s-3400  45.4  188",
            "ebb                     100  no buzzer");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 60, 100, 200})
  void keepsToTheColumnsAndLosesNoWord(int width) {
    var lines = TABLE.lines(width);

    assertThat(lines).allMatch(line -> line.length() <= width);
    assertThat(lines).allMatch(line -> line.equals(line.stripTrailing()));
    assertThat(String.join(" ", lines).split("\\s+"))
        .isEqualTo(String.join(" ", TABLE.lines(1000)).split("\\s+"));
  }

  @Test
  void aSpreadsheetHasEveryDigitAndAPageRoundedOnes() {
    assertThat(TABLE.csv())
        .isEqualTo("id,flight_min,all_up_g,what\n"
            + "neap-2s-350,7.8349,106.27,\"" + LONG + "\"\n"
            + "tidewell-2s-3400,45.36,188.1,\n"
            + "ebb,,99.5,no buzzer\n");
    assertThat(TABLE.markdown())
        .isEqualTo("| id | min | g | changes with it |\n"
            + "| --- | ---: | ---: | --- |\n"
            + "| neap-2s-350 | 7.8 | 106 | " + LONG + " |\n"
            + "| tidewell-2s-3400 | 45.4 | 188 |  |\n"
            + "| ebb |  | 100 | no buzzer |\n");
  }

  @Test
  void aTableWithoutRowsHasItsTitles() {
    var empty = new Table(TABLE.columns(), List.of());

    assertThat(empty.lines(100)).containsExactly("id  min  g  changes with it");
    assertThat(empty.csv()).isEqualTo("id,flight_min,all_up_g,what\n");
  }

  @Test
  void namesDoNoHarm() {
    var hostile = new Table(
        List.of(Table.Column.text("part", "part"), Table.Column.text("what", "what")),
        List.of(List.of("=cmd|a", "x\u001B[2J\ny\u202E<b>")));

    assertThat(hostile.lines(100)).contains("=cmd|a  x\\u001b[2J\\u000ay\\u202e<b>");
    assertThat(hostile.csv()).startsWith("part,what\n'=cmd|a,");
    assertThat(hostile.markdown())
        .endsWith("| =cmd\\|a | x\\\\u001b\\[2J\\\\u000ay\\\\u202e&#60;b&#62; |\n");
  }
}
