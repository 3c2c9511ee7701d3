package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import tools.jackson.databind.json.JsonMapper;

class FailuresTest {
  @TempDir
  private Path folder;

  private Path work;

  @BeforeEach
  void makeAWorkFolder() throws IOException {
    work = Files.createDirectory(folder.resolve("work"));
  }

  @Command(name = "failing")
  private record Failing(Callable<Integer> what, boolean wantsJson)
      implements Callable<Integer>, JsonAnswer {
    @Override
    public Integer call() throws Exception {
      return what.call();
    }
  }

  private static CommandRun failing(boolean asksForJson, Callable<Integer> what) {
    var out = new StringWriter();
    var err = new StringWriter();
    var code = Failures.reported(new CommandLine(new Failing(what, asksForJson)))
        .setOut(new PrintWriter(out))
        .setErr(new PrintWriter(err, true))
        .execute();
    return new CommandRun(code, out.toString(), err.toString());
  }

  private static int deeper(int by) {
    return by == Integer.MIN_VALUE ? 0 : 1 + deeper(by + 1);
  }

  @Test
  void aStackThatEndsIsOneLineWithAdvice() {
    var run = failing(true, () -> deeper(0));

    assertThat(run.exitCode()).isEqualTo(ExitCode.BUG);
    assertThat(run.errors())
        .containsExactly(
            "The run must do with the stack that a thread has, but needs more. Maybe give it more, as with java -Xss16m -jar pappus.jar, and report what was asked.");
    assertThat(run.json().path("status").asString()).isEqualTo("failed");
    assertThat(run.json().path("problems").path(0).asString())
        .isEqualTo(run.errors().get(0));
  }

  @Test
  void memoryThatEndsInAThreadOfTheSearchIsToldLikeAnyOther() {
    var run = failing(false, () -> {
      throw new IllegalStateException(new OutOfMemoryError("Java heap space"));
    });

    assertThat(run.exitCode()).isEqualTo(ExitCode.BUG);
    assertThat(run.errors()).hasSize(1);
    assertThat(run.err()).startsWith("The run must do with ").contains("-Xmx4g");
    assertThat(run.out()).isEmpty();
  }

  @Test
  void aBugKeepsItsTraceAndStillAnswersAMachine() {
    var run = failing(true, () -> {
      throw new IllegalStateException("odd");
    });
    var error = failing(false, () -> {
      throw new AssertionError("odder");
    });

    assertThat(run.exitCode()).isEqualTo(ExitCode.BUG);
    assertThat(run.errors())
        .startsWith(
            "This is a bug of ours; please report it with what follows.",
            "java.lang.IllegalStateException: odd");
    assertThat(run.json().path("problems"))
        .hasToString("[\"This is a bug of ours; please report it with what follows.\"]");
    assertThat(error.exitCode()).isEqualTo(ExitCode.BUG);
    assertThat(error.err()).contains("java.lang.AssertionError: odder");
  }

  @Test
  void aFileThatFailsIsNamedAndNoClass() {
    var full = failing(true, () -> {
      throw new UncheckedIOException(
          new FileSystemException("out/a.json", null, "No space left on device"));
    });
    var gone = failing(false, () -> {
      throw new NoSuchFileException("out/a.json");
    });
    var unnamed = failing(false, () -> {
      throw new UncheckedIOException(new IOException("Input/output error"));
    });

    assertThat(full.exitCode()).isEqualTo(ExitCode.IO);
    assertThat(full.errors())
        .containsExactly(
            "out/a.json: must be readable and writable, but no space left on device. Maybe make room there, or name another folder.");
    assertThat(full.json().path("status").asString()).isEqualTo("failed");
    assertThat(gone.errors())
        .containsExactly(
            "out/a.json: must be readable and writable, but is missing. Maybe make room there, or name another folder.");
    assertThat(unnamed.errors()).containsExactly("Reading or writing failed: input/output error.");
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  @Tag("slow")
  void memoryThatEndsIsOneLineWithAdviceAndOneDocument() throws Exception {
    // A file with a hole: as long as it says, and next to nothing on the disk.
    try (var file = new RandomAccessFile(work.resolve("big.json").toFile(), "rw")) {
      file.setLength(400 << 20);
    }
    var run = ToolProcess.run(
        "exec \"$@\"", work, List.of("-Xmx48m"), "recommend", "big.json", "--format", "json");

    assertThat(run.code()).isEqualTo(ExitCode.BUG);
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).startsWith("The run must do with ");
    var document = JsonMapper.shared().readTree(run.out());
    assertThat(document.path("status").asString()).isEqualTo("failed");
    assertThat(work).isDirectoryNotContaining("glob:**/out");
  }

  @ParameterizedTest
  @EnabledOnOs(OS.LINUX)
  @Tag("slow")
  @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
      "$@" >/dev/full ~ help ~ 74 ~ Standard output must be writable, but no space left on device.
      exec "$@" >&- ~ help ~ 74 ~ Standard output must be writable, but bad file descriptor.
      exec "$@" >&- ~ check nowhere.json ~ 66 ~ nowhere.json: must be a file, but is missing.
      { "$@"; echo "ended with $?" >&2; } | true ~ help ~ 0 ~ ended with 0
      "$@" 2>/dev/full ~ check nowhere.json ~ 66 ~
      """)
  void outputThatIsLostIsAnErrorOfItsOwn(String script, String words, int code, String err)
      throws Exception {
    var run = ToolProcess.run(script.replace("|", "|"), work, List.of(), words.split(" "));

    assertThat(run.code()).isEqualTo(code);
    assertThat(run.err()).contains(err == null ? "" : err);
    assertThat(run.err()).doesNotContain("Exception");
  }
}
