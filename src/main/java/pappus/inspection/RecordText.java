package pappus.inspection;

import java.util.ArrayList;
import java.util.List;
import pappus.evidence.filling.Filling;
import pappus.part.Part;

/** A record once more: what it states, and what is assumed of it and from what. */
public final class RecordText {
  private RecordText() {}

  /** A line a field. */
  public static List<String> of(Part part) {
    var lines = new ArrayList<String>();
    lines.add("%s, a %s".formatted(part.id(), part.kind().key()));
    Filling.stated(part)
        .forEach((path, value) -> lines.add("stated   %s: %s".formatted(path, value)));
    for (var one : part.assumed()) {
      lines.add("assumed  %s: %s, from %s".formatted(one.path(), one.inWords(), one.from()));
    }
    return List.copyOf(lines);
  }
}
