package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import pappus.files.Shown;
import pappus.part.VideoSender;
import pappus.quantity.Require;

/**
 * Families of video or radio that suit a pilot, as they are written: one, a list, or {@code digital} for all that are
 * not analogue.
 */
public record Families(@JsonValue Object written) {
  /** Stands for every family but analogue. */
  public static final String DIGITAL = "digital";

  @JsonCreator(mode = JsonCreator.Mode.DELEGATING)
  public Families {
    Require.present("value", written);
  }

  /** Some families. */
  public static Families of(String... names) {
    return new Families(names.length == 1 ? names[0] : List.of(names));
  }

  /** Those named, in their order. */
  public List<String> names() {
    return written instanceof List<?> list
        ? list.stream().map(String::valueOf).toList()
        : List.of(String.valueOf(written));
  }

  public boolean isList() {
    return written instanceof List;
  }

  /** Whether a family suits. */
  public boolean admit(String family) {
    return names().contains(family)
        || (names().contains(DIGITAL) && !family.equals(VideoSender.ANALOGUE));
  }

  /** Whether none of them is analogue. */
  public boolean areDigital() {
    return !admit(VideoSender.ANALOGUE);
  }

  /** In a sentence, as "analogue or vellimar". */
  public String inWords() {
    return Shown.choice(names());
  }

  /** @throws IllegalArgumentException if one of them is no name */
  void check(String path) {
    if (written instanceof List<?> list) {
      Require.notEmpty(path, list);
      for (var i = 0; i < list.size(); i++) {
        check(path + "[" + i + "]", list.get(i));
      }
    } else {
      check(path, written);
    }
  }

  private static void check(String path, Object name) {
    if (!(name instanceof String text) || Shown.hides(text)) {
      Require.refuse("%s must be text without hidden characters, but is not.".formatted(path));
    } else {
      Require.name(path, text);
    }
  }
}
