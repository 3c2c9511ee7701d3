package pappus.files.json;

import java.util.regex.Pattern;
import pappus.files.Problem;
import pappus.files.Shown;
import pappus.files.Source;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;

/** Says in words of ours why bytes are not JSON, from what the parser says in its own. */
final class SyntaxProblem {
  private static final Pattern WORD =
      Pattern.compile("(?:Unrecognized|Non-standard) token '([^']*)'");
  private static final Pattern CLOSE = Pattern.compile("Unexpected close marker '(.)'");
  private static final Pattern CODE = Pattern.compile("code (\\d{1,7})[ )]");

  private SyntaxProblem() {}

  static Problem of(Source source, JsonParser parser, JacksonException e) {
    var text = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    // Limits are broken without saying where.
    var place =
        e instanceof StreamConstraintsException ? parser.currentLocation() : e.getLocation();
    var line = place == null ? 1 : Math.max(1, place.getLineNr());
    var column = place == null ? 1 : Math.max(1, place.getColumnNr());
    return new Problem(source.name(), line, column, sentence(parser, e, text));
  }

  private static String sentence(JsonParser parser, JacksonException e, String text) {
    if (e instanceof StreamConstraintsException) {
      return limit(text);
    }
    if (e instanceof UnexpectedEndOfInputException) {
      return "The file must be JSON, but ends%s. Maybe its end was cut off."
          .formatted(inside(parser));
    }
    if (text.contains("Leading zeroes")) {
      return found("a number that begins with a zero", "Maybe it should be left out.");
    }
    var word = WORD.matcher(text);
    if (word.find()) {
      return found(Shown.text(word.group(1)), adviceOnWord(word.group(1)));
    }
    var close = CLOSE.matcher(text);
    if (close.find()) {
      return found(
          Shown.text(close.group(1)),
          parser.streamReadContext().inRoot()
              ? "Maybe there is a bracket too many."
              : "Maybe a bracket before it was not closed.");
    }
    var code = CODE.matcher(text);
    if (code.find() && Character.isValidCodePoint(Integer.parseInt(code.group(1)))) {
      var character = Character.toString(Integer.parseInt(code.group(1)));
      return found(Shown.text(character), adviceOnCharacter(character, text));
    }
    return found("something else", "");
  }

  private static String found(String what, String advice) {
    return "The file must be JSON, but has %s here.%s"
        .formatted(what, advice.isEmpty() ? "" : " " + advice);
  }

  private static String inside(JsonParser parser) {
    var context = parser.streamReadContext();
    if (context.inRoot()) {
      return "";
    }
    return context.inObject() ? " inside an object" : " inside a list";
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
    if (text.contains("ame length")) {
      return "Names must have at most %s characters, but one here has more."
          .formatted(StrictMapper.LONGEST_NAME);
    }
    return "Texts must have at most %s characters, but one here has more."
        .formatted(StrictMapper.LONGEST_TEXT);
  }

  private static String adviceOnWord(String word) {
    return switch (word) {
      case "NaN", "Infinity", "-Infinity" -> "Maybe leave the field out: JSON has no such number.";
      case "True", "False", "TRUE", "FALSE" -> "Maybe small letters were meant.";
      default -> "Maybe it should stand between double quotes.";
    };
  }

  private static String adviceOnCharacter(String character, String text) {
    switch (character) {
      case "'", "\u201C", "\u201D" -> {
        return "Maybe double quotes were meant.";
      }
      case "/", "#" -> {
        return "Maybe it begins a comment, which JSON does not have.";
      }
      case "\n", "\r" -> {
        return "Maybe a closing quote is missing before it.";
      }
      case "+" -> {
        return "Maybe leave the plus sign out.";
      }
      case "." -> {
        return "Maybe a zero is missing before it.";
      }
      default -> {}
    }
    if (text.contains("expecting comma")) {
      return "Maybe a comma is missing before it.";
    }
    if (text.contains("expecting a colon")) {
      return "Maybe a colon is missing before it.";
    }
    if (text.contains("to start property name")) {
      return character.equals("}")
          ? "Maybe there is a comma too many before it."
          : "Maybe a name without its double quotes begins here.";
    }
    if (text.contains("expected a value")) {
      return character.equals("}")
          ? "Maybe a value is missing before it."
          : "Maybe there is a comma too many before it.";
    }
    return "";
  }
}
