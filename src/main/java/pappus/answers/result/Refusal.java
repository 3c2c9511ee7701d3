package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.files.json.JsonText;

/** What a machine reads where the input was refused. */
public record Refusal(
    @JsonPropertyDescription("\"bad-data\".") String status,

    @JsonPropertyDescription("What is wrong, one line each.")
    List<String> problems) {
  /** The whole answer. */
  public static String of(List<String> problems) {
    return JsonText.of(new Refusal("bad-data", problems));
  }
}
