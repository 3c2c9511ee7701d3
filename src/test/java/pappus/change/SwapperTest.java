package pappus.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.answers.build.Reasons;
import pappus.assessment.Assessment;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;

class SwapperTest {
  private static final Question QUESTION = Quads.QUESTION;
  private static final Swapper SWAPPER = new Swapper(QUESTION);

  /** What a builder would let go along with each role. */
  private static final Map<Role, Set<Role>> MAY_FOLLOW = Map.of(
      Role.BATTERY, Set.of(Role.LEAD, Role.CAPACITOR),
      Role.BOARD,
          Set.of(
              Role.LEAD,
              Role.CAPACITOR,
              Role.TRANSMITTER,
              Role.CAMERA,
              Role.VIDEO_ANTENNA,
              Role.RECEIVER,
              Role.RADIO_ANTENNA),
      Role.TRANSMITTER, Set.of(Role.CAMERA, Role.VIDEO_ANTENNA),
      Role.CAMERA, Set.of(Role.TRANSMITTER, Role.VIDEO_ANTENNA),
      Role.RECEIVER, Set.of(Role.RADIO_ANTENNA));

  private static Part part(String id) {
    return Quads.WORKSHOP.part(id).orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(
      value = Role.class,
      names = {
        "FRAME",
        "MOTOR",
        "PROPELLER",
        "BATTERY",
        "BOARD",
        "TRANSMITTER",
        "CAMERA",
        "RECEIVER",
        "VIDEO_ANTENNA",
        "RADIO_ANTENNA",
        "CAPACITOR",
        "LEAD"
      })
  void everySwapIsTheBestOfAllThatChangeAsLittle(Role role) {
    for (var base : List.of(Quads.WHOLE, Quads.SINGLE)) {
      if (base.build().part(role).isEmpty()) {
        continue;
      }
      for (var swap : SWAPPER.all(base, role)) {
        var best = bruteForce(base.build(), role, swap.part());
        assertThat(swap.assessment().build())
            .as("%s in place of %s in %s", swap.part().id(), role, base.build())
            .isEqualTo(best.build());
        assertThat(swap.assessment().objective()).isEqualTo(best.objective());
      }
    }
  }

  /** Tries every way to fill no, one, two or three of the roles that may follow; the fewest first. */
  private static Assessment bruteForce(Build base, Role role, Part part) {
    var alone = assess(base.with(role, part));
    if (alone.broken().isEmpty()) {
      return alone;
    }
    var follow = List.copyOf(MAY_FOLLOW.getOrDefault(role, Set.of()));
    for (var count = 1; count <= 3; count++) {
      var clean = new ArrayList<Assessment>();
      fill(base.with(role, part), follow, count, clean);
      var best = clean.stream()
          .min(
              Comparator.comparingLong(Assessment::shortfall).thenComparing(Incumbents.BEST_FIRST));
      if (best.isPresent()) {
        return best.get();
      }
    }
    return alone;
  }

  private static void fill(Build build, List<Role> follow, int count, List<Assessment> clean) {
    if (count == 0) {
      var assessment = assess(build);
      if (assessment.broken().isEmpty()) {
        clean.add(assessment);
      }
      return;
    }
    for (var i = 0; i < follow.size(); i++) {
      var rest = follow.subList(i + 1, follow.size());
      for (var option : QUESTION.options(follow.get(i))) {
        fill(build.with(follow.get(i), option), rest, count - 1, clean);
      }
    }
  }

  private static Assessment assess(Build build) {
    return QUESTION.assessor().assess(Question.tidy(build.parts()));
  }

  @Test
  void aPackWithAnotherPlugBringsALeadAlong() {
    var swap = SWAPPER.swap(Quads.WHOLE, Role.BATTERY, part("neap-2s-350"));

    assertThat(swap.assessment().broken()).isEmpty();
    assertThat(swap.alongside())
        .containsExactly(
            new Changed(Role.LEAD, Optional.empty(), Optional.of(part("isthmus-30-to-ph"))));
    assertThat(swap.assessment().build())
        .isEqualTo(Quads.WHOLE
            .build()
            .with(Role.BATTERY, part("neap-2s-350"))
            .with(Role.LEAD, part("isthmus-30-to-ph")));
  }

  @Test
  void aPackOfMoreVoltsBringsACapacitorAlong() {
    var swap = SWAPPER.swap(Quads.SINGLE, Role.BATTERY, part("tidewell-3s-3400"));

    assertThat(swap.assessment().broken()).isEmpty();
    assertThat(swap.alongside())
        .containsExactly(new Changed(
            Role.CAPACITOR,
            Optional.of(part("dewpond-220-16")),
            Optional.of(part("cistern-220-25"))));
  }

  @Test
  void aBoardThatBringsPartsAlongLeavesThemOut() {
    var swap = SWAPPER.swap(Quads.SINGLE, Role.BOARD, part("culvert-6-whole"));

    assertThat(swap.alongside())
        .extracting(Changed::role)
        .containsExactly(
            Role.TRANSMITTER, Role.RECEIVER, Role.VIDEO_ANTENNA, Role.RADIO_ANTENNA, Role.LEAD);
    assertThat(swap.alongside().stream().flatMap(changed -> changed.after().stream()))
        .containsExactly(part("stipule-wire"));
  }

  @Test
  void aBoardThatBringsLessAlongIsGivenWhatItLacks() {
    var swap = SWAPPER.swap(Quads.WHOLE, Role.BOARD, part("culvert-8"));

    assertThat(swap.assessment().broken()).isEmpty();
    assertThat(swap.alongside())
        .containsExactly(
            new Changed(Role.TRANSMITTER, Optional.empty(), Optional.of(part("rushlight-50-wire"))),
            new Changed(Role.VIDEO_ANTENNA, Optional.of(part("stipule-wire")), Optional.empty()));
  }

  @Test
  void whatNothingCuresKeepsAllElseAsItIs() {
    for (var id : List.of("awn-4.5x2.5x2", "frond-4.5x3.2x3")) {
      var swap = SWAPPER.swap(Quads.WHOLE, Role.PROPELLER, part(id));

      assertThat(swap.assessment().broken()).isNotEmpty();
      assertThat(swap.alongside()).isEmpty();
      assertThat(swap.assessment().build())
          .isEqualTo(Quads.WHOLE.build().with(Role.PROPELLER, part(id)));
    }
    // A capacitor for its volts would not help: the board does not stand them.
    var pack = SWAPPER.swap(Quads.WHOLE, Role.BATTERY, part("tidewell-3s-3400"));
    assertThat(pack.assessment().broken())
        .extracting(finding -> finding.rule())
        .containsExactly("board-volts", "capacitor");
    assertThat(pack.alongside()).isEmpty();
  }

  @Test
  void aPartThatAnotherBringsAlongAlreadyIsNotDroppedWithoutAWord() {
    var receiver = SWAPPER.swap(Quads.WHOLE, Role.RECEIVER, part("osier-t1"));
    var lead = SWAPPER.swap(Quads.WHOLE, Role.LEAD, part("tether-30-20"));

    assertThat(receiver.assessment().build())
        .isEqualTo(Quads.WHOLE.build().with(Role.RECEIVER, part("osier-t1")));
    assertThat(Reasons.findings(receiver.assessment()))
        .contains(
            "Clash (roles): osier-t1 fills the role of receiver, which another part fills already.");
    assertThat(lead.assessment().build())
        .isEqualTo(Quads.WHOLE.build().with(Role.LEAD, part("tether-30-20")));
    assertThat(Reasons.findings(lead.assessment()))
        .contains(
            "Clash (battery-plug): Lead tether-30-20 is soldered to bare pads, but board culvert-6-whole comes with a XT30 plug.");
  }

  @Test
  void triesEveryOtherPartInTheOrderOfIds() {
    assertThat(SWAPPER.all(Quads.WHOLE, Role.BATTERY))
        .extracting(swap -> swap.part().id())
        .containsExactly("neap-2s-350", "neap-2s-450", "tidewell-2s-3400", "tidewell-3s-3400");
    assertThat(SWAPPER.all(Quads.WHOLE, Role.GPS)).isEmpty();
  }

  @Test
  void namesTheRolesThatHaveAnotherPartToOffer() {
    assertThat(SWAPPER.roles(Quads.WHOLE.build()))
        .containsExactly(
            Role.FRAME,
            Role.MOTOR,
            Role.PROPELLER,
            Role.BATTERY,
            Role.BOARD,
            Role.CAMERA,
            Role.VIDEO_ANTENNA,
            Role.CAPACITOR);
    var few = SmallShop.question(SmallShop.catalog(SmallShop.ONE_BUILD), "");
    assertThat(new Swapper(few).roles(Quads.WHOLE.build())).isEmpty();
  }

  @Test
  void whatIsGainedIsTheDifferenceOfTwoAssessments() {
    var swap = SWAPPER.swap(Quads.WHOLE, Role.BATTERY, part("tidewell-2s-3400"));
    var after = assess(Quads.WHOLE.build().with(Role.BATTERY, part("tidewell-2s-3400")));

    assertThat(swap.gained())
        .isCloseTo(
            after.flight().orElseThrow().endurance().seconds()
                - Quads.WHOLE.flight().orElseThrow().endurance().seconds(),
            within(1e-5));
    assertThat(swap.gained()).isNegative();
    // 105.3 g for 14.90 and 102.5 g for 12.40.
    assertThat(swap.gramsMore()).isCloseTo(-2.8, within(1e-9));
    assertThat(swap.centsMore()).isEqualTo(-250);
  }
}
