package pappus.answers.sheet;

import java.util.List;
import pappus.answers.result.Document;
import pappus.answers.result.Run;
import pappus.answers.shape.BriefJson;
import pappus.answers.shape.NamedParts;
import pappus.document.Lines;
import pappus.document.MarkdownText;
import pappus.scenario.Scenario;

/** A bench sheet for a terminal, a spreadsheet, a machine or to paste elsewhere. */
public final class SheetReport {
  private static final String STEPS = "First power-up, propellers off";
  private static final String CARD = "First-flight card";

  private final Scenario scenario;
  private final BenchSheet sheet;

  public SheetReport(Scenario scenario, BenchSheet sheet) {
    this.scenario = scenario;
    this.sheet = sheet;
  }

  /**
   * For a terminal.
   *
   * @param width columns
   */
  public String text(int width) {
    var lines = new Lines(width);
    sheet.heading().forEach(lines::say);
    sheet.remarks().forEach(lines::caution);
    sheet.bench().forEach(section -> add(section, width, lines));
    lines.blank().say(STEPS);
    for (var i = 0; i < sheet.steps().size(); i++) {
      lines.row((i + 1) + ". " + sheet.steps().get(i), 4);
    }
    if (!sheet.card().isEmpty()) {
      lines.blank().say(CARD);
      sheet.card().forEach(section -> add(section, width, lines));
    }
    lines.blank();
    sheet.cautions().forEach(lines::caution);
    return lines.text();
  }

  private static void add(SheetSection section, int width, Lines lines) {
    lines.blank().say(section.title());
    section.table().lines(width).forEach(line -> lines.row(line, 4));
    section.says().forEach(lines::item);
  }

  /** To paste elsewhere. */
  public String markdown() {
    var text = new StringBuilder();
    var heading = sheet.heading();
    text.append("# ").append(MarkdownText.escaped(heading.get(0))).append("\n\n");
    heading.subList(1, heading.size()).forEach(line -> paragraph(line, text));
    items(sheet.remarks(), text);
    sheet.bench().forEach(section -> add(section, "## ", text));
    text.append("## ").append(STEPS).append("\n\n");
    for (var i = 0; i < sheet.steps().size(); i++) {
      text.append(i + 1)
          .append(". ")
          .append(MarkdownText.escaped(sheet.steps().get(i)))
          .append('\n');
    }
    text.append('\n');
    if (!sheet.card().isEmpty()) {
      text.append("## ").append(CARD).append("\n\n");
      sheet.card().forEach(section -> add(section, "### ", text));
    }
    text.append("## Cautions\n\n");
    items(sheet.cautions(), text);
    return text.toString().stripTrailing() + "\n";
  }

  private static void add(SheetSection section, String level, StringBuilder text) {
    text.append(level).append(section.title()).append("\n\n");
    text.append(section.table().markdown()).append('\n');
    items(section.says(), text);
  }

  private static void paragraph(String line, StringBuilder text) {
    text.append(MarkdownText.escaped(line)).append("\n\n");
  }

  private static void items(List<String> items, StringBuilder text) {
    items.forEach(item -> text.append("- ").append(MarkdownText.escaped(item)).append('\n'));
    if (!items.isEmpty()) {
      text.append('\n');
    }
  }

  /** The rows to weigh, as {@code weigh --masses} reads them once they are filled in. */
  public String csv() {
    return sheet.masses().csv();
  }

  /**
   * With every digit.
   *
   * @param rank of the build in its result
   * @param changed files that are not as they were when the result was made
   */
  public String json(Run run, int rank, List<String> changed) {
    var parts = new NamedParts();
    var build = BriefJson.of(sheet.assessment(), scenario, parts);
    return Document.of(
        scenario,
        run,
        sheet.isSound() ? "found" : "infeasible",
        SheetJson.of(sheet, build, rank, changed),
        parts);
  }
}
