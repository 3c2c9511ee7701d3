package pappus.answers.sheet;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pappus.answers.result.BriefJson;
import pappus.document.Table;

/** A bench sheet with every digit. */
public record SheetJson(
    @JsonPropertyDescription("Rank of the build in its result.")
    int rank,

    @JsonPropertyDescription("Files that are not as they were when the result was made.")
    List<String> changed,

    @JsonPropertyDescription("What is to be said first.") List<String> remarks,
    @JsonPropertyDescription("The build.") BriefJson build,

    @JsonPropertyDescription("What to do on the bench, by section.")
    Map<String, Section> bench,

    @JsonPropertyDescription("Steps of the first power-up.") List<String> firstPowerUp,

    @JsonPropertyDescription("The first-flight card, by section.")
    Map<String, Section> firstFlight,

    @JsonPropertyDescription("What to weigh, by the columns that weigh reads.")
    List<Map<String, Object>> masses,

    @JsonPropertyDescription("To heed with this build.") List<String> careful) {
  /** A table and what is said beneath it. */
  record Section(
      @JsonPropertyDescription("Its title.") String title,

      @JsonPropertyDescription("Its rows by column; empty cells are left out.")
      List<Map<String, Object>> rows,

      @JsonPropertyDescription("What is said beneath.") List<String> says) {}

  static SheetJson of(BenchSheet sheet, BriefJson build, int rank, List<String> changed) {
    return new SheetJson(
        rank,
        changed,
        sheet.remarks(),
        build,
        sections(sheet.bench()),
        sheet.steps(),
        sections(sheet.card()),
        rows(sheet.masses()),
        sheet.cautions());
  }

  private static Map<String, Section> sections(List<SheetSection> sections) {
    var content = new LinkedHashMap<String, Section>();
    for (var section : sections) {
      content.put(
          section.key(), new Section(section.title(), rows(section.table()), section.says()));
    }
    return content;
  }

  private static List<Map<String, Object>> rows(Table table) {
    return table.rows().stream().map(row -> cells(table, row)).toList();
  }

  private static Map<String, Object> cells(Table table, List<Object> row) {
    var cells = new LinkedHashMap<String, Object>();
    for (var i = 0; i < row.size(); i++) {
      if (!row.get(i).equals("")) {
        cells.put(table.columns().get(i).key(), row.get(i));
      }
    }
    return cells;
  }
}
