package pappus.answers.sheet;

import java.util.LinkedHashMap;
import pappus.answers.drawing.Plan;
import pappus.answers.drawing.PlanDrawing;
import pappus.document.Pages;
import pappus.document.Shell;
import pappus.scenario.Scenario;

/** A bench sheet as a page to print: for the bench, and a card for the field. */
public final class SheetPage {
  private final String tool;

  /**
   * @param tool its version, told at the foot
   */
  public SheetPage(String tool) {
    this.tool = tool;
  }

  /** The page. */
  public String of(BenchSheet sheet, Scenario scenario) {
    var drawings = new LinkedHashMap<String, Plan>();
    StackDrawing.of(sheet.assessment()).ifPresent(drawing -> drawings.put("stack", drawing));
    sheet
        .assessment()
        .build()
        .frame()
        .ifPresent(frame -> drawings.put("places", PlanDrawing.of(scenario, sheet.assessment())));
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.still(sheet.heading().get(0) + ": bench sheet", "sheet.css"));
    content.put("sheet", sheet);
    content.put("stages", BenchStage.of(sheet, scenario));
    content.put("drawings", drawings);
    content.put("tool", tool);
    return Pages.of("sheet", content);
  }
}
