package pappus.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

final class ShellTest {
  private static String hash(String text) throws Exception {
    return Base64.getEncoder()
        .encodeToString(
            MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void allowsItsOwnStyleAndScriptAndNothingElse() throws Exception {
    var shell = Shell.drawing("marsh", List.of(), Map.of(), "ranking.js");

    assertThat(shell.policy())
        .isEqualTo(
            "default-src 'none'; style-src 'sha256-%s'; script-src 'sha256-%s'; img-src data:; base-uri 'none'; form-action 'none'",
            hash(shell.style()), hash(shell.script()));
    assertThat(Shell.still("marsh").policy()).contains("script-src 'none'");
    assertThat(shell.script())
        .contains("Permission to use, copy, modify")
        .doesNotContain("</script");
    assertThat(shell.style()).doesNotContain("url(", "@import", "</style");
  }

  @Test
  void dataCannotEndTheElementItStandsIn() {
    var hostile = "</script><script>alert(1)</script><!-- \u2028\u2029 &amp;";

    var embedded = Shell.embedded(Map.of("name", hostile));

    assertThat(embedded).doesNotContain("<", ">", "&", "\u2028", "\u2029");
    assertThat(JsonMapper.shared().readTree(embedded).path("name").asString()).isEqualTo(hostile);
  }
}
