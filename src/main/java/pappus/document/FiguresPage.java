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
   * @param lines what is said first, the title first of all
   * @param tables by what they are called
   * @param tool its version, told at the foot
   */
  public static String of(
      List<String> lines,
      List<Chart> charts,
      Map<String, Table> tables,
      List<String> cautions,
      String tool) {
    var content = new LinkedHashMap<String, Object>();
    content.put("shell", Shell.drawing(lines.get(0), charts, Map.of()));
    content.put("lines", lines);
    content.put("charts", charts);
    content.put("tables", tables);
    content.put("cautions", cautions);
    content.put("tool", tool);
    return Pages.of("figures", content);
  }
}
