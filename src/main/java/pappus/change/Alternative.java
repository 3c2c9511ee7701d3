package pappus.change;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import pappus.assessment.Assessment;
import pappus.fitting.Placing;
import pappus.part.Part;

/**
 * A part that could take the place of one in a quad that is there.
 *
 * @param swap the quad with it
 * @param hardware small things that change along with it
 * @param packMillimetres by how much the pack has to move forward; absent if that is not known
 * @param cents what has to be bought for it, the part itself first
 * @param inStock whether as many can be had as are needed
 */
public record Alternative(
    Swap swap,
    List<HardwareChange> hardware,
    OptionalDouble packMillimetres,
    long cents,
    boolean inStock) {
  /** Less than this nobody moves a pack. */
  public static final double NOTED_MM = 1;

  public Alternative {
    hardware = List.copyOf(hardware);
  }

  /** How much a swap asks of the one who does it. */
  public enum Grade {
    /** Nothing else changes, but for where the pack sits. */
    DROP_IN,
    /** Other screws, strap, shims or plates too. */
    OTHER_HARDWARE,
    /** Another part too, such as a lead. */
    OTHER_PARTS,
    /** It fits, but the quad then breaks a limit. */
    BREAKS_LIMIT,
    /** It does not go together. */
    DOES_NOT_FIT
  }

  static Alternative of(Swap swap, boolean inStock) {
    var base = swap.base();
    var after = swap.assessment();
    var hardware = HardwareChange.between(base, after);
    return new Alternative(swap, hardware, moved(base, after), cents(swap, hardware), inStock);
  }

  private static OptionalDouble moved(Assessment base, Assessment after) {
    Optional<Double> before = base.fitting().placing().map(Placing::packXMillimetres);
    Optional<Double> now = after.fitting().placing().map(Placing::packXMillimetres);
    return before.isPresent() && now.isPresent()
        ? OptionalDouble.of(now.get() - before.get())
        : OptionalDouble.empty();
  }

  /**
   * Of parts that the quad has already nothing is bought but what it needs more, nor lighter screws where its own do.
   */
  private static long cents(Swap swap, List<HardwareChange> hardware) {
    var bought = new TreeSet<String>();
    bought.add(swap.part().id());
    swap.alongside().forEach(change -> change.after().map(Part::id).ifPresent(bought::add));
    hardware.forEach(change -> change.after().map(Part::id).ifPresent(bought::add));
    return bought.stream()
        .mapToLong(id -> Math.max(0, cents(swap.assessment(), id) - cents(swap.base(), id)))
        .sum();
  }

  private static long cents(Assessment assessment, String id) {
    return assessment.cost().lines().stream()
        .filter(line -> line.part().id().equals(id))
        .mapToLong(line -> line.cents())
        .sum();
  }

  /** How much it asks; what the quad itself breaks is not its fault. */
  public Grade grade() {
    if (!swap.broken().isEmpty() || swap.grounds()) {
      return Grade.DOES_NOT_FIT;
    }
    if (!swap.missed().isEmpty()) {
      return Grade.BREAKS_LIMIT;
    }
    if (!swap.alongside().isEmpty()) {
      return Grade.OTHER_PARTS;
    }
    return hardware.isEmpty() ? Grade.DROP_IN : Grade.OTHER_HARDWARE;
  }

  /** Seconds or metres gained for each whole unit of money; absent where nothing is gained or nothing bought. */
  public OptionalDouble gainedForMoney() {
    return swap.gained() > 0 && cents > 0
        ? OptionalDouble.of(swap.gained() / (cents / 100.0))
        : OptionalDouble.empty();
  }
}
