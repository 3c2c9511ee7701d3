package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.scenario.Flight.Style;
import pappus.scenario.Scenario;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The shipped scenarios read as scenarios and speak of parts there are. */
final class ScenarioFilesTest {
  private static final SortedMap<String, Scenario> SCENARIOS = read();

  private static SortedMap<String, Scenario> read() {
    var scenarios = new TreeMap<String, Scenario>();
    try (var files = Files.list(Path.of("scenarios"))) {
      for (var file : files.filter(Files::isRegularFile).toList()) {
        scenarios.put(
            String.valueOf(file.getFileName()),
            CatalogueText.MAPPER.treeToValue(
                withoutSchema(Files.readString(file, StandardCharsets.UTF_8)), Scenario.class));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return scenarios;
  }

  /** The schema is for editors; a relative path to one there is not would help none. */
  private static JsonNode withoutSchema(String text) {
    var node = (ObjectNode) CatalogueText.MAPPER.readTree(text);
    var schema = node.remove("$schema").asString();
    assertThat(Path.of("scenarios").resolve(schema).normalize()).isRegularFile();
    return node;
  }

  @Test
  void theTypicalJobStandsFirst() {
    assertThat(SCENARIOS).hasSize(12);
    var first = SCENARIOS.values().iterator().next();
    assertThat(first.name()).isEqualTo("bird-survey");
    assertThat(first.massCap().largestMilligrams()).isEqualTo(249_999);
    assertThat(first.leastThrustToWeight()).isEqualTo(2.2);
  }

  @Test
  void everyFileIsNamedAfterItsScenario() {
    assertThat(SCENARIOS).allSatisfy((file, scenario) -> {
      assertThat(file).isEqualTo(scenario.name() + ".json");
      assertThat(scenario.budget()).isNotNull();
    });
  }

  @Test
  void everyPartTheySpeakOfIsInTheCatalogue() {
    var ids = new TreeSet<String>();
    for (var kind : Kind.values()) {
      CommittedCatalogueTest.committed(kind).stream().map(Part::id).forEach(ids::add);
    }

    assertThat(SCENARIOS.values()).allSatisfy(scenario -> {
      var choice = scenario.choice();
      assertThat(ids)
          .containsAll(choice.fixedIds())
          .containsAll(choice.excludedIds())
          .containsAll(choice.ownedIds())
          .containsAll(choice.allowedParts().stream()
              .flatMap(one -> one.parts().stream())
              .toList())
          .containsAll(scenario.waived().stream()
              .flatMap(waiver -> waiver.parts().stream())
              .toList());
    });
  }

  @Test
  void pilotsSpeakFamiliesThereAre() {
    var video = List.of("analogue", Video.LUMFRET, Video.OSTRALINE, Video.VELLIMAR);
    var radio = List.of(Radio.THRENNEL, Radio.CALLOWHIT, Radio.MURRELODE, Radio.SANDRIGAL);

    assertThat(SCENARIOS.values()).allSatisfy(scenario -> {
      assertThat(Objects.requireNonNull(scenario.pilotOrAny().video()).names()).isSubsetOf(video);
      assertThat(Objects.requireNonNull(scenario.pilotOrAny().radio()).names()).isSubsetOf(radio);
    });
  }

  @Test
  void betweenThemTheyUseEveryKindOfWish() {
    assertThat(SCENARIOS.values())
        .anyMatch(scenario -> !scenario.choice().excludedIds().isEmpty())
        .anyMatch(scenario -> !scenario.choice().ownedIds().isEmpty())
        .anyMatch(scenario -> !scenario.choice().allowedParts().isEmpty())
        .anyMatch(scenario -> !scenario.waived().isEmpty())
        .anyMatch(scenario -> scenario.payloadGrams() > 0)
        .anyMatch(scenario -> scenario.milliwattsOrLowest() > 0)
        .anyMatch(scenario -> scenario.flight().style() == Style.HOVER)
        .anyMatch(scenario -> scenario.flight().style() == Style.PROFILE)
        .anyMatch(scenario -> scenario.flight().windOrCalm() > 0)
        .anyMatch(scenario -> scenario.isForRange())
        .anyMatch(scenario -> scenario.choosesPower())
        .anyMatch(scenario -> scenario.air().altitudeMetres() == 2500);
  }
}
