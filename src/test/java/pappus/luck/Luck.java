package pappus.luck;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import pappus.assessment.Assessment;
import pappus.assessment.Assessor;
import pappus.assessment.Supply;
import pappus.catalog.Catalog;
import pappus.catalog.Shelf;
import pappus.part.Build;
import pappus.part.Part;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.search.exact.ExactSearch;
import pappus.shop.SmallShop;

/**
 * What winners of searches come to in worlds whose truth is known, by the product's own way: catalogue, search, proof,
 * assessment.
 *
 * @param bias predicted over true flight of the winner, less one
 * @param loss share of the possible flight that the winner's true one falls short of
 * @param knowingBias the same of an estimator that knows the world
 * @param knowingLoss the same of that
 */
public record Luck(
    List<Double> bias, List<Double> loss, List<Double> knowingBias, List<Double> knowingLoss) {
  /** Mean and its standard error. */
  public record Mean(double value, double error) {
    static Mean of(List<Double> values) {
      var mean = values.stream().mapToDouble(value -> value).average().orElseThrow();
      var squares =
          values.stream().mapToDouble(value -> (value - mean) * (value - mean)).sum();
      return new Mean(mean, Math.sqrt(squares / (values.size() - 1) / values.size()));
    }
  }

  /** In worlds of a kind, of seeds from 1. */
  public static Luck in(World.Kind kind, int ofEach, int worlds) {
    var bias = new ArrayList<Double>();
    var loss = new ArrayList<Double>();
    var knowingBias = new ArrayList<Double>();
    var knowingLoss = new ArrayList<Double>();
    for (var seed = 1; seed <= worlds; seed++) {
      var world = new World(kind, ofEach, seed);
      var truth = Run.of(world, thing -> thing.sure(World.Trait::truth));
      var counted = Run.of(world, World.Thing::record);
      var knowing = Run.of(world, thing -> thing.sure(Knowing::of));
      var possible = seconds(truth.winner);
      var flown = truth.seconds(counted.winner.build());
      var known = truth.seconds(knowing.winner.build());
      bias.add(seconds(counted.winner) / flown - 1);
      loss.add(1 - flown / possible);
      knowingBias.add(seconds(knowing.winner) / known - 1);
      knowingLoss.add(1 - known / possible);
    }
    return new Luck(bias, loss, knowingBias, knowingLoss);
  }

  /** Predicted over true flight of the winner, less one, for one who believes every record. */
  static Mean believing(World.Kind kind, int ofEach, int worlds) {
    var bias = new ArrayList<Double>();
    for (var seed = 1; seed <= worlds; seed++) {
      var world = new World(kind, ofEach, seed);
      var truth = Run.of(world, thing -> thing.sure(World.Trait::truth));
      var winner = Run.of(world, thing -> thing.sure(World.Trait::stated)).winner;
      bias.add(seconds(winner) / truth.seconds(winner.build()) - 1);
    }
    return Mean.of(bias);
  }

  private static double seconds(Assessment assessment) {
    return assessment.flight().orElseThrow().endurance().seconds();
  }

  /** One catalogue with the winner of its search. */
  private record Run(Catalog catalog, Assessor assessor, Assessment winner) {
    static Run of(World world, Function<World.Thing, Part> part) {
      var parts = new ArrayList<>(World.rest());
      world.things().forEach(thing -> parts.add(part.apply(thing)));
      var catalog = Catalog.of(parts);
      var assessor = new Supply(catalog, Shelf.EMPTY)
          .assessor(SmallShop.reading(SmallShop.scenarioText("")
              .replace("\"leastThrustToWeight\": 2", "\"leastThrustToWeight\": 1")));
      var found = new ExactSearch(Question.of(catalog, assessor), 1)
          .best(Long.MAX_VALUE, new Incumbents(), done -> {});
      return new Run(catalog, assessor, found.rows().get(0).assessment());
    }

    /** Of the build of the same parts as they are here. */
    double seconds(Build build) {
      var here = Build.empty();
      for (var entry : build.parts().entrySet()) {
        here = here.with(entry.getKey(), catalog.part(entry.getValue().id()).orElseThrow());
      }
      return Luck.seconds(assessor.assess(here));
    }
  }

  /** Mean of the bias. */
  public Mean meanBias() {
    return Mean.of(bias);
  }

  /** Mean of the loss. */
  public Mean meanLoss() {
    return Mean.of(loss);
  }

  /** Mean of what is lost more than by one who knows the world. */
  public Mean meanLostToCaution() {
    var more = new ArrayList<Double>();
    for (var i = 0; i < loss.size(); i++) {
      more.add(loss.get(i) - knowingLoss.get(i));
    }
    return Mean.of(more);
  }
}
