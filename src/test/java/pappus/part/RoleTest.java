package pappus.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.answers.build.BuildLines;
import pappus.assessment.Assessment;
import pappus.assessment.flight.Avionics;
import pappus.assessment.flight.Draw;
import pappus.catalog.BuildText;
import pappus.change.Swapper;
import pappus.compatibility.RolesRule;
import pappus.compatibility.Verdict;
import pappus.fitting.PowerPlanner;
import pappus.scenario.Wish;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.search.plain.PlainSearch;
import pappus.search.timefold.TimefoldSearch;
import pappus.shop.SmallShop;

/** Every role is known to everything that has to know it. */
class RoleTest {
  /** A part of its own in every role. */
  private static final List<String> ONE_EACH = List.of(
      "cottongrass-4",
      "spikerush-1303-3400",
      "ligule-4x1.9x2",
      "tidewell-2s-3500",
      "sluice-10",
      "glowmoss-100",
      "newteye-14-feather",
      "thrennel-leaf",
      "stipule-u",
      "tendril-24-u",
      "mudmark-10",
      "chirp",
      "coot-stripped",
      "dewpond-220-16",
      "tether-30-20");

  private static final Set<Role> ALL = EnumSet.allOf(Role.class);
  private static final Question QUESTION = SmallShop.question(
      SmallShop.catalog(ONE_EACH), ", \"wants\": [\"gps\", \"buzzer\", \"payload-camera\"]");
  private static final Assessment WHOLE = QUESTION
      .assessor()
      .assess(BuildText.parse(String.join(",", ONE_EACH), SmallShop.catalog(ONE_EACH)));

  @Test
  void eachIsFilledBySomePartAndThereIsABuildThatFillsAll() {
    assertThat(WHOLE.build().parts()).containsOnlyKeys(Role.values());
    assertThat(WHOLE.isFeasible()).as("%s", WHOLE.broken()).isTrue();
  }

  @Test
  void everySearchFillsEachOne() {
    var exact = new Incumbents();
    new ExactSearch(QUESTION, 1).run(1, 100_000, exact, nodes -> {});
    var moved = new Incumbents();
    new TimefoldSearch(QUESTION, 8).run(moved, starts -> {});
    var missing =
        new PlainSearch(QUESTION, List.of(), true).run(100_000, looks -> {}).better();

    assertThat(Stream.of(exact.bestFirst(), moved.bestFirst(), missing))
        .allSatisfy(found ->
            assertThat(found).extracting(Assessment::build).containsExactly(WHOLE.build()));
  }

  @Test
  void eachIsMainOrAnAccessoryThatIsDecidedAfterWhatMayBringItAlong() {
    assertThat(Role.MAIN).containsExactly(Role.FRAME, Role.MOTOR, Role.PROPELLER, Role.BATTERY);
    assertThat(Role.FLYING).containsAll(Role.MAIN).contains(Role.BOARD).hasSize(5);
    assertThat(Stream.concat(Role.MAIN.stream(), Role.ACCESSORIES.stream()))
        .containsExactlyInAnyOrder(Role.values());
    for (var role : Role.ACCESSORIES) {
      assertThat(role.followers())
          .allMatch(
              follower -> Role.ACCESSORIES.indexOf(follower) > Role.ACCESSORIES.indexOf(role));
    }
  }

  /** The exact search looks anew at what a build is worth after the lead and after the buzzer. */
  @Test
  void accessoriesAreDecidedInThisOrder() {
    assertThat(Role.ACCESSORIES)
        .extracting(Role::key)
        .containsExactly(
            "board",
            "lead",
            "transmitter",
            "camera",
            "receiver",
            "gps",
            "payload-camera",
            "buzzer",
            "video-antenna",
            "radio-antenna",
            "capacitor");
  }

  @Test
  void eachIsTurnTellsWhatItDraws() {
    var drawing = Avionics.draws(WHOLE.fitting()).stream().map(Draw::label).toList();
    var fed = Role.at(Role.Turn.FED).toList();
    var driven = Role.at(Role.Turn.DRIVEN).toList();

    assertThat(drawing)
        .containsExactlyInAnyOrderElementsOf(Stream.of(List.of(Role.BOARD), fed, driven)
            .flatMap(List::stream)
            .map(Role::label)
            .toList());
    assertThat(WHOLE.fitting().powerPlan().orElseThrow().feeds())
        .extracting(feed -> feed.consumer())
        .containsExactlyInAnyOrderElementsOf(fed);
    assertThat(PowerPlanner.READS).containsAll(fed).contains(Role.BATTERY, Role.BOARD);
  }

  @Test
  void partsBringAlongFollowersOfTheirRoleAndEachFollowerIsBroughtAlong() {
    var brought = EnumSet.noneOf(Role.class);
    for (var part : SmallShop.all().parts()) {
      var roles = part.fills();
      if (roles.size() > 1) {
        var along = roles.subList(1, roles.size());
        assertThat(roles.get(0).followers()).as(part.id()).containsAll(along);
        brought.addAll(along);
      }
    }
    // A plug that matches brings no lead along, but leaves no need for one.
    brought.add(Role.LEAD);
    assertThat(brought)
        .containsExactlyElementsOf(
            ALL.stream().filter(role -> role.bringer().isPresent()).toList());
  }

