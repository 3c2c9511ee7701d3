package pappus.evidence;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Build;
import pappus.part.Kind;
import pappus.part.Known;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.Propeller;

/**
 * What a whole catalogue says of the figures of its records, worked out once at reading: how far each counts is then a
 * number of the record's own. Safe for use by several threads.
 *
 * <p>Why: src/site/markdown/decisions.md#a-catalogue-narrows-spreads-and-widens-doubts
 */
public final class Evidence {
  /** Of no catalogue: classes alone. */
  public static final Evidence NONE = of(List.of());

  /** Two readings of one quantity differ by more, even of one ware on one bench (engineering estimate). */
  private static final double REPEATED = 0.001;

  /** A lean that is worth a word. */
  private static final double LEAST_LEAN = 0.02;

  /** Deviations from which on it is hardly chance. */
  private static final double SURE = 2;

  private final Map<Trait, Population> populations = new EnumMap<>(Trait.class);
  private final Set<String> derived = new TreeSet<>();

  private Evidence(Collection<? extends Part> parts) {
    var read = new LinkedHashMap<Part, List<Reading>>();
    for (var part : parts) {
      var readings = readings(part);
      if (!readings.isEmpty()) {
        read.put(part, readings);
      }
    }
    addDerived(read);
    var byTrait = new EnumMap<Trait, List<Reading>>(Trait.class);
    read.forEach((part, readings) -> readings.forEach(reading -> byTrait
        .computeIfAbsent(reading.trait(), trait -> new ArrayList<>())
        .add(known(part, reading))));
    for (var trait : Trait.values()) {
      populations.put(trait, Population.of(trait, byTrait.getOrDefault(trait, List.of())));
    }
  }

  /** Of the parts of a catalogue. */
  public static Evidence of(Collection<? extends Part> parts) {
    return new Evidence(parts);
  }

  private static List<Reading> readings(Part part) {
    if (part instanceof Motor motor) {
      return MotorFigures.stated(motor);
    }
    if (part instanceof Propeller propeller) {
      return PropellerFigures.readings(propeller);
    }
    if (part instanceof Battery battery) {
      return BatteryFigures.readings(battery);
    }
    return part instanceof Board board ? BoardFigures.readings(board) : List.of();
  }

  /**
   * Records called measured whose every figure lies as far from its law as that of another one of their maker were
   * worked out from each other: no two benches agree so well, and nobody can tell which was on one.
   */
  private void addDerived(Map<Part, List<Reading>> read) {
    var siblings = new HashMap<List<Object>, List<Map.Entry<Part, List<Reading>>>>();
    for (var entry : read.entrySet()) {
      var part = entry.getKey();
      if (entry.getValue().size() > 1
          && entry.getValue().stream()
              .allMatch(one -> one.known() == Known.MEASURED && !one.isBenched())) {
        siblings
            .computeIfAbsent(List.of(part.kind(), part.maker()), key -> new ArrayList<>())
            .add(entry);
      }
    }
    for (var entries : siblings.values()) {
      for (var one : entries) {
        for (var other : entries) {
          if (one != other && isRepeated(one.getValue(), other.getValue())) {
            derived.add(one.getKey().id());
          }
        }
      }
    }
  }

  private static boolean isRepeated(List<Reading> one, List<Reading> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (var i = 0; i < one.size(); i++) {
      if (Math.abs(one.get(i).away() - other.get(i).away()) > REPEATED) {
        return false;
      }
    }
    return true;
  }

  private Reading known(Part part, Reading reading) {
    return derived.contains(part.id()) && reading.known() == Known.MEASURED && !reading.isBenched()
        ? reading.derived()
        : reading;
  }

  /** What counts of a reading of a part. */
  Figure weigh(Part part, Reading reading) {
    return weigh(part, reading, Figure.NO_CEILING);
  }

  /**
   * The same of a figure that hardly any part has more of.
   *
   * @param most of it
   */
  Figure weigh(Part part, Reading reading, double most) {
    return Figure.weighed(known(part, reading), population(reading.trait()), most);
  }

  Population population(Trait trait) {
    return populations.getOrDefault(trait, Population.ofClass(trait));
  }

  /** What counts of a motor. */
  public MotorFigures motor(Motor motor) {
    return MotorFigures.of(motor, this);
  }

  /** What counts of a propeller. */
  public PropellerFigures propeller(Propeller propeller) {
    return PropellerFigures.of(propeller, this);
  }

  /** What counts of a pack. */
  public BatteryFigures battery(Battery battery) {
    return BatteryFigures.of(battery, this);
  }

  /** What counts of a board. */
  public BoardFigures board(Board board) {
    return BoardFigures.of(board, this);
  }

  /** What counts of the parts of a build that has the main ones; of a board in a lump nothing is known. */
  public BuildFigures build(Build build) {
    return new BuildFigures(
        motor(build.motor().orElseThrow()),
        propeller(build.propeller().orElseThrow()),
        battery(build.battery().orElseThrow()),
        build.board().map(this::board).orElse(BoardFigures.UNKNOWN));
  }

  /** Every figure of a part that its record states. */
  public List<Figure> stated(Part part) {
    var figures = new ArrayList<Figure>();
    if (part instanceof Motor motor) {
      figures.addAll(List.of(motor(motor).winding(), motor(motor).noLoad()));
    } else if (part instanceof Propeller propeller) {
      figures.addAll(List.of(propeller(propeller).thrust(), propeller(propeller).merit()));
    } else if (part instanceof Battery battery) {
      figures.addAll(List.of(battery(battery).cellResistance(), battery(battery).delivered()));
    } else if (part instanceof Board board) {
      board(board).controllerLoss().ifPresent(figures::add);
    }
    figures.removeIf(figure -> figure.stated().isEmpty());
    return List.copyOf(figures);
  }

  /** Whether a record calls measured what was worked out from another. */
  public boolean isDerived(Part part) {
    return derived.contains(part.id());
  }

  /**
   * A maker whose figures lie to one side of what is usual.
   *
   * @param kind of the parts
   * @param figure in words
   * @param by likeliest ln of stated over true that they share
   * @param deviation one standard deviation of that
   * @param records it rests on
   */
  public record Leaning(
      Kind kind, String maker, String figure, double by, double deviation, int records) {}

  /**
   * Makers whose figures of some kind lie further to one side than chance explains, and than those of the others do, by
   * maker.
   */
  public List<Leaning> leaning() {
    var leaning = new ArrayList<Leaning>();
    populations.forEach((trait, population) -> population.leans().forEach((maker, lean) -> {
      var others = population.leans().entrySet().stream()
          .filter(entry -> !entry.getKey().equals(maker))
          .mapToDouble(entry -> entry.getValue().by())
          .average()
          .orElse(0);
      var least = Math.max(LEAST_LEAN, SURE * lean.deviation());
      if (Math.abs(lean.by()) > least && Math.abs(lean.by() - others) > least) {
        leaning.add(new Leaning(
            trait.kind(), maker, trait.words(), lean.by(), lean.deviation(), lean.records()));
      }
    }));
    leaning.sort(Comparator.comparing(Leaning::maker).thenComparing(Leaning::figure));
    return List.copyOf(leaning);
  }
}
