package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Role;
import pappus.quantity.Require;

/** Which parts the search may use. */
public record Choice(
    @JsonPropertyDescription("Ids that every build must use; absent: none.") @Nullable
    List<String> fixed,

    @JsonPropertyDescription("Roles for which only some parts may be used; absent: none.") @Nullable
    List<Allowed> allowed,

    @JsonPropertyDescription("Ids that no build may use; absent: none.") @Nullable
    List<String> excluded,

    @JsonPropertyDescription(
        "Ids of which the builder has what one build needs, which costs nothing; absent: none.")
    @Nullable
    List<String> owned) {
  /** Everything in the catalogue. */
  public static final Choice ANY = new Choice(null, null, null, null);

  public Choice {
    fixed = fixed == null ? null : Require.list("fixed", fixed);
    allowed = allowed == null ? null : Require.list("allowed", allowed);
    excluded = excluded == null ? null : Require.list("excluded", excluded);
    owned = owned == null ? null : Require.list("owned", owned);
  }

  /** The only parts that may fill a role. */
  public record Allowed(
      @JsonPropertyDescription("The role.") Role role,

      @JsonPropertyDescription("Ids of the parts that may fill it.")
      List<String> parts) {
    public Allowed {
      Require.present("role", role);
      parts = Require.notEmpty("parts", Require.list("parts", parts));
    }
  }

  /** This choice with one more part fixed. */
  public Choice fixing(String id) {
    var all = new ArrayList<>(fixedIds());
    if (!all.contains(id)) {
      all.add(id);
    }
    return new Choice(all, allowed, excluded, owned);
  }

  /** This choice with only some parts for a role, of those that it allows. */
  Choice allowing(Role role, List<String> ids) {
    var all = new ArrayList<>(allowedParts());
    all.add(new Allowed(role, ids));
    return new Choice(fixed, all, excluded, owned);
  }

  /** Whether a build may have a part in a role: it is not excluded, and allowed where only some are. */
  public boolean permits(Role role, String id) {
    return !excludedIds().contains(id)
        && allowedParts().stream()
            .allMatch(list -> list.role() != role || list.parts().contains(id));
  }

  public List<String> fixedIds() {
    return fixed == null ? List.of() : fixed;
  }

  public List<Allowed> allowedParts() {
    return allowed == null ? List.of() : allowed;
  }

  public List<String> excludedIds() {
    return excluded == null ? List.of() : excluded;
  }

  public List<String> ownedIds() {
    return owned == null ? List.of() : owned;
  }
}
