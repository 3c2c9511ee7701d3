package pappus.answers.sheet;

import java.util.LinkedHashMap;
import pappus.document.Pages;
import pappus.document.Shell;

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
  public String of(BenchSheet sheet) {
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.still(sheet.heading().get(0) + ": bench sheet", "sheet.css"));
    content.put("sheet", sheet);
    content.put("tool", tool);
    return Pages.of("sheet", content);
  }
}
