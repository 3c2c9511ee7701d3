package pappus.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A page of sentences, pictures and tables, for answers that are no ranking. */
public final class FiguresPage {
  private FiguresPage() {}

  /**
   * The page.
   *
   * @param title that tells the page from others of the same scenario
   * @param lines what is said first, the heading first of all
   * @param tables by what they are called
   * @param tool its version, told at the foot
   */
  public static String of(
      String title,
      List<String> lines,
      List<Chart> charts,
      Map<String, Table> tables,
      List<String> cautions,
      String tool) {
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.drawing(title, charts, Map.of()));
    content.put("lines", lines);
    content.put("charts", charts);
    content.put("tables", tables);
    content.put("cautions", cautions);
    content.put("tool", tool);
    return Pages.of("figures", content);
  }
}
