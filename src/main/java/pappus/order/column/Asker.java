package pappus.order.column;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pappus.assessment.Assessment;
import pappus.order.AskedGroup;
import pappus.order.Wares;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;

/** A group with its best build, and every build that was met for it. Not safe for several threads. */
public final class Asker {
  private final AskedGroup asked;
  private final Best best;
  private final Wares wares;
  private final Map<String, Column> met = new LinkedHashMap<>();

  /**
   * The best build of a group's scenario bought alone.
   *
   * @param build absent where there is none
   * @param atMost objective that none surpasses
   * @param isProven whether the build is known to have it
   */
  public record Best(Optional<Assessment> build, long atMost, boolean isProven) {}

  /**
   * @param best of the scenario bought alone
   */
  public Asker(AskedGroup asked, Best best, Wares wares) {
    this.asked = asked;
    this.best = best;
    this.wares = wares;
    best.build().ifPresent(build -> meet(build.build()));
  }

  /** The group. */
  public AskedGroup asked() {
    return asked;
  }

  /** What shares are shares of. */
  public Best best() {
    return best;
  }

  /** Whether there is any build for it. */
  public boolean hasBuild() {
    return best.build().isPresent();
  }

  /** How many learners. */
  public int pieces() {
    return asked.pieces();
  }

  /** Every build that was met, in that order. */
  public List<Column> met() {
    return List.copyOf(met.values());
  }

  /** Those that a learner may get: within the own budget, and with the least share asked for. */
  public List<Column> allowed() {
    return met.values().stream().filter(this::allows).toList();
  }

  /** Whether a learner may get a build. */
  public boolean allows(Column column) {
    return column.ownCents() <= asked.capCents()
        && column.share() >= asked.group().leastMillionths();
  }

  /** What every build of it costs beside its parts, cents. */
  long extraCents() {
    return met.values().stream().mapToLong(Column::extraCents).min().orElse(0);
  }

  /** The column of a build, whoever found it; empty if it cannot be had or is not feasible by the group's own assessor. */
  public Optional<Column> meet(Build found) {
    var had = ofCatalog(found);
    if (had.isEmpty()) {
      return Optional.empty();
    }
    var build = had.get();
    var known = met.get(build.toString());
    if (known != null) {
      return Optional.of(known);
    }
    var assessment = asked.assessor().assess(build);
    if (!assessment.isFeasible()) {
      return Optional.empty();
    }
    var column = Column.of(asked.index(), met.size(), assessment, best.atMost(), wares);
    met.put(build.toString(), column);
    return Optional.of(column);
  }

  private Optional<Build> ofCatalog(Build found) {
    var parts = new LinkedHashMap<Role, Part>();
    found
        .parts()
        .forEach((role, part) ->
            asked.catalog().part(part.id()).ifPresent(mine -> parts.put(role, mine)));
    return parts.size() == found.parts().size() ? Optional.of(Build.of(parts)) : Optional.empty();
  }

  /** Columns of several groups, by group. */
  static List<List<Column>> met(List<Asker> askers) {
    var all = new ArrayList<List<Column>>();
    askers.forEach(asker -> all.add(asker.met()));
    return Collections.unmodifiableList(all);
  }
}
