package pappus.answers.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pappus.answers.build.Changes;
import pappus.answers.build.Figures;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.change.Changed;
import pappus.change.WhyNot;
import pappus.document.Spoken;
import pappus.part.Part;
import pappus.part.Role;
import pappus.scenario.Scenario;

/** Why a part is not in a build, in sentences. */
public final class WhyNots {
  private static final int MOST_NAMED = 4;
  private static final double LEAST_WATTS = 0.05;
  private static final double LEAST_GRAMS = 0.05;
  private static final long LEAST_CENTS = 50;

  private final WhyNot why;
  private final Assessment winner;
  private final Changes changes;
  private final Figures figures;

  public WhyNots(Scenario scenario, WhyNot why) {
    this.why = why;
    this.winner = why.swap().base();
    this.changes = new Changes(scenario, winner);
    this.figures = new Figures(scenario.isForRange());
  }

  /** Every sentence, in order. */
  public List<String> all() {
    var sentences = new ArrayList<String>();
    var name = why.part().name();
    if (why.isIn()) {
      return List.of(name + " is in this build already.");
    }
    for (var wish : why.unmet()) {
      sentences.add("The scenario asks for %s: of %s it is %s. What follows is as if it did not."
          .formatted(wish.inWords(), name, wish.found(why.part())));
    }
    if (why.isLeftOut()) {
      sentences.add(
          "The scenario itself leaves %s out, or has nothing to choose here; what follows is as if it did not."
              .formatted(name));
    }
    if (why.isOutOfStock()) {
      sentences.add("There are too few of %s in stock.".formatted(name));
    }
    sentences.add(put(name));
    why.cures().forEach(cure -> sentences.add(cure(cure)));
    sentences.add(best(name));
    var more = why.loosened().stream().filter(one -> one.any().isPresent()).toList();
    more.forEach(one -> sentences.add(looser(one)));
    if (more.isEmpty() && !why.loosened().isEmpty() && !why.isBetter()) {
      sentences.add(nothingMore());
    }
    return sentences;
  }

  /** What happens if it is put into the build as it is. */
  private String put(String name) {
    var swap = why.swap();
    var into = "Fitted to this build as its " + why.role().label();
    return swap.breaksNothing()
        ? into + ": " + String.join(", ", changes.effects(swap)) + watts(winner, swap.assessment())
            + changes.alongside(swap.alongside()) + "."
        : into + ", " + name + " breaks " + Changes.allBroken(swap) + ".";
  }

  private static String watts(Assessment before, Assessment after) {
    if (before.flight().isEmpty() || after.flight().isEmpty()) {
      return "";
    }
    var more = after.flight().get().flownW() - before.flight().get().flownW();
    return Math.abs(more) < LEAST_WATTS
        ? ""
        : ", " + Spoken.number(Math.abs(more), 1) + (more > 0 ? " W more" : " W less");
  }

  private static String cure(WhyNot.Cure cure) {
    return "That rule (%s) is kept with another %s: %s."
        .formatted(cure.rule(), cure.role().label(), some(cure.parts()));
  }

  /** A few names of many. */
  static String some(List<Part> parts) {
    var names =
        parts.stream().limit(MOST_NAMED).map(part -> part.name()).collect(Collectors.joining(", "));
    var more = parts.size() - MOST_NAMED;
    return more > 0 ? names + " and " + more + " more" : names;
  }

  private String best(String name) {
    var best = why.best();
    if (best.build().isEmpty()) {
      return best.isProof()
          ? "Proven: no build with %s keeps every rule and limit.".formatted(name)
          : "No build with %s was found that keeps every rule and limit, without proof."
              .formatted(name);
    }
    var found = best.build().get();
    var differs = Changed.between(winner.build(), found.build()).stream()
        .map(Changed::role)
        .map(Role::label)
        .collect(Collectors.joining(", "));
    return "The best build with %s%s: %s; differs in %s."
        .formatted(
            name,
            best.isProof() ? ", proven" : ", not proven",
            beside(found),
            differs.isEmpty() ? "nothing" : differs);
  }

  /** Another build against the winner: flight, mass, power, price. */
  private String beside(Assessment other) {
    var words = new ArrayList<String>();
    words.add(figures.against(winner, other));
    var grams = other.mass().grams() - winner.mass().grams();
    words.add((Math.abs(grams) < LEAST_GRAMS
            ? "as heavy"
            : Spoken.number(Math.abs(grams), 1) + (grams > 0 ? " g heavier" : " g lighter"))
        + watts(winner, other));
    var cents = other.cost().cents() - winner.cost().cents();
    words.add(
        Math.abs(cents) < LEAST_CENTS
            ? "at the same price"
            : Spoken.price(Math.abs(cents), Reasons.currency(winner))
                + (cents > 0 ? " dearer" : " cheaper"));
    return String.join(", ", words);
  }

  private String looser(WhyNot.Loosened one) {
    var then = "at %s its best build is %s"
        .formatted(at(one), beside(one.with().build().orElseThrow()));
    if (one.keepsDown()) {
      return "Kept down by the limit %s: %s, and none without it %s better then."
          .formatted(one.limit().id(), then, one.isProof() ? "is" : "was found to be");
    }
    return "Not kept down by the limit %s alone: %s, but builds without it gain more then."
        .formatted(one.limit().id(), then);
  }

  private String at(WhyNot.Loosened one) {
    var field = one.limit().field();
    var currency = Reasons.currency(winner);
    return field.isMoney()
        ? Spoken.price(Math.round(100 * one.at()), currency)
        : (Spoken.number(one.at(), field.step().scale()) + " " + one.limit().unit(currency))
            .strip();
  }

  /** Of limits a fifth looser. */
  private String nothingMore() {
    var each = why.loosened().stream()
        .map(one -> one.limit().id() + " of " + at(one))
        .collect(Collectors.joining(", nor with "));
    return why.loosened().stream().allMatch(WhyNot.Loosened::isProof)
        ? "No better build has it with %s either.".formatted(each)
        : "No better build with it was found with %s either, without proof.".formatted(each);
  }
}
