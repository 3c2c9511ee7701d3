package pappus.answers.shape;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** The parts that a document names by id, which it then holds, once each. */
public final class NamedParts {
  private final SortedMap<String, PartJson> parts = new TreeMap<>();

  /** The id of a part, which the document then holds. */
  public String id(Part part) {
    parts.computeIfAbsent(part.id(), id -> PartJson.of(part));
    return part.id();
  }

  /** Ids by role of a build, in the order of roles. */
  public Map<Role, String> roles(Build build) {
    var roles = new java.util.LinkedHashMap<Role, String>();
    build.parts().forEach((role, part) -> roles.put(role, id(part)));
    return Collections.unmodifiableMap(roles);
  }

  /** All of them by id. */
  public Map<String, PartJson> all() {
    return Collections.unmodifiableMap(parts);
  }
}
