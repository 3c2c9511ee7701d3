package pappus.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.explanation.FrameWords;
import pappus.scenario.Goal;
import pappus.scenario.Scenario;
import pappus.whatif.FrameAdvice;

/** What a designer of a frame asks next. */
final class FrameAdviceText {
  private final Scenario scenario;
  private final FrameAdvice advice;

  FrameAdviceText(Scenario scenario, FrameAdvice advice) {
    this.scenario = scenario;
    this.advice = advice;
  }

  void say(Lines lines, int width) {
    var words = new FrameWords(advice, scenario.goalOrEndurance() == Goal.RANGE);
    lines.say(words.frame());
    words.gram().ifPresent(lines::say);
    lines.say("Spacing of the motors that propellers need:");
    rooms().lines(width).forEach(line -> lines.row(line, 4));
    var useful = advice.additions().stream()
        .filter(one -> one.gained() > 0 || one.fitAfter() > one.fitBefore())
        .toList();
    lines.say(
        useful.isEmpty()
            ? words.nothingToAdd()
            : "What one more hole pattern or bolt circle would add:");
    useful.forEach(addition -> lines.item(words.addition(addition)));
  }

  private Table rooms() {
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

  Map<String, Object> json(AnswerJson answer) {
    var content = new LinkedHashMap<String, Object>();
    content.put("frame", advice.frame());
    advice.best().build().ifPresent(build -> content.put("best", answer.brief(build)));
    content.put("proven", advice.best().isProof());
    advice.rates().ifPresent(rates -> content.put("lostPerGram", rates.perGram()));
    var rooms = new ArrayList<Object>();
    for (var room : advice.rooms()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("inches", room.inches());
      one.put("leastMillimetres", room.leastMillimetres());
      one.put("usualMillimetres", room.usualMillimetres());
      one.put("gapMillimetres", room.clearanceMillimetres(advice.frame()));
      rooms.add(one);
    }
    content.put("propellers", rooms);
    var additions = new ArrayList<Object>();
    for (var addition : advice.additions()) {
      var one = new LinkedHashMap<String, Object>();
      one.put("what", addition.what());
      one.put("parts", addition.parts());
      one.put("fitBefore", addition.fitBefore());
      one.put("fitAfter", addition.fitAfter());
      one.put("of", addition.of());
      one.put("gained", addition.gained());
      one.put("proven", addition.best().isProof());
      addition.best().build().ifPresent(build -> one.put("best", answer.brief(build)));
      additions.add(one);
    }
    content.put("additions", additions);
    return content;
  }
}
