package pappus.spreadsheet;

import java.util.Optional;

/**
 * A column of a spreadsheet.
 *
 * @param index from 0
 * @param title as it stands there
 * @param leaf the field its cells hold
 * @param path of that field in the record, with places in lists from 0
 * @param ratio of its unit to the field's, if it is in any
 * @param currency of its amounts, if its title names one
 */
record Column(
    int index,
    String title,
    Leaf leaf,
    String path,
    Optional<Measure.Ratio> ratio,
    Optional<String> currency) {

  /** Its letters, as spreadsheets name columns. */
  String letters() {
    return letters(index);
  }

  /** A to Z, then AA and on. */
  static String letters(int index) {
    var letters = new StringBuilder();
    for (var rest = index; rest >= 0; rest = rest / 26 - 1) {
      letters.insert(0, (char) ('A' + rest % 26));
    }
    return letters.toString();
  }
}
