package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.shop.SmallShop;
import tools.jackson.databind.json.JsonMapper;

/** Catalogues that leave a search nothing to hold on to, in little memory. */
@Tag("slow")
class HalfAGigabyteTest {
  private static final List<String> MEMORY = List.of("-Xmx512m");

  @TempDir
  private Path folder;

  static Stream<Arguments> catalogues() {
    IntFunction<Map<String, Object>> same = i -> Map.of("id", "same-" + i);
    IntFunction<Map<String, Object>> other =
        i -> Map.of("id", "other-" + i, "mass.grams", 4 + i * 0.002);
    return Stream.of(
        Arguments.of("the same", same, 250, ExitCode.OK),
        Arguments.of("masses varied only", other, 250, ExitCode.OK),
        Arguments.of("nothing binds", other, 25_000, ExitCode.OK),
        Arguments.of("nothing is feasible", other, 20, ExitCode.NO));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("catalogues")
  void twoThousandMotorsMore(
      String name, IntFunction<Map<String, Object>> motors, int grams, int code) throws Exception {
    var work = Files.createDirectory(folder.resolve("work"));
    CommandRun.write(work, SmallShop.withMotors(2000, motors), "");
    var scenario = work.resolve("marsh.json");
    Files.writeString(
        scenario, Files.readString(scenario).replace("\"grams\": 250", "\"grams\": " + grams));

    var ran = ToolProcess.run(
        "exec \"$@\" --no-shipped-catalog --catalog parts --out out --format json",
        work,
        MEMORY,
        "recommend",
        "marsh.json");

    assertThat(ran.code()).as(ran.err()).isEqualTo(code);
    var answer = JsonMapper.shared().readTree(ran.out());
    assertThat(answer.path("standing").path("endedBy").asString()).isEqualTo("proven");
  }
}
