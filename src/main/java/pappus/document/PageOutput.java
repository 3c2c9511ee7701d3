package pappus.document;

import gg.jte.TemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pappus.files.Shown;

/**
 * Where templates write what they are given: markup stays text, what would hide or turn the text is told by its number,
 * and names from right to left stand by themselves, so that the numbers beside them keep their places.
 */
final class PageOutput extends OwaspHtmlTemplateOutput {
  /** Letters from right to left, with the marks on them: Hebrew, Arabic and the scripts beside them. */
  private static final String LETTERS =
      "\\u0590-\\u08FF\\uFB1D-\\uFDFF\\uFE70-\\uFEFC\\x{10800}-\\x{10FFF}\\x{1E800}-\\x{1EFFF}";

  /** Words of them in a row. Numbers only between them: one behind a name may be any number of the sentence. */
  private static final Pattern FROM_THE_RIGHT =
      Pattern.compile("[%s](?:[%s0-9 '\"./&+-]*[%s])?".formatted(LETTERS, LETTERS, LETTERS));

  /** Elements that hold no others but their own. */
  private static final Set<String> TEXT_ALONE = Set.of("title", "text", "style", "script");

  private @Nullable String tag;
  private @Nullable String attribute;

  PageOutput(TemplateOutput page) {
    super(page);
  }

  @Override
  public void setContext(@Nullable String tagName, @Nullable String attributeName) {
    tag = tagName;
    attribute = attributeName;
    super.setContext(tagName, attributeName);
  }

  @Override
  public void writeUserContent(@Nullable String value) {
    if (value == null) {
      return;
    }
    var text = Shown.safe(value);
    if (attribute != null || (tag != null && TEXT_ALONE.contains(tag))) {
      super.writeUserContent(text);
      return;
    }
    var end = 0;
    var names = FROM_THE_RIGHT.matcher(text);
    while (names.find()) {
      super.writeUserContent(text.substring(end, names.start()));
      writeContent("<bdi>");
      super.writeUserContent(names.group());
      writeContent("</bdi>");
      end = names.end();
    }
    super.writeUserContent(text.substring(end));
  }
}
