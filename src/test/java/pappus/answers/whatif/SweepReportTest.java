package pappus.answers.whatif;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static pappus.part.Parts.with;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.answers.result.Run;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.BuildText;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.change.Asked;
import pappus.change.Rates;
import pappus.compatibility.PropellerRoom;
import pappus.part.Frame;
import pappus.ranking.Best;
import pappus.ranking.ParetoFront;
import pappus.scenario.Scenario;
import pappus.search.Changed;
import pappus.search.Ending;
import pappus.search.Proof;
import pappus.shop.SmallShop;
import pappus.whatif.sweep.Axes;
import pappus.whatif.sweep.Axis;
import pappus.whatif.sweep.FrameAdvice;
import pappus.whatif.sweep.Step;
import pappus.whatif.sweep.Sweep;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SweepReportTest {
  private static final Catalog FEW = SmallShop.few();
  private static final Scenario PLAIN = SmallShop.scenario("");
  private static final Assessor ASSESSOR = SmallShop.assessor(FEW, "");
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  private static final Assessment FIRST =
      Changed.cents(Changed.seconds(assess(BUILD), 2700), 20_000);
  private static final Assessment SHORTER =
      Changed.cents(Changed.seconds(assess(BUILD), 2400), 20_000);
  private static final Assessment SMALLER_PACK = Changed.cents(
      Changed.seconds(
          assess(BUILD
              .replace("tidewell-2s-3500", "tidewell-2s-3400")
              .replace("newteye-14-feather", "newteye-14")),
          2140),
      18_050);

  private static final Run RUN = new Run("pappus 0", 1, 2, List.of("parts"), List.of(), List.of());

  private static Assessment assess(String build) {
    return ASSESSOR.assess(BuildText.parse(build, FEW));
  }

  private static Best best(@Nullable Assessment build, Ending ending) {
    return new Best(Optional.ofNullable(build), new Proof(ending, OptionalLong.empty(), 1));
  }

  private static List<Axis> axes(String... typed) {
    var asked = new Asked(PLAIN, new Supply(FEW, Shelf.EMPTY));
    return Stream.of(typed).map(one -> Axes.of(one, asked)).toList();
  }

  private static Step step(Best best, @Nullable Assessment before, String... values) {
    var changed = before == null || best.build().isEmpty()
        ? List.<pappus.change.Changed>of()
        : pappus.change.Changed.between(before.build(), best.build().get().build());
    return new Step(List.of(values), best, changed, false, Optional.empty());
  }

  private static final Sweep PAYLOAD = new Sweep(
      axes("payload=0:80:20"),
      List.of(
          step(best(FIRST, Ending.PROVEN), null, "0"),
          step(best(SHORTER, Ending.PROVEN), FIRST, "20"),
          step(best(SMALLER_PACK, Ending.EFFORT), SHORTER, "40"),
          step(best(null, Ending.EFFORT), null, "60"),
          step(best(null, Ending.PROVEN), null, "80")),
      5);

  private static final Sweep TWO = new Sweep(
      axes("mass-cap=190,200", "budget=150,200"),
      List.of(
          step(best(null, Ending.PROVEN), null, "190", "150"),
          step(best(FIRST, Ending.PROVEN), null, "190", "200"),
          step(best(SMALLER_PACK, Ending.PROVEN), null, "200", "150"),
          step(best(FIRST, Ending.PROVEN), SMALLER_PACK, "200", "200")),
      3);

  private static final ParetoFront FRONT = new ParetoFront(
      List.of(FIRST, SMALLER_PACK), 0.5, new Proof(Ending.PROVEN, OptionalLong.empty(), 1));

  private static final FrameAdvice ADVICE = new FrameAdvice(
      (Frame) FEW.part("cottongrass-4").orElseThrow(),
      best(FIRST, Ending.PROVEN),
      Optional.of(new Rates(17.4, 100)),
      List.of(PropellerRoom.of(3.5), PropellerRoom.of(4.15), PropellerRoom.of(4.5)),
      List.of(
          new FrameAdvice.Addition(
              "bolt circle of 16 mm", "motors", 3, 5, 8, best(FIRST, Ending.PROVEN), 90),
          new FrameAdvice.Addition(
              "holes 16x16 at the middle position",
              "flight boards",
              1,
              2,
              8,
              best(FIRST, Ending.PROVEN),
              0),
          new FrameAdvice.Addition(
              "holes 30.5x30.5 at the middle position",
              "flight boards",
              2,
              2,
              8,
              best(null, Ending.PROVEN),
              0)));

  private static SweepReport report(
      @Nullable Sweep sweep, @Nullable ParetoFront front, @Nullable FrameAdvice advice) {
    return new SweepReport(PLAIN, "EUR", 1.645, sweep, front, advice);
  }

  @Test
  void aTerminalOfAHundredColumnsHasATable() {
    assertThat(report(PAYLOAD, null, null).text(100, false)).isEqualTo("""
            marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.
            Varied here: payload. Flights in min.

            payload g  plan on  expect    g  T/W  EUR    best build
            0             36.5    45.0  191  2.3  200    Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2,
                                                         Tidewell 2S 3500
            20            32.5    40.0  191  2.3  200    the same
            40            29.0    35.5  188  2.2  181    not proven: Tidewell 2S 3400, camera Newteye 14
            60                                           nothing was found
            80                                           nothing is feasible

            From 0 to 40 g, the best build flies 14 s shorter per g on average.
            Not proven at 2 of 5 steps: there may be something better.

            ! Estimates: nothing here was measured. Lithium packs, propellers and radio power can hurt: assess
              prints the cautions for a build, and local rules come first.
            """);
  }

  @Test
  void aNarrowOneHasTheBestBuildBelow() {
    assertThat(report(PAYLOAD, null, null).text(40, false)).isEqualTo("""
            marsh: hover, 5 m above sea level; below
            250 g; T/W at least 2.0.
            Varied here: payload. Flights in min.

            payload g  plan on  expect    g  T/W
                EUR
                best build
            0             36.5    45.0  191  2.3
                200
                Cottongrass 4, Spikerush 1303-3400,
                Ligule 4×1.9×2, Tidewell 2S 3500
            20            32.5    40.0  191  2.3
                200
                the same
            40            29.0    35.5  188  2.2
                181
                not proven: Tidewell 2S 3400, camera
                Newteye 14
            60
                nothing was found
            80
                nothing is feasible

            From 0 to 40 g, the best build flies 14
            s shorter per g on average.
            Not proven at 2 of 5 steps: there may be
            something better.

            ! Estimates: nothing here was measured.
              Lithium packs, propellers and radio
              power can hurt: assess prints the
              cautions for a build, and local rules
              come first.
            """);
  }

  @Test
  void aWideOneHasEachStepInALine() {
    assertThat(report(TWO, null, null).text(200, false)).isEqualTo("""
            marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.
            Varied here: mass-cap, budget. Flights in min.

            mass-cap g  budget EUR  plan on  expect    g  T/W  EUR    best build
            190         150                                           nothing is feasible
            190         200            36.5    45.0  191  2.3  200    Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500
            200         150            29.0    35.5  188  2.2  181    Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400
            200         200            36.5    45.0  191  2.3  200    Tidewell 2S 3500, camera Newteye 14 Feather

            Proven at each step: no other build from this catalogue does better. 4 steps took 3 searches; the others follow from looser ones.

            ! Estimates: nothing here was measured. Lithium packs, propellers and radio power can hurt: assess prints the cautions for a build, and local rules come first.
            """);
  }

  @Test
  void whatIsTradedStandsAgainstPriceAndMass() {
    assertThat(report(null, FRONT, null).text(100, false)).isEqualTo("""
            marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.

            2 builds that none beats in flight, mass and price at once, mass at 95 % confidence.
            Proven: none is missing down to 50 % of the longest flight.

            Cheaper step by step, whatever the mass, min
            plan on expect    g  T/W    price
               36.5   45.0  191  2.3  EUR 200
                Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500
               29.0   35.5  188  2.2  EUR 181   Tidewell 2S 3400

            Lighter step by step, whatever the price, min
            plan on expect    g  T/W    price
               36.5   45.0  191  2.3  EUR 200
                Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500
               29.0   35.5  188  2.2  EUR 181   Tidewell 2S 3400

            --all shows smaller steps, --format csv every build.

            ! Estimates: nothing here was measured. Lithium packs, propellers and radio power can hurt: assess
              prints the cautions for a build, and local rules come first.
            """);
  }

  @Test
  void adviceOnAFrameFollowsItsSweep() {
    assertThat(report(null, null, ADVICE).text(100, false)).isEqualTo("""
            marsh: hover, 5 m above sea level; below 250 g; T/W at least 2.0.

            Cottongrass 4 as it is drawn, 41.0 g: with its best build, proven, plan on 36.5 min, expect 45.0.
            Each gram off it gives 17 s.
            Spacing of the motors that propellers need:
             in  least mm  usual mm  gap here mm
            3.5      90.9      91.9         19.1  fits
            4.2     107.4     108.4          2.6  has room, but the frame says 4 inch at most
            4.5     116.3     117.3         -6.3  does not fit
            What one more hole pattern or bolt circle would add:
            - bolt circle of 16 mm: 5 of 8 motors go on it in place of 3 (63 in place of 38 %); the best build
              flies 1.5 min longer.
            - holes 16x16 at the middle position: 2 of 8 flight boards go on it in place of 1 (25 in place of 13
              %); the best build flies as long.

            ! Estimates: nothing here was measured. Lithium packs, propellers and radio power can hurt: assess
              prints the cautions for a build, and local rules come first.
            """);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100, 200})
  void keepsToTheColumnsAndLosesNoWord(int width) {
    var report = report(PAYLOAD, FRONT, ADVICE);

    assertThat(report.text(width, false).lines()).allMatch(line -> line.length() <= width);
    assertThat(report.text(width, false).split("\\s+"))
        .isEqualTo(report.text(1000, false).split("\\s+"));
  }

  /** Each is cheaper than the one before by half a percent or so, and told where it saves two since the last told. */
  @Test
  void aLongFrontIsToldInStepsThatSaveSomething() {
    var many = new ArrayList<Assessment>();
    for (var i = 0; i < 47; i++) {
      many.add(Changed.cents(Changed.seconds(FIRST, 6000 - 60 * i), 20_000 - 100 * i));
    }
    var report =
        report(null, new ParetoFront(many, 0.5, best(null, Ending.PROVEN).proof()), null);

    assertThat(prices(report.text(200, false)))
        .containsExactly(200, 196, 192, 188, 184, 180, 176, 172, 168, 164, 160, 156);
    assertThat(prices(report.text(200, true)))
        .isEqualTo(IntStream.range(0, 47).mapToObj(i -> 200 - i).toList());
    assertThat(report.csv().lines()).hasSize(48);
  }

  private static List<Integer> prices(String text) {
    return text.lines()
        .dropWhile(line -> !line.startsWith("Cheaper step by step"))
        .skip(2)
        .takeWhile(line -> !line.isEmpty())
        .filter(line -> line.contains("EUR "))
        .map(line -> Integer.valueOf(line.replaceAll(".*EUR ([0-9]+).*", "$1")))
        .toList();
  }

  @Test
  void aSpreadsheetHasEveryDigitAndTheWholeBuild() {
    assertThat(report(TWO, null, null).csv()).isEqualTo("""
            mass_cap_g,budget_eur,plan_min,flight_min,all_up_g,thrust_over_weight,price_eur,beyond_belief,proven,best,needed_g,flown_w,build
            190,150,,,,,,,yes,nothing is feasible,,,
            190,200,36.73831666666667,45,190.90388509281703,2.252178751608614,200,,yes,"Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500",196.651,32.083232388972206,"cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16"
            200,150,29.19451666666667,35.666666666666664,188.20388509281705,2.208380007669629,180.5,,yes,"Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400",190.663,31.83837743713375,"cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3400,culvert-6-whole,newteye-14,stipule-wire,dewpond-220-16"
            200,200,36.73831666666667,45,190.90388509281703,2.252178751608614,200,,yes,"Tidewell 2S 3500, camera Newteye 14 Feather",196.651,32.083232388972206,"cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16"
            """);
    assertThat(report(null, FRONT, null).csv()).isEqualTo("""
            plan_min,flight_min,all_up_g,thrust_over_weight,price_eur,beyond_belief,names,needed_g,flown_w,build
            36.73831666666667,45,190.90388509281703,2.252178751608614,200,,"Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500",196.651,32.083232388972206,"cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3500,culvert-6-whole,newteye-14-feather,stipule-wire,dewpond-220-16"
            29.19451666666667,35.666666666666664,188.20388509281705,2.208380007669629,180.5,,"Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400",190.663,31.83837743713375,"cottongrass-4,spikerush-1303-3400*4,ligule-4x1.9x2*4,tidewell-2s-3400,culvert-6-whole,newteye-14,stipule-wire,dewpond-220-16"
            """);
  }

  @Test
  void aPageHasTheSameTable() {
    assertThat(report(PAYLOAD, null, null).markdown()).isEqualTo("""
            | payload g | plan on, min | expect, min | g | T/W | EUR |  | best build |
            | --- | ---: | ---: | ---: | ---: | ---: | --- | --- |
            | 0 | 36.5 | 45.0 | 191 | 2.3 | 200 |  | Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500 |
            | 20 | 32.5 | 40.0 | 191 | 2.3 | 200 |  | the same |
            | 40 | 29.0 | 35.5 | 188 | 2.2 | 181 |  | not proven&#58; Tidewell 2S 3400, camera Newteye 14 |
            | 60 |  |  |  |  |  |  | nothing was found |
            | 80 |  |  |  |  |  |  | nothing is feasible |
            """);
    assertThat(report(null, FRONT, null).markdown()).isEqualTo("""
            | plan on, min | expect, min | g | T/W | EUR |  | build |
            | ---: | ---: | ---: | ---: | ---: | --- | --- |
            | 36.5 | 45.0 | 191 | 2.3 | 200 |  | Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3500 |
            | 29.0 | 35.5 | 188 | 2.2 | 181 |  | Cottongrass 4, Spikerush 1303-3400, Ligule 4×1.9×2, Tidewell 2S 3400 |
            """);
  }

  @Test
  void aGoalOfRangeIsToldInKilometres() {
    var far = SmallShop.flying("{\"style\": \"cruise\"}", ", \"goal\": \"range\"");
    var build = SmallShop.assessor(FEW, far).assess(BuildText.parse(BUILD, FEW));
    var metres = build.flight().orElseThrow().course().orElseThrow().rangeMetres();
    var sweep =
        new Sweep(axes("payload=0"), List.of(step(best(build, Ending.PROVEN), null, "0")), 1);

    var lines =
        new SweepReport(far, "EUR", 1.645, sweep, null, null).csv().lines().toList();

    assertThat(lines.get(0))
        .isEqualTo(
            "payload_g,plan_km,range_km,all_up_g,thrust_over_weight,price_eur,beyond_belief,proven,best,needed_g,flown_w,build");
    assertThat(Double.parseDouble(lines.get(1).split(",", -1)[2]) * 1000)
        .isEqualTo(metres, within(0.001));
  }

  private static JsonNode json(SweepReport report) {
    return JsonMapper.shared().readTree(report.json(RUN));
  }

  @Test
  void theDocumentHasEachStep() {
    var json = json(report(PAYLOAD, null, null));

    assertThat(json.path("status").asString()).isEqualTo("varied");
    assertThat(json.path("standing").path("proven").asBoolean()).isFalse();
    assertThat(json.path("standing").path("sweep").asString())
        .isEqualTo("Not proven at 2 of 5 steps: there may be something better.");
    assertThat(json.path("standing").path("searches").asInt()).isEqualTo(5);
    assertThat(json.path("axes").toString()).isEqualTo("[{\"id\":\"payload\",\"unit\":\"g\"}]");
    var steps = json.path("steps");
    assertThat(steps).hasSize(5);
    assertThat(steps)
        .extracting(step -> step.path("values").get(0).asString())
        .containsExactly("0", "20", "40", "60", "80");
    assertThat(steps)
        .extracting(step -> step.path("proven").asBoolean())
        .containsExactly(true, true, false, false, true);
    assertThat(steps)
        .extracting(step -> step.path("best").path("milliseconds").asLong(-1))
        .containsExactly(2_700_000L, 2_400_000L, 2_140_000L, -1L, -1L);
    var changed = steps.get(2).path("changed");
    assertThat(changed)
        .extracting(one -> one.path("role").asString() + ": "
            + one.path("before").asString() + " to " + one.path("after").asString())
        .containsExactly(
            "battery: tidewell-2s-3500 to tidewell-2s-3400",
            "camera: newteye-14-feather to newteye-14");
    assertThat(steps.get(0).path("changed")).isEmpty();
    assertThat(steps.get(0).path("neededGrams").asDouble())
        .isEqualTo(FIRST.mass().neededMilligrams(1.645) / 1000.0);
    assertThat(json.has("front")).isFalse();
    assertThat(json.has("frame")).isFalse();
    assertThat(json.path("parts").has("tidewell-2s-3400")).isTrue();
  }

  @Test
  void theDocumentHasTheFront() {
    var json = json(report(null, FRONT, null));

    assertThat(json.path("standing").path("proven").asBoolean()).isTrue();
    assertThat(json.path("standing").path("front").asString())
        .isEqualTo("Proven: none is missing down to 50 % of the longest flight.");
    assertThat(json.path("front"))
        .extracting(point -> point.path("cents").asLong())
        .containsExactly(20_000L, 18_050L);
    assertThat(json.has("steps")).isFalse();
    var cut = new ParetoFront(
        List.of(FIRST), 0.5, new Proof(Ending.EFFORT, OptionalLong.of(2_600_000_000L), 1));
    assertThat(
            json(report(null, cut, null)).path("standing").path("frontAtMost").asDouble())
        .isEqualTo(2600);
  }

  @Test
  void theDocumentHasTheAdvice() {
    var frame = json(report(PAYLOAD, null, ADVICE)).path("frame");

    assertThat(frame.path("frame").path("id").asString()).isEqualTo("cottongrass-4");
    assertThat(frame.path("proven").asBoolean()).isTrue();
    assertThat(frame.path("lostPerGram").asDouble()).isEqualTo(17.4);
    assertThat(frame.path("propellers"))
        .extracting(room -> room.path("inches").asDouble())
        .containsExactly(3.5, 4.15, 4.5);
    assertThat(frame.path("additions")).hasSize(3);
    var circle = frame.path("additions").get(0);
    assertThat(circle.path("what").asString()).isEqualTo("bolt circle of 16 mm");
    assertThat(circle.path("parts").asString()).isEqualTo("motors");
    assertThat(circle.path("fitBefore").asInt()).isEqualTo(3);
    assertThat(circle.path("fitAfter").asInt()).isEqualTo(5);
    assertThat(circle.path("of").asInt()).isEqualTo(8);
    assertThat(circle.path("gained").asDouble()).isEqualTo(90);
    assertThat(circle.path("best").path("milliseconds").asLong()).isEqualTo(2_700_000);
    assertThat(frame.path("additions").get(2).has("best")).isFalse();
  }

  @Test
  void withoutAnAdditionThatHelpsItSaysSo() {
    var none = new FrameAdvice(
        with(ADVICE.frame(), "name", "A\u202Eb"),
        best(null, Ending.PROVEN),
        Optional.empty(),
        List.of(),
        List.of(ADVICE.additions().get(2)));

    assertThat(report(null, null, none).text(200, false))
        .contains(
            "\nA\\u202eb as it is drawn: proven, no build with it keeps every rule and limit.\n",
            "\nNo other hole pattern or bolt circle of this catalogue would add anything.\n")
        .doesNotContain("Each gram");
  }
}
