package pappus.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import pappus.files.json.JsonText;

/**
 * What stands round the content of every page: its title, its looks, its script and what that works on. The policy
 * lets nothing run or load but these, whatever a part is called.
 *
 * <p>Why: src/site/markdown/decisions.md#a-page-runs-nothing-but-its-own-script
 *
 * @param title of the page
 * @param style sheet
 * @param script empty where nothing moves
 * @param data what the script works on, JSON
 */
public record Shell(String title, String style, String script, String data) {
  /**
   * A page with charts.
   *
   * @param charts in any order, no two of the same name
   * @param more what other scripts work on, by name
   * @param scripts other scripts of this package that run after the charts'
   */
  public static Shell drawing(
      String title, List<Chart> charts, Map<String, Object> more, String... scripts) {
    var frames = new Numbered();
    var rows = new Numbered();
    var packed = new LinkedHashMap<String, Object>();
    charts.forEach(chart -> packed.put(chart.id(), chart.packed(frames, rows)));
    var data = new LinkedHashMap<String, Object>();
    data.put("frames", frames.all());
    data.put("rows", rows.all());
    data.put("charts", packed);
    data.putAll(more);
    var script = new StringBuilder(Modules.text()).append(text("charts.js"));
    for (var name : scripts) {
      script.append(text(name));
    }
    return new Shell(title, text("page.css"), script.toString(), embedded(data));
  }

  /**
   * A page of words and tables.
   *
   * @param sheets style sheets of this package beside that of all pages
   */
  public static Shell still(String title, String... sheets) {
    var style = new StringBuilder(text("page.css"));
    for (var sheet : sheets) {
      style.append(text(sheet));
    }
    return new Shell(title, style.toString(), "", "");
  }

  /** JSON that cannot end the element it stands in. */
  public static String embedded(Object data) {
    return JsonText.compact(data)
        .replace("<", "\\u003c")
        .replace(">", "\\u003e")
        .replace("&", "\\u0026")
        .replace("\u2028", "\\u2028")
        .replace("\u2029", "\\u2029");
  }

  /** What the page may run and load: its own style and script, known by their hashes, and pictures within it. */
  public String policy() {
    return "default-src 'none'; style-src '%s'; script-src %s; img-src data:; base-uri 'none'; form-action 'none'"
        .formatted(hash(style), script.isEmpty() ? "'none'" : "'" + hash(script) + "'");
  }

  private static String hash(String text) {
    try {
      var digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  static String text(String resource) {
    try (InputStream stream =
        Objects.requireNonNull(Shell.class.getResourceAsStream(resource), resource)) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
