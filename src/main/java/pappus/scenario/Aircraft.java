package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.List;
import pappus.part.Role;
import pappus.quantity.Require;

/** A quad that is there, of which some parts may change. */
public record Aircraft(
    @JsonPropertyDescription(
        "Its parts: ids with counts, id,id,id*4, or a row of a result, result.json#1, by a path from the scenario's folder.")
    String build,

    @JsonPropertyDescription(
        "Roles whose parts may change; an extra among them is there where it is wanted. A lead may change with battery or board.")
    List<Role> mayChange) {
  public Aircraft {
    Require.text("build", build);
    mayChange = Require.notEmpty("mayChange", Require.list("mayChange", mayChange));
    if (mayChange.stream().distinct().count() < mayChange.size()) {
      Require.refuse("mayChange must name each role once, but names one twice.");
    }
  }

  /** Whether a role may have another part than it has, or lose the one it has. */
  public boolean mayChange(Role role) {
    return mayChange.contains(role)
        || (role == Role.LEAD
            && (mayChange.contains(Role.BATTERY) || mayChange.contains(Role.BOARD)));
  }
}
