package pappus.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pappus.files.json.SchemaFields;

/** Cells as shops print them. */
class TradeWordTest {
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
          KV           | motors     | 3800KV                 | {speedConstantRpmPerVolt=3800}
          stator       | motors     | 1404                   | {statorDiameterMillimetres=14, statorHeightMillimetres=4}
          Stator       | motors     | 1303.5                 | {statorDiameterMillimetres=13, statorHeightMillimetres=3.5}
          cells        | batteries  | 4S2P                   | {cellsInParallel=2, cellsInSeries=4}
          cells        | batteries  | 4S                     | {cellsInSeries=4}
          cells        | motors     | 2-4S                   | {cells.from=2, cells.to=4}
          cells        | boards     | 3-6S                   | {input.highVolts=25.2, input.lowVolts=9.0}
          size         | propellers | 4x2.5x2                | {blades=2, diameterInches=4, pitchInches=2.5}
          size         | propellers | 75mm-3                 | {blades=3, diameterInches=2.952756}
          size         | batteries  | 18x75x35 mm            | {heightMillimetres=18, lengthMillimetres=75, widthMillimetres=35}
          bolt pattern | motors     | 9x9/12x12              | {boltCirclesMillimetres=[9, 12], boltCirclesNeeded=either}
          bolt pattern | motors     | 16x19                  | {boltCirclesMillimetres=[16, 19], boltCirclesNeeded=both}
          bolt pattern | motors     | 12x12                  | {boltCirclesMillimetres=[12]}
          mounting     | boards     | 25.5x25.5              | {mount.pattern=25.5x25.5}
          mounting     | frames     | 20x20/30.5x30.5        | {positions=[{patterns=[{pattern=20x20}, {pattern=30.5x30.5}]}]}
          weight       | motors     | 8.7 g with 100 mm wire | {leadsIncludedMillimetres=100, mass.grams=8.7}
          weight       | screws     | 6.8 g / set of 8       | {mass.grams=0.85}
          weight       | batteries  | 78 g without leads     | {mass.grams=78, massIncludesLeads=false}
          C rating     | batteries  | 75C/150C               | {labelRating=75}
          """)
  void readsACell(String title, String list, String cell, String values) {
    var word = TradeWord.of(title, list).orElseThrow();

    assertThat(new java.util.TreeMap<>(word.read(list, cell).orElseThrow())).hasToString(values);
  }

  /** Each is told with its readings. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = """
          stator       | motors     | 13035           | 13 by 3.5 or 130 by 35
          size         | propellers | 5040            | 5 by 4.0 or 50 by 40
          bolt pattern | motors     | 9/12x12         | two patterns or a slot
          bolt pattern | motors     | 16x19/9x9       | either
          cells        | batteries  | 3-4S            | 4S2P
          mounting     | boards     | 20x20/30.5x30.5 | of a frame
          weight       | straps     | 3 g with 100 mm wire | set of 8
          """)
  void refusesWhatCouldBeReadInTwoWays(String title, String list, String cell, String told) {
    var word = TradeWord.of(title, list).orElseThrow();

    assertThat(word.read(list, cell)).isEmpty();
    assertThat(word.expected()).contains(told);
  }

  /** A word that no schema tells would be a secret. */
  @Test
  void everyWordStandsInASchema() {
    var lists = Stream.of("motors", "propellers", "batteries", "boards", "frames", "transmitters");
    for (var list : lists.toList()) {
      var told = SchemaFields.of(list).stream()
          .map(SchemaFields.Field::description)
          .filter(text -> text.contains(" In a spreadsheet also "))
          .map(text -> text.replaceAll("(?s).* In a spreadsheet also ([^:]+):.*", "$1"))
          .toList();
      for (var title : told) {
        assertThat(TradeWord.of(title, list)).as(title + " of " + list).isPresent();
      }
      assertThat(TradeWord.ALL.stream()
              .filter(word -> word.fields().containsKey(list) || word.title().equals("weight"))
              .map(TradeWord::title))
          .containsExactlyInAnyOrderElementsOf(told.stream()
              .map(title -> title.toLowerCase(java.util.Locale.ROOT).replace(" ", ""))
              .toList());
    }
  }
}
