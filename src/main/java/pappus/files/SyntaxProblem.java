package pappus.files;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Says in words of ours why bytes are not JSON. */
final class SyntaxProblem {
  private static final Pattern CODE = Pattern.compile("code (\\d+)\\)");
  private static final Pattern WORD = Pattern.compile("Unrecognized token '([^']*)'");

  private SyntaxProblem() {}

  static Problem of(Source source, JsonParser parser, JacksonException e) {
    var text = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    // Where the token began that is at fault, not where the parser looked when it saw that.
    var line = Math.max(1, e.getLocation() == null ? 1 : e.getLocation().getLineNr());
    return new Problem(source.name(), line, sentence(parser, e, text));
  }

  private static String sentence(JsonParser parser, JacksonException e, String text) {
    if (e instanceof StreamConstraintsException) {
      return limit(text);
    }
    if (e instanceof UnexpectedEndOfInputException) {
      var context = parser.streamReadContext();
      var place =
          context.inRoot() ? "" : context.inObject() ? " inside an object" : " inside a list";
      return "The file must be JSON, but ends%s. Maybe its end was cut off.".formatted(place);
    }
    var word = WORD.matcher(text);
    if (word.find()) {
      return "The file must be JSON, but has %s here.%s"
          .formatted(Shown.text(word.group(1)), adviceOnWord(word.group(1)));
    }
    var code = CODE.matcher(text);
    if (code.find()) {
      var found = character(code);
      return "The file must be JSON, but has %s here.%s"
          .formatted(Shown.text(found), adviceOnCharacter(found, text));
    }
    return "The file must be JSON, but has a number or text here that is not written as JSON writes it.";
  }

  private static String character(Matcher code) {
    try {
      return Character.toString(Integer.parseInt(code.group(1)));
    } catch (IllegalArgumentException e) {
      return "?";
    }
  }

  private static String limit(String text) {
    if (text.contains("nesting depth")) {
      return "The file must nest at most %s deep, but nests deeper here."
          .formatted(StrictMapper.DEEPEST);
    }
    if (text.contains("Number value length")) {
      return "Numbers must have at most %s digits, but one here has more."
          .formatted(StrictMapper.LONGEST_NUMBER);
    }
    if (text.contains("Name length") || text.contains("name length")) {
      return "Names must have at most %s characters, but one here has more."
          .formatted(StrictMapper.LONGEST_NAME);
    }
    return "Texts must have at most %s characters, but one here has more."
        .formatted(StrictMapper.LONGEST_TEXT);
  }

  private static String adviceOnWord(String word) {
    return switch (word) {
      case "NaN", "Infinity" -> " Maybe leave the field out: JSON has no such number.";
      case "True", "False", "TRUE", "FALSE" -> " Maybe small letters were meant.";
      default -> " Maybe it should stand between double quotes.";
    };
  }

  private static String adviceOnCharacter(String found, String text) {
    return switch (found) {
      case "}", "]" ->
        text.contains("Unexpected close marker")
            ? " Maybe a bracket before it was not closed."
            : " Maybe there is a comma too many before it.";
      case "\"", "{", "[" -> " Maybe a comma is missing before it.";
      case "'" -> " Maybe double quotes were meant.";
      case "/", "#" -> " Maybe it begins a comment, which JSON does not have.";
      case "\n", "\r" -> " Maybe a closing quote is missing.";
      case "+" -> " Maybe leave the plus sign out.";
      case "." -> " Maybe a zero is missing before it.";
      default -> "";
    };
  }
}
