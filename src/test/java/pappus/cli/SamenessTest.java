package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.files.Source;
import pappus.shop.SmallShop;

/** The same question has the same bytes for an answer on any machine; one thing differs at a time. */
@Tag("slow")
class SamenessTest {
  private static final List<List<String>> MACHINES = List.of(
      List.of("-XX:ActiveProcessorCount=1"),
      List.of("-XX:ActiveProcessorCount=8"),
      List.of("-Duser.language=tr", "-Duser.country=TR"),
      List.of("-Duser.language=ar", "-Duser.country=EG", "-Dfile.encoding=ISO-8859-1"),
      List.of("-Duser.language=th", "-Duser.country=TH", "-Duser.variant=TH"),
      List.of("-Duser.timezone=Pacific/Kiritimati"));

  @TempDir
  private Path folder;

  /** What is printed, and hashes of every file that is written. */
  private Map<String, String> answers(String name, List<String> java) throws Exception {
    var work = Files.createDirectories(folder.resolve(name).resolve("work"));
    copy(Path.of("catalog"), work.resolve("catalog"));
    CommandRun.write(work, SmallShop.few(), "");
    var ranking = ToolProcess.run(
        "exec \"$@\" --no-shipped-catalog --catalog parts --out out --report --quiet",
        work,
        java,
        "recommend",
        "marsh.json");
    assertThat(ranking.code()).as(ranking.err()).isEqualTo(ExitCode.OK);
    var check = ToolProcess.run("exec \"$@\"", work, java, "check", "catalog", "--format", "json");
    assertThat(check.code()).as(check.err()).isEqualTo(ExitCode.OK);
    var answers = new TreeMap<>(Map.of("ranking", ranking.out(), "check", check.out()));
    for (var file : List.of("result.json", "report.html", "manifest.json")) {
      answers.put(file, Source.sha256(Files.readAllBytes(work.resolve("out").resolve(file))));
    }
    return answers;
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (var files = Files.list(from)) {
      for (var file : files.toList()) {
        Files.copy(file, to.resolve(String.valueOf(file.getFileName())));
      }
    }
  }

  @Test
  void processorsLanguagesAndTimeZonesChangeNoByte() throws Exception {
    var base = answers("base", List.of("-XX:ActiveProcessorCount=2"));

    for (var i = 0; i < MACHINES.size(); i++) {
      assertThat(answers("machine" + i, MACHINES.get(i)))
          .as(MACHINES.get(i).toString())
          .isEqualTo(base);
    }
  }
}
