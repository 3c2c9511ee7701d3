package pappus.answers.result;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.files.json.JsonText;

/** What a machine reads where there is no answer. */
public record Refusal(
    @JsonPropertyDescription(
        "\"bad-data\" where the input was refused, else \"failed\": memory or a disk, or a bug of ours.")
    String status,

    @JsonPropertyDescription("What is wrong, one line each.")
    List<String> problems) {
  /** The whole answer. */
  public static String of(String status, List<String> problems) {
    return JsonText.of(new Refusal(status, problems));
  }
}
