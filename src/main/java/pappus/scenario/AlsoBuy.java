package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.part.Part;
import pappus.part.Role;
import pappus.quantity.Require;

/**
 * What is bought beside one build: packs, spares and what is no part of it.
 *
 * <p>Why: src/site/markdown/decisions.md#the-whole-outlay-depends-on-the-build-alone
 */
public record AlsoBuy(
    @JsonPropertyDescription("Packs in all, the one aboard among them, 1 to 200; absent: that one.")
    @Nullable
    Integer packs,

    @JsonPropertyDescription("What is bought beyond what flies; absent: no spares.") @Nullable
    List<Spare> spares,

    @JsonPropertyDescription(
        "What else is bought, such as a charger, goggles, a radio or postage; absent: nothing.")
    @Nullable
    List<OwnLine> lines,

    @JsonPropertyDescription(
        "Whether the budget is for all of this, and the price of each build too; absent: no, it is told beside.")
    @Nullable
    Boolean countsAgainstBudget) {
  /** Nothing beside the build. */
  public static final AlsoBuy NOTHING = new AlsoBuy(null, null, null, null);

  public AlsoBuy {
    if (packs != null) {
      Require.inRange("packs", packs, 1, Spare.MOST);
    }
    spares = spares == null ? null : Require.list("spares", spares);
    lines = lines == null ? null : Require.list("lines", lines);
    var seen = new HashSet<String>();
    for (var spare : spares == null ? List.<Spare>of() : spares) {
      if (!seen.add(spare.label())) {
        Require.refuse(
            "spares must name each thing once, but name %s twice.".formatted(spare.label()));
      }
    }
    if (packs != null && seen.contains(Role.BATTERY.label())) {
      Require.refuse(
          "spares must not name battery where packs are stated, but do. Maybe count all packs in packs.");
    }
  }

  /** Whether the budget is for all of it. */
  public boolean counts() {
    return countsAgainstBudget != null && countsAgainstBudget;
  }

  /** All spares, further packs among them. */
  public List<Spare> allSpares() {
    var all = new ArrayList<Spare>();
    if (packs != null && packs > 1) {
      all.add(Spare.pieces(Role.BATTERY, packs - 1));
    }
    if (spares != null) {
      all.addAll(spares);
    }
    return all;
  }

  /** What is no part. */
  public List<OwnLine> ownLines() {
    return lines == null ? List.of() : lines;
  }

  /**
   * Pieces of a part beyond what flies.
   *
   * @param label what it serves as
   */
  public int spares(String label, Part part) {
    return pieces(allSpares(), label, part);
  }

  /**
   * Pieces of a part by a list of spares.
   *
   * @param label what it serves as
   */
  public static int pieces(List<Spare> spares, String label, Part part) {
    return spares.stream()
        .filter(spare -> spare.label().equals(label))
        .mapToInt(spare -> spare.piecesOf(part))
        .sum();
  }
}
