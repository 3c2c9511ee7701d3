package pappus.search.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.assessment.Assessment;
import pappus.files.json.Altered;
import pappus.files.json.JsonText;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Property;
import pappus.part.Role;
import pappus.scenario.Condition;
import pappus.scenario.Scenario;
import pappus.scenario.Where;
import pappus.search.Incumbents;
import pappus.search.Question;
import pappus.shop.SmallShop;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Wishes by property against trying every build and looking what its parts' records say. */
class WishedSearchTest {
  private static final int CATALOGUES = 200;

  @Tag("slow")
  @Test
  void ranksTwoHundredCataloguesAsTryingEveryBuildDoes() {
    var feasible = 0;
    var fewer = 0;
    var builtIn = 0;
    for (var seed = 0; seed < CATALOGUES; seed++) {
      var builds = RandomQuestions.feasible(seed);
      var where = wishes(builds, RandomQuestions.of(seed), new Random(1000 + seed));
      var left = new Incumbents();
      var kept = builds.stream().filter(build -> meets(build.build(), where)).toList();
      kept.forEach(left::offer);
      feasible += kept.isEmpty() ? 0 : 1;
      fewer += kept.size() < builds.size() ? 1 : 0;
      builtIn += where.wishes().stream()
              .anyMatch(wish -> kept.stream().anyMatch(build -> isBuiltIn(build, wish.role())))
          ? 1
          : 0;
      var question = asking(seed, where);

      assertThat(ExactSearchTest.exact(question, 2))
          .as("catalogue %s where %s", seed, where)
          .isEqualTo(ExactSearchTest.enumerated(question, left));
    }
    assertThat(feasible).isGreaterThanOrEqualTo(CATALOGUES / 4);
    assertThat(fewer).isGreaterThanOrEqualTo(CATALOGUES / 4);
    assertThat(builtIn).isPositive();
  }

  private static Question asking(int seed, Where where) {
    var catalog = RandomQuestions.catalog(seed);
    var scenario = Altered.record(
        Scenario.class, RandomQuestions.of(seed).assessor().scenario(), Map.of("where", where));
    return Question.of(catalog, SmallShop.assessor(catalog, scenario));
  }

  /** One to three wishes that some part fulfils, often one of a build that goes together. */
  private static Where wishes(List<Assessment> builds, Question question, Random random) {
    var roles = List.of(Role.values());
    var byRole = new EnumMap<Role, Map<String, Condition>>(Role.class);
    for (var count = 1 + random.nextInt(3); count > 0; ) {
      var role = roles.get(random.nextInt(roles.size()));
      var filling = builds.isEmpty()
          ? any(question, role, random)
          : filling(builds.get(random.nextInt(builds.size())).build(), role);
      if (filling.isEmpty()) {
        continue;
      }
      var part = filling.get();
      var properties = List.copyOf(Property.of(role).values());
      var property = properties.get(random.nextInt(properties.size()));
      var said = said(part, role, property.path());
      if (!said.isEmpty()) {
        var value = said.get(random.nextInt(said.size()));
        byRole
            .computeIfAbsent(role, fresh -> new LinkedHashMap<>())
            .put(property.path(), condition(value, property, random));
      }
      count--;
    }
    return new Where(byRole);
  }

  private static Condition condition(Object value, Property property, Random random) {
    return switch (random.nextInt(property.isNumber() ? 5 : 3)) {
      case 0 -> new Condition(value);
      case 1 -> new Condition(List.of(value));
      case 2 -> new Condition(Map.of("noneOf", List.of(value)));
      case 3 -> new Condition(Map.of("atLeast", value));
      default -> new Condition(Map.of("atMost", value));
    };
  }

  private static Optional<Part> any(Question question, Role role, Random random) {
    var options = question.options(role);
    return options.isEmpty()
        ? Optional.empty()
        : Optional.of(options.get(random.nextInt(options.size())));
  }

  private static boolean isBuiltIn(Assessment build, Role role) {
    return build.build().part(role).isEmpty() && filling(build.build(), role).isPresent();
  }

  /** Whatever fills a role of a build. */
  private static Optional<Part> filling(Build build, Role role) {
    if (build.part(role).isPresent()) {
      return build.part(role);
    }
    return build.parts().values().stream()
        .filter(part -> part.fills().contains(role))
        .findFirst();
  }

  private static boolean meets(Build build, Where where) {
    return where.wishes().stream().allMatch(wish -> {
      var part = filling(build, wish.role());
      return part.isEmpty()
          || meets(said(part.get(), wish.role(), wish.field()), wish.condition().written());
    });
  }

  private static boolean meets(List<Object> said, Object written) {
    if (said.isEmpty()) {
      return false;
    }
    if (!(written instanceof Map<?, ?> bounds)) {
      var wanted = written instanceof List<?> list ? list : List.of(written);
      return said.stream().anyMatch(wanted::contains);
    }
    if (bounds.get("noneOf") instanceof List<?> none) {
      return said.stream().noneMatch(none::contains);
    }
    var isLeast = bounds.get("atLeast") != null;
    var bound = (double) Objects.requireNonNull(bounds.get(isLeast ? "atLeast" : "atMost"));
    return said.stream()
        .anyMatch(value -> isLeast ? (double) value >= bound : (double) value <= bound);
  }

  /** What a record says in its file, of what is built into it too. */
  private static List<Object> said(Part part, Role role, String path) {
    var within = part.fills().indexOf(role) < 1 || path.equals("maker")
        ? ""
        : switch (role) {
          case RECEIVER -> "receiver.";
          case TRANSMITTER -> "transmitter.";
          case CAMERA -> "camera.";
          case RADIO_ANTENNA ->
            part.fills().contains(Role.BOARD) ? "receiver.antenna." : "antenna.";
          case VIDEO_ANTENNA -> "antenna.";
          default -> "none.";
        };
    var nodes = List.of(JsonMapper.shared().readTree(JsonText.of(part)));
    for (var name : (within + path).replace("[]", "").split("\\.", -1)) {
      var inner = new ArrayList<JsonNode>();
      for (var node : nodes) {
        var next = node.path(name);
        if (next.isArray()) {
          next.forEach(inner::add);
        } else if (!next.isMissingNode()) {
          inner.add(next);
        }
      }
      nodes = List.copyOf(inner);
    }
    return nodes.stream().map(WishedSearchTest::plain).toList();
  }

  private static Object plain(JsonNode node) {
    return node.isNumber()
        ? (Object) node.doubleValue()
        : node.isBoolean() ? (Object) node.booleanValue() : node.asString();
  }
}
