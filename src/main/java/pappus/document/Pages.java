package pappus.document;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.Map;

/** Fills the templates of {@code src/main/jte}, which the build has compiled. */
public final class Pages {
  private static final TemplateEngine ENGINE =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "pappus.answers.templates");

  private Pages() {}

  /**
   * One page.
   *
   * @param template its name, such as {@code ranking}
   * @param content what its parameters are called, and their values
   */
  public static String of(String template, Map<String, Object> content) {
    var output = new StringOutput();
    ENGINE.render(template + ".jte", content, new PageOutput(output));
    return output.toString();
  }
}
