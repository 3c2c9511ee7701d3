package pappus;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pappus.catalog.CatalogFolder;
import pappus.ranking.Finder;

/** The entry for those who use the tool as a library. */
final class PappusTest {
  private static final Path SIGNATURE = Path.of("src/test/resources/pappus/signature.txt");
  private static final Path SCENARIO = Path.of("scenarios/club-evening.json");

  /** What others compile against changes only on purpose: run with {@code -Dpappus.writeSignature=true}. */
  @Test
  void signatureIsTheCommittedOne() throws IOException {
    var signature = Stream.of(Pappus.class, Inputs.class)
        .flatMap(type -> Stream.concat(Stream.of(type.toGenericString()), methods(type)))
        .collect(Collectors.joining("\n", "", "\n"));
    if (Boolean.getBoolean("pappus.writeSignature")) {
      Files.writeString(SIGNATURE, signature);
    }
    assertThat(signature).isEqualTo(Files.readString(SIGNATURE));
  }

  private static Stream<String> methods(Class<?> type) {
    return Arrays.stream(type.getDeclaredMethods())
        .filter(method -> Modifier.isPublic(method.getModifiers()))
        .map(Method::toGenericString)
        .sorted()
        .map(line -> "  " + line);
  }

  @Test
  @Tag("slow")
  void readsRanksJudgesAndSweeps() {
    var inputs = Pappus.read(SCENARIO, List.of(CatalogFolder.shipped()));
    var finder = new Finder(Finder.Way.AUTO, Finder.EFFORT, Finder.FEWER_MOVES, said -> {});

    var best = Pappus.recommend(inputs, 1, finder).candidates().get(0).assessment();
    assertThat(Pappus.assess(inputs, best.build()).objective()).isEqualTo(best.objective());

    var cap = inputs.scenario().massCap().grams();
    var axes = Pappus.axes(inputs, List.of("mass-cap=%s,%s".formatted(cap - 10, cap)));
    var steps = Pappus.sweep(inputs, axes, finder).steps();
    assertThat(steps).hasSize(2);
    assertThat(steps.get(1).best().build().orElseThrow().objective()).isEqualTo(best.objective());
  }
}
