package pappus.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The tool in a process of its own, for what befalls processes. */
final class ToolProcess {
  private final Path out;
  private final Path err;
  private final Process process;

  private ToolProcess(Path out, Path err, Process process) {
    this.out = out;
    this.err = err;
    this.process = process;
  }

  /** What the shell sees of one that has ended. */
  record Ended(int code, String out, String err) {}

  /** The words that start it, in any folder. */
  static List<String> command(List<String> java, List<String> args) {
    var command = new ArrayList<>(
        List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(java);
    var classes = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(entry -> Path.of(entry).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
    command.addAll(List.of("-cp", classes, Main.class.getName()));
    command.addAll(args);
    return command;
  }

  /**
   * Starts one.
   *
   * @param script of a shell, in which {@code "$@"} is the tool with its arguments
   * @param work folder in which it runs; what it prints goes beside it
   */
  static ToolProcess start(String script, Path work, List<String> java, List<String> args)
      throws IOException {
    var words = new ArrayList<>(List.of("sh", "-c", script, "sh"));
    words.addAll(command(java, args));
    var out = Files.createTempFile(work.toAbsolutePath().getParent(), "printed", ".out");
    var err = Files.createTempFile(work.toAbsolutePath().getParent(), "printed", ".err");
    var builder = new ProcessBuilder(words)
        .directory(work.toFile())
        .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
        .redirectOutput(out.toFile())
        .redirectError(err.toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return new ToolProcess(out, err, builder.start());
  }

  static Ended run(String script, Path work, List<String> java, String... args)
      throws IOException, InterruptedException {
    return start(script, work, java, List.of(args)).end();
  }

  Process process() {
    return process;
  }

  /** Waits for its end. */
  Ended end() throws IOException, InterruptedException {
    assertThat(process.waitFor(10, TimeUnit.MINUTES)).isTrue();
    return new Ended(
        process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }
}
