package pappus.answers.order;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pappus.document.Spoken;
import pappus.order.plan.Revision;
import pappus.part.Part;

/** A revised order in sentences. */
final class RevisionWords {
  private final Revision revision;
  private final String currency;

  RevisionWords(Revision revision) {
    this.revision = revision;
    this.currency = revision.plan().inputs().currency();
  }

  private String price(long cents) {
    return Spoken.price(cents, currency);
  }

  /** How many change, and what is paid. */
  String headline() {
    var all = revision.learners().size();
    var changed = revision.changed();
    return "%s, revised: %s of %s quads keep their main parts, %s; %s to pay still, of %s that are left."
        .formatted(
            revision.plan().inputs().order().name(),
            all - changed,
            all,
            changed == 0 ? "none changes" : changed == 1 ? "1 changes" : changed + " change",
            price(revision.plan().standing().cents()),
            price(revision.plan().inputs().budgetCents()));
  }

  /** How near that is to the best. */
  List<String> bounds() {
    var said = new ArrayList<String>();
    var changed = revision.changed();
    var least = revision.changedAtLeast();
    said.add(
        least >= changed
            ? "No order changes fewer: proven."
            : "No order changes fewer than %s: whether %s are needed is not known."
                .formatted(least, changed));
    var cents = revision.plan().standing().cents();
    said.add(
        revision.centsAtLeast() >= cents
            ? "Of those that change as few none costs less: proven."
            : "Of those that change as few none costs less than %s."
                .formatted(price(revision.centsAtLeast())));
    said.add("What came cost %s, postage included."
        .formatted(price(revision.delivery().spentCents())));
    return said;
  }

  /** Who keeps what and who gets what instead, those who are told the same together. */
  List<String> learners() {
    var said = new ArrayList<String>();
    var told = new ArrayList<List<Renewed>>();
    for (var one : Renewed.of(revision)) {
      told.stream()
          .filter(some -> some.get(0).isLike(one))
          .findFirst()
          .orElseGet(() -> {
            var fresh = new ArrayList<Renewed>();
            told.add(fresh);
            return fresh;
          })
          .add(one);
    }
    for (var some : told) {
      var one = some.get(0);
      said.add("%s%s: %s; %s."
          .formatted(
              one.kept().bag().name(),
              some.size() == 1 ? ", 1 learner" : ", %s learners, each".formatted(some.size()),
              changes(one),
              buys(one)));
    }
    return said;
  }

  private static String changes(Renewed one) {
    if (one.changes().isEmpty()) {
      return "as ordered";
    }
    var changes = one.changes().stream()
        .map(change -> "%s %s becomes %s"
            .formatted(
                change.role().label(),
                change.from().map(Part::id).orElse("none"),
                change.to().map(Part::id).orElse("none")))
        .collect(Collectors.joining(", "));
    return one.kept().keepsMain() ? "main parts as ordered, " + changes : flight(one) + changes;
  }

  private static String flight(Renewed one) {
    return String.format(
        Locale.ROOT, "flies %.1f %% of its best alone, ", one.kept().column().share() / 10_000.0);
  }

  private String buys(Renewed one) {
    if (one.buys().isEmpty()) {
      return "nothing to buy";
    }
    var buys = new ArrayList<String>();
    var small = 0L;
    for (var buy : one.buys()) {
      if (buy.part().kind().isSmall()) {
        small += buy.cents();
      } else {
        buys.add("%s × %s (%s)".formatted(buy.pieces(), buy.part().id(), price(buy.cents())));
      }
    }
    if (small > 0) {
      buys.add("small hardware (%s)".formatted(price(small)));
    }
    return "to buy " + String.join(", ", buys);
  }
}
