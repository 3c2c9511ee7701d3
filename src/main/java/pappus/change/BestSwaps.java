package pappus.change;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pappus.compatibility.Rules;
import pappus.part.Role;
import pappus.search.Incumbents;

/**
 * The best single swap of one role.
 *
 * @param role whose part is swapped
 * @param tried how many other parts there are
 * @param best the swap that flies longest or farthest and breaks nothing; absent if all others break something
 * @param tempting a swap that would fly longer than that and than the build, but breaks one thing that one
 *     can think of changing, a limit or a rule that may be set aside; absent if none
 */
public record BestSwaps(Role role, int tried, Optional<Swap> best, Optional<Swap> tempting) {

  /** Less is not worth breaking something for, seconds or metres. */
  private static final double LEAST_GAINED = 1;

  static BestSwaps of(Role role, List<Swap> swaps) {
    var byRank = Comparator.comparing(Swap::assessment, Incumbents.BEST_FIRST);
    var best = swaps.stream().filter(swap -> swap.assessment().isFeasible()).min(byRank);
    var than = Math.max(0, best.map(Swap::gained).orElse(0.0)) + LEAST_GAINED;
    var tempting = swaps.stream()
        .filter(swap -> !swap.assessment().isFeasible()
            && swap.assessment().flight().isPresent()
            && breaksOneThing(swap)
            && swap.gained() > than)
        .min(byRank);
    return new BestSwaps(role, swaps.size(), best, tempting);
  }

  /** What breaks more, or can never be, tempts nobody: without its video a quad flies long, too. */
  private static boolean breaksOneThing(Swap swap) {
    return swap.broken().size() + swap.missed().size() == 1
        && swap.broken().stream().allMatch(finding -> Rules.waivableIds().contains(finding.rule()));
  }
}
