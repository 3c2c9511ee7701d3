package pappus.answers.whatif;

import java.util.ArrayList;
import java.util.List;
import pappus.document.Lines;
import pappus.document.Table;
import pappus.scenario.Scenario;
import pappus.whatif.sweep.FrameAdvice;

/** What a designer of a frame asks next. */
final class FrameAdviceText {
  private final FrameAdvice advice;
  private final FrameWords words;

  FrameAdviceText(Scenario scenario, FrameAdvice advice) {
    this.advice = advice;
    this.words = new FrameWords(advice, scenario.isForRange());
  }

  void say(Lines lines, int width) {
    about().forEach(lines::say);
    lines.say("Spacing of the motors that propellers need:");
    rooms(advice).lines(width).forEach(line -> lines.row(line, 4));
    lines.say(additions());
    added().forEach(lines::item);
  }

  /** Everything but the table. */
  List<String> said() {
    var said = new ArrayList<>(about());
    said.add(additions());
    said.addAll(added());
    return said;
  }

  private List<String> about() {
    var about = new ArrayList<>(List.of(words.frame()));
    words.gram().ifPresent(about::add);
    return about;
  }

  private List<FrameAdvice.Addition> useful() {
    return advice.additions().stream()
        .filter(one -> one.gained() > 0 || one.fitAfter() > one.fitBefore())
        .toList();
  }

  private String additions() {
    return useful().isEmpty()
        ? words.nothingToAdd()
        : "What one more hole pattern or bolt circle would add:";
  }

  private List<String> added() {
    return useful().stream().map(words::addition).toList();
  }

  static Table rooms(FrameAdvice advice) {
    var rows = new ArrayList<List<Object>>();
    for (var room : advice.rooms()) {
      rows.add(List.of(
          room.inches(),
          room.leastMillimetres(),
          room.usualMillimetres(),
          room.clearanceMillimetres(advice.frame()),
          FrameWords.room(room, advice.frame())));
    }
    return new Table(
        List.of(
            Table.Column.number("in", "inch", 1),
            Table.Column.number("least mm", "least_mm", 1),
            Table.Column.number("usual mm", "usual_mm", 1),
            Table.Column.number("gap here mm", "gap_mm", 1),
            Table.Column.text("", "what")),
        rows);
  }
}
