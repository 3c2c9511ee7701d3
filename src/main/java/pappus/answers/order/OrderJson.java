package pappus.answers.order;

import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import pappus.answers.build.Cautions;
import pappus.answers.result.Run;
import pappus.files.Fingerprint;
import pappus.files.json.JsonText;
import pappus.order.choice.Standing;
import pappus.order.plan.Plan;
import pappus.order.plan.Revision;
import pappus.part.Part;

/** A planned order with every digit. */
public record OrderJson(
    @JsonPropertyDescription(
        "What the answer is, in a word: ordered, or short where no order for all was found.")
    String status,

    @JsonPropertyDescription("The tool that wrote it, with version and commit.")
    String tool,

    @JsonPropertyDescription("Name of the order.") String order,

    @JsonPropertyDescription("Three capital letters as in ISO 4217.")
    String currency,

    @JsonPropertyDescription("The most that all may cost, cents.")
    long budgetCents,

    @JsonPropertyDescription("What is paid.") Paid paid,
    @JsonPropertyDescription("How good it is.") Good reached,

    @JsonPropertyDescription("How good it would be if each took what those before left.")
    Good inTurn,

    @JsonPropertyDescription(
        "Share of the best flight that no order gives to everybody more than, thousandths; left out where none was looked for.")
    Optional<Long> worstAtMost,

    @JsonPropertyDescription(
        "Sum of shares that no order surpasses whose worst share is no less, millionths; left out where none was looked for.")
    Optional<Long> sumAtMost,

    @JsonPropertyDescription(
        "What becomes of an earlier order of which some came; left out where there was none.")
    Optional<Revised> revision,

    @JsonPropertyDescription("Who gets what.") List<Group> groups,
    @JsonPropertyDescription("What is bought.") List<Buy> buys,
    @JsonPropertyDescription("What there is too little of.") List<Lacking> shortOf,

    @JsonPropertyDescription("Catalogue folders as given, in order.")
    List<String> catalogs,

    @JsonPropertyDescription("Every file that was read, the order's first.")
    List<Fingerprint> inputs,

    @JsonPropertyDescription("To heed before building.") List<String> cautions) {
  /** What is paid. */
  record Paid(
      @JsonPropertyDescription("Whole units of what flies, cents.")
      long flyingCents,

      @JsonPropertyDescription("Spares and what begun units hold beyond that, cents.")
      long sparesCents,

      @JsonPropertyDescription("Postage of all shops, cents.")
      long postageCents,

      @JsonPropertyDescription("What is no part, cents.") long otherCents,
      @JsonPropertyDescription("All of it, cents.") long cents) {}

  /** How good an order is. */
  record Good(
      @JsonPropertyDescription("Whether all of it can be bought.")
      boolean feasible,

      @JsonPropertyDescription("Least share of any learner, thousandths.")
      long worst,

      @JsonPropertyDescription("Sum of shares, millionths.") long sum,
      @JsonPropertyDescription("What it costs, cents.") long cents,

      @JsonPropertyDescription("Kinds of parts, but for small hardware.")
      int kinds) {
    static Good of(Standing standing) {
      return new Good(
          standing.broken() == 0,
          standing.worst(),
          standing.sum(),
          standing.cents(),
          standing.kinds());
    }
  }

  /** What becomes of an earlier order. */
  record Revised(
      @JsonPropertyDescription("File that told the earlier order.")
      Fingerprint of,

      @JsonPropertyDescription("What came, and what was paid for it.")
      List<Came> came,

      @JsonPropertyDescription("What was paid for it, postage included, cents.")
      long spentCents,

      @JsonPropertyDescription("Learners whose main parts are others than were ordered.")
      int changed,

      @JsonPropertyDescription("Learners who cannot keep theirs, whatever is ordered: proven.")
      int changedAtLeast,

      @JsonPropertyDescription("What any order costs at least that changes as few, cents: proven.")
      long centsAtLeast,

      @JsonPropertyDescription("Learners one by one, by group and then by earlier build.")
      List<Learner> learners) {}

  /** What came of a part. */
  record Came(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Pieces.") int pieces,

      @JsonPropertyDescription("What was paid for them, cents.")
      long cents) {}

  /** What a learner was to get and gets. */
  record Learner(
      @JsonPropertyDescription("The group.") String group,

      @JsonPropertyDescription("Number in the group, from 1.")
      int number,

      @JsonPropertyDescription("What the build was called that was ordered.")
      String ordered,

      @JsonPropertyDescription("Whether all main parts are as they were ordered.")
      boolean keepsMain,

      @JsonPropertyDescription("The build as commands take it.")
      String build,

      @JsonPropertyDescription("Parts that are others.") List<Change> changes,

      @JsonPropertyDescription("What has to be bought for this learner.")
      List<Anew> buys) {}

  /** A part in the place of another. */
  record Change(
      @JsonPropertyDescription("What it does in the build.") String role,

      @JsonPropertyDescription("Id of the part that was ordered; left out where there was none.")
      Optional<String> from,

      @JsonPropertyDescription("Id of the part that takes its place; left out where there is none.")
      Optional<String> to) {}

  /** What has to be bought of a part. */
  record Anew(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Pieces.") int pieces,

      @JsonPropertyDescription("Price of them in proportion to that of their unit, cents.")
      long cents) {}

  /** A group. */
  record Group(
      @JsonPropertyDescription("What it is called.") String name,
      @JsonPropertyDescription("File of its scenario.") String scenario,
      @JsonPropertyDescription("Learners.") int pieces,

      @JsonPropertyDescription("Whether its best alone is proven.")
      boolean bestProven,

      @JsonPropertyDescription("Flight of its best alone, s.")
      Optional<Double> bestSeconds,

      @JsonPropertyDescription("Range of its best alone, m.")
      Optional<Double> bestMetres,

      @JsonPropertyDescription("The builds that its learners get.")
      List<Build> builds) {}

  /** A build of a group. */
  record Build(
      @JsonPropertyDescription("What it is called: what follows a # on the command line.")
      String name,

      @JsonPropertyDescription("Learners who get it.") int learners,

      @JsonPropertyDescription("Share of the best alone, millionths.")
      long share,

      @JsonPropertyDescription("Flight by the likeliest figures, s.")
      Optional<Double> seconds,

      @JsonPropertyDescription("Range by the likeliest figures, m.")
      Optional<Double> metres,

      @JsonPropertyDescription("Flight to plan with, s.") Optional<Double> planWithSeconds,
      @JsonPropertyDescription("Range to plan with, m.") Optional<Double> planWithMetres,
      @JsonPropertyDescription("In the air, ms.") long milliseconds,

      @JsonPropertyDescription("Whether it keeps every rule and limit.")
      boolean feasible,

      @JsonPropertyDescription(
          "Price of its pieces, each in proportion to that of its unit, cents.")
      long cents,

      @JsonPropertyDescription("The build as commands take it.")
      String build,

      @JsonPropertyDescription("Ids of its parts by role.") Map<String, String> roles,

      @JsonPropertyDescription("Pieces to pack for each learner, by id of the part.")
      Map<String, Integer> bag) {}

  /** What is bought of a part in one shop. */
  record Buy(
      @JsonPropertyDescription("Name of the shop; left out where it is in none of the order's.")
      Optional<String> shop,

      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Selling units.") int units,
      @JsonPropertyDescription("Pieces in them.") int pieces,

      @JsonPropertyDescription("Price of all of them, cents.")
      long cents) {}

  /** What there is too little of. */
  record Lacking(
      @JsonPropertyDescription("Id of the part.") String part,
      @JsonPropertyDescription("Units in stock.") int stock,
      @JsonPropertyDescription("Units that are bought.") int units,

      @JsonPropertyDescription("About what one unit more adds to the sum of shares, millionths.")
      long worth) {}

  /**
   * The whole answer.
   *
   * @param run what it was made by
   */
  public static String of(Plan plan, Run run) {
    return of(plan, run, Optional.empty());
  }

  /**
   * The same of an order that was told before.
   *
   * @param told the file that told it
   */
  public static String of(Revision revision, Run run, Fingerprint told) {
    return of(revision.plan(), run, Optional.of(revised(revision, told)));
  }

  private static String of(Plan plan, Run run, Optional<Revised> revised) {
    var expenses = Expenses.of(plan);
    var standing = plan.standing();
    return JsonText.of(new OrderJson(
        plan.isFeasible() ? "ordered" : "short",
        run.version(),
        plan.inputs().order().name(),
        plan.inputs().currency(),
        plan.inputs().budgetCents(),
        new Paid(
            expenses.flying(),
            expenses.spares(),
            expenses.postage(),
            expenses.extra(),
            standing.cents()),
        Good.of(standing),
        Good.of(plan.inTurn()),
        optional(plan.bounds().worst()),
        optional(plan.bounds().sum()),
        revised,
        groups(plan),
        buys(plan, expenses),
        Scarcity.of(plan).stream()
            .map(one -> new Lacking(
                one.ware().part().id(),
                one.ware().stock(),
                one.units(),
                Math.round(1e6 * one.share())))
            .toList(),
        run.catalogs(),
        run.inputs(),
        List.of(Cautions.general())));
  }

  private static Optional<Long> optional(OptionalLong number) {
    return number.isPresent() ? Optional.of(number.getAsLong()) : Optional.empty();
  }

  private static Revised revised(Revision revision, Fingerprint told) {
    return new Revised(
        told,
        revision.delivery().came().stream()
            .map(one -> new Came(one.part(), one.pieces(), one.cents()))
            .toList(),
        revision.delivery().spentCents(),
        revision.changed(),
        revision.changedAtLeast(),
        revision.centsAtLeast(),
        Renewed.of(revision).stream().map(one -> learner(revision, one)).toList());
  }

  private static Learner learner(Revision revision, Renewed one) {
    var bag = one.kept().bag();
    return new Learner(
        revision.plan().inputs().groups().get(bag.group()).name(),
        one.number(),
        bag.name(),
        one.kept().keepsMain(),
        one.kept().column().toString(),
        one.changes().stream()
            .map(change -> new Change(
                change.role().key(), change.from().map(Part::id), change.to().map(Part::id)))
            .toList(),
        one.buys().stream()
            .map(buy -> new Anew(buy.part().id(), buy.pieces(), buy.cents()))
            .toList());
  }

  private static List<Group> groups(Plan plan) {
    var served = Served.of(plan);
    return plan.askers().stream()
        .map(asker -> {
          var asked = asker.asked();
          var isForRange = asked.scenario().isForRange();
          var best = asker.best().build().map(build -> build.objective() / 1e6);
          return new Group(
              asked.name(),
              asked.file(),
              asked.pieces(),
              asker.best().isProven(),
              isForRange ? Optional.empty() : best,
              isForRange ? best : Optional.empty(),
              served.stream()
                  .filter(one -> one.group().index() == asked.index())
                  .map(OrderJson::build)
                  .toList());
        })
        .toList();
  }

  private static Build build(Served one) {
    var column = one.column();
    var assessment = column.assessment();
    var isForRange = one.group().scenario().isForRange();
    var roles = new LinkedHashMap<String, String>();
    assessment.build().parts().forEach((role, part) -> roles.put(role.key(), part.id()));
    var bag = new LinkedHashMap<String, Integer>();
    column.needs().forEach(need -> bag.merge(need.ware().part().id(), need.pieces(), Integer::sum));
    return new Build(
        one.name(),
        one.number(),
        column.share(),
        isForRange ? Optional.empty() : Optional.of(one.figure()),
        isForRange ? Optional.of(one.figure()) : Optional.empty(),
        isForRange ? Optional.empty() : Optional.of(one.planWith()),
        isForRange ? Optional.of(one.planWith()) : Optional.empty(),
        assessment.milliseconds(),
        assessment.isFeasible(),
        column.ownCents(),
        assessment.build().toString(),
        roles,
        bag);
  }

  private static List<Buy> buys(Plan plan, Expenses expenses) {
    return expenses.bill().buys().stream()
        .map(buy -> new Buy(
            buy.lot().shop() < 0
                ? Optional.empty()
                : Optional.of(plan.inputs().till().shops().get(buy.lot().shop())),
            buy.lot().part().id(),
            buy.units(),
            buy.units() * buy.lot().part().sold().pieces(),
            buy.cents()))
        .toList();
  }
}