  @Test
  void followersAreThoseThatItBringsAndWhatTheyBring() {
    for (var role : ALL) {
      var brought = ALL.stream()
          .filter(each -> each.bringer()
              .filter(bringer -> bringer == role || role.followers().contains(bringer))
              .isPresent())
          .toList();
      assertThat(role.followers()).as(role.key()).containsExactlyElementsOf(brought);
    }
  }

  @Test
  void aTidyBuildHasNoPartOfItsOwnForWhatAnotherBringsAlong() {
    var tidied = EnumSet.noneOf(Role.class);
    for (var part : SmallShop.all().parts()) {
      for (var role : part.fills().stream().skip(1).toList()) {
        var both = WHOLE.build().with(part.fills().get(0), part);
        assertThat(both.tidy().part(role)).as("%s beside %s", role, part.id()).isEmpty();
        tidied.add(role);
      }
      if (part instanceof Board board && board.plug() != null) {
        var matches =
            board.plug().connector() == WHOLE.build().battery().orElseThrow().connector();
        var plugged = WHOLE.build().with(Role.BOARD, board).tidy();
        assertThat(plugged.lead().isEmpty()).as(part.id()).isEqualTo(matches);
        tidied.addAll(matches ? Set.of(Role.LEAD) : Set.of());
      }
    }
    assertThat(tidied).allMatch(role -> role.bringer().isPresent());
    assertThat(ALL).allMatch(role -> tidied.contains(role) == role.bringer().isPresent());
    assertThat(WHOLE.build().tidy()).isEqualTo(WHOLE.build());
  }

  @ParameterizedTest
  @EnumSource
  void aBuildLacksEachOne(Role role) {
    var lacking = QUESTION.assessor().assess(WHOLE.build().without(role));

    assertThat(lacking.isFeasible()).isFalse();
    assertThat(lacking.flight().isEmpty()).isEqualTo(Role.FLYING.contains(role));
    var verdict = new RolesRule().check(lacking.fitting());
    // The rule on the plugs speaks of the lead.
    assertThat(verdict instanceof Verdict.Clashes).isEqualTo(role != Role.LEAD);
  }

  @Test
  void extrasAreWhatAScenarioMayWant() {
    assertThat(Role.EXTRAS)
        .containsExactlyElementsOf(
            Stream.of(Wish.values()).map(Wish::role).sorted().toList());
    var unasked = SmallShop.question(SmallShop.catalog(ONE_EACH), "");
    assertThat(ALL).allMatch(role -> unasked.options(role).isEmpty() == Role.EXTRAS.contains(role));
  }

  @Test
  void countsFollowRotorsAndPorts() {
    assertThat(ALL.stream().filter(role -> role.pieces() == 4))
        .containsExactly(Role.MOTOR, Role.PROPELLER);
    assertThat(ALL).allMatch(role -> WHOLE.build().count(role) == role.pieces());
    assertThat(ALL)
        .allMatch(role -> WHOLE.build().port(role).isPresent() == Role.ANTENNAS.contains(role));
    var pair = (Receiver) SmallShop.all().part("thrennel-pair").orElseThrow();
    assertThat(WHOLE.build().with(Role.RECEIVER, pair).count(Role.RADIO_ANTENNA))
        .isEqualTo(2);
  }

  /** Of equal seeds another order draws other builds. */
  @Test
  void movesMatchTheseRolesInThisOrder() {
    var matched = ALL.stream()
        .filter(role -> !role.matched().isEmpty())
        .map(role -> role.key()
            + ": "
            + role.matched().stream().map(Role::key).collect(Collectors.joining(", ")));

    assertThat(matched)
        .containsExactly(
            "frame: motor, propeller, battery, board",
            "motor: propeller, battery",
            "propeller: motor",
            "battery: lead, capacitor, board",
            "board: lead, radio-antenna, video-antenna",
            "transmitter: camera, video-antenna",
            "camera: transmitter, video-antenna",
            "receiver: radio-antenna");
  }

  @Test
  void aSwapMayChangeEachSmallPartThatAnyOtherBringsOrIsMatchedWith() {
    var small = EnumSet.noneOf(Role.class);
    ALL.forEach(role -> small.addAll(role.alongside()));
    var hanging = new ArrayList<>(Role.ACCESSORIES);
    hanging.removeAll(List.of(Role.BOARD, Role.GPS, Role.PAYLOAD_CAMERA));

    assertThat(small).containsExactlyInAnyOrderElementsOf(hanging);
    assertThat(ALL).allMatch(role -> role.alongside().containsAll(role.followers()));
    assertThat(Role.BATTERY.alongside()).containsExactly(Role.CAPACITOR, Role.LEAD);
    for (var role : List.of(Role.FRAME, Role.MOTOR, Role.PROPELLER)) {
      assertThat(role.alongside()).isEmpty();
    }
  }

  @Test
  void eachCanBeSwapped() {
    var wide = SmallShop.question(
        SmallShop.all(), ", \"wants\": [\"gps\", \"buzzer\", \"payload-camera\"]");

    assertThat(new Swapper(wide).roles(WHOLE.build())).containsExactly(Role.values());
  }

  @Test
  void reportsNameThePartOfEachOne() {
    var details = String.join("\n", BuildLines.details(WHOLE));
    var row = BuildLines.names(WHOLE) + ", " + BuildLines.accessories(WHOLE);

    WHOLE.build().parts().forEach((role, part) -> {
      assertThat(details).contains(role.label() + ": " + part.name() + " [" + part.id() + "]");
      assertThat(row).containsOnlyOnce(part.name());
    });
  }
}
