package pappus.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The launcher in processes of its own, with a small program in place of the tool, which tells what reaches it. An
 * archive of classes is complete or not there, and whatever becomes of it is not seen in a run.
 */
@Tag("slow")
@EnabledOnOs(OS.LINUX)
class LauncherTest {
  private static final String PROGRAM = """
      package pappus.ranking;

      import java.nio.file.Files;
      import java.nio.file.Path;

      public class Ranker {
        public static void main(String[] args) throws Exception {
          System.out.println(String.join(",", args));
          System.err.println("to the user");
          for (var arg : args) {
            switch (arg) {
              case "-" -> System.in.transferTo(System.out);
              case "no" -> System.exit(1);
              case "maps" -> System.out.println(
                  Files.readString(Path.of("/proc/self/maps")).contains("/pappus-" + Runtime.version().feature()));
              case "wait" -> {
                Runtime.getRuntime().addShutdownHook(new Thread(() -> System.out.println("best so far")));
                System.out.println("waiting");
                Thread.sleep(100_000);
              }
              default -> {}
            }
          }
        }
      }
      """;

  @TempDir
  private static Path workshop;

  @TempDir
  private Path folder;

  private Path home;
  private Path work;

  private record Ran(int code, String out, String err) {}

  @BeforeAll
  static void makeTheProgram() throws IOException {
    var source = Files.writeString(workshop.resolve("Ranker.java"), PROGRAM);
    var compiler = ToolProvider.getSystemJavaCompiler();
    assertThat(compiler.run(null, null, null, "-d", workshop.toString(), source.toString()))
        .isZero();
    var manifest = new Manifest();
    manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
    manifest.getMainAttributes().put(Attributes.Name.MAIN_CLASS, "pappus.ranking.Ranker");
    try (var jar =
        new JarOutputStream(Files.newOutputStream(workshop.resolve("pappus.jar")), manifest)) {
      jar.putNextEntry(new JarEntry("pappus/ranking/Ranker.class"));
      Files.copy(workshop.resolve("pappus/ranking/Ranker.class"), jar);
    }
  }

  @BeforeEach
  void install() throws IOException {
    home = Files.createDirectory(folder.resolve("home"));
    work = Files.createDirectory(folder.resolve("work"));
    install(home);
  }

  @Test
  void theFirstRunMakesAnArchiveThatTheNextUses() throws Exception {
    var first = run("recommend", "maps");
    var archive = archive();
    var second = run("recommend", "maps");

    assertThat(first).isEqualTo(new Ran(0, "recommend,maps\nfalse\n", "to the user\n"));
    assertThat(second).isEqualTo(new Ran(0, "recommend,maps\ntrue\n", "to the user\n"));
    assertThat(archive.getFileName().toString()).endsWith("_" + Files.size(archive) + ".jsa");
    assertThat(names(home)).hasSize(3);
    assertThat(names(work)).isEmpty();
  }

  @Test
  void aTruncatedArchiveIsNotUsedAndMadeAnew() throws Exception {
    run("recommend");
    var archive = archive();
    var length = Files.size(archive);
    archive.toFile().setWritable(true);
    try (var channel = FileChannel.open(archive, StandardOpenOption.WRITE)) {
      channel.truncate(length / 3);
    }

    assertThat(run("check", "maps")).isEqualTo(new Ran(0, "check,maps\nfalse\n", "to the user\n"));
    assertThat(run("recommend")).isEqualTo(new Ran(0, "recommend\n", "to the user\n"));
    await(() -> run("check", "maps").out().contains("true"));
    assertThat(names(home)).hasSize(3);
    assertThat(names(work)).isEmpty();
  }

  @Test
  void archivesOfAnotherJarOrJavaAreRemoved() throws Exception {
    run("recommend");
    var old = archive();
    Files.writeString(home.resolve("pappus-11-1-2.jsa"), "another Java");
    // An older jar, as unpacked from a release that was.
    Files.setLastModifiedTime(home.resolve("pappus.jar"), FileTime.fromMillis(1_000_000_000_000L));

    assertThat(run("check", "maps").out()).contains("false");
    run("recommend");
    await(() -> run("check", "maps").out().contains("true"));

    assertThat(names(home)).hasSize(3);
    assertThat(Files.getLastModifiedTime(archive()).toMillis()).isEqualTo(1_000_000_000_000L);
    assertThat(old.getParent()).isEqualTo(home);
  }

  @Test
  void whatAKilledRunLeftIsRemovedByALaterOneButNotWhatOneIsWriting() throws Exception {
    var killed = start(home, "recommend", "wait");
    await(() -> text(folder.resolve("out")).contains("waiting"));
    var maker = killed.children().findFirst().orElseThrow();
    assertThat(run("check").code()).isZero();
    assertThat(names(home)).hasSize(3);

    maker.destroyForcibly();
    killed.destroyForcibly().waitFor();
    await(() -> !maker.isAlive());
    Files.writeString(home.resolve("pappus-17-1-2.jsa.99999999"), "left by an older launcher");
    assertThat(run("check").code()).isZero();

    assertThat(names(home)).containsExactly("pappus", "pappus.jar");
  }

  @ParameterizedTest
  @CsvSource({"INT, 130", "TERM, 143", "HUP, 129"})
  void signalsReachJavaWhileTheArchiveIsStillToBeMade(String signal, int code) throws Exception {
    var ignored = Files.readAllLines(Path.of("/proc/self/status")).stream()
        .filter(line -> line.startsWith("SigIgn:"))
        .mapToLong(line -> Long.parseLong(line.substring(7).strip(), 16))
        .sum();
    assumeTrue((ignored & 0x4003) == 0, "skipped: the tests themselves run with signals ignored");
    var process = start(home, "recommend", "wait");
    await(() -> text(folder.resolve("out")).contains("waiting"));

    new ProcessBuilder("sh", "-c", "kill -" + signal + " " + process.pid())
        .start()
        .waitFor();

    assertThat(process.waitFor()).isEqualTo(code);
    assertThat(text(folder.resolve("out"))).endsWith("best so far\n");
    assertThat(text(folder.resolve("err"))).isEqualTo("to the user\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "with space",
        "with:colon",
        "-dash",
        "new\nline",
        "new line at the end\n",
        "*[?]'\"$x"
      })
  void anyPathWorks(String name) throws Exception {
    var strange = Files.createDirectory(folder.resolve(name));
    install(strange);

    var ran = finish(start(strange, "recommend", "-"));
    var relative = finish(start(List.of("./" + name + "/pappus", "recommend", "no"), folder));
    var linked = Files.createSymbolicLink(
        work.resolve("-link"), folder.getFileSystem().getPath("..", name, "pappus"));
    var viaLink =
        finish(start(List.of("sh", "--", linked.getFileName().toString(), "check"), work));

    assertThat(ran).isEqualTo(new Ran(0, "recommend,-\ntyped\n", "to the user\n"));
    assertThat(relative).isEqualTo(new Ran(1, "recommend,no\n", "to the user\n"));
    assertThat(viaLink).isEqualTo(new Ran(0, "check\n", "to the user\n"));
    if (!name.contains(":")) {
      archive(strange);
      assertThat(finish(start(strange, "check", "maps")).out()).contains("true");
    }
    assertThat(names(strange)).contains("pappus", "pappus.jar");
  }

  @Test
  void whereFilesMayNotGrowNothingChanges() throws Exception {
    var script = "ulimit -f 64; exec \"$0\" \"$@\"";

    var ran = finish(start(List.of("sh", "-c", script, home + "/pappus", "recommend", "no"), work));

    assertThat(ran).isEqualTo(new Ran(1, "recommend,no\n", "to the user\n"));
    assertThat(names(home)).containsExactly("pappus", "pappus.jar");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"size=64k", "size=1m", "size=64m,nr_inodes=4", "size=64m,nr_inodes=5", "ro"})
  void whereThereIsNoRoomNothingChanges(String limit) throws Exception {
    var unshare = new ProcessBuilder("unshare", "-m", "true").redirectErrorStream(true);
    assumeTrue(permits(unshare), "skipped: no file system may be mounted here");
    var script = """
        mount -t tmpfs -o "${2#ro}" tmpfs "$1/room" && cp -p "$1/home/pappus" "$1/home/pappus.jar" "$1/room" || exit 99
        [ "$2" != ro ] || mount -o remount,ro "$1/room"
        cd "$1/work"
        "$1/room/pappus" recommend no
        code=$?
        while ls -d "$1"/room/*.jsa.* >/dev/null 2>&1; do sleep 1; done
        ls "$1/room"
        exit $code
        """;
    Files.createDirectory(folder.resolve("room"));

    var ran = finish(
        start(List.of("unshare", "-m", "sh", "-c", script, "sh", folder.toString(), limit), work));

    assertThat(ran).isEqualTo(new Ran(1, "recommend,no\npappus\npappus.jar\n", "to the user\n"));
    assertThat(names(work)).isEmpty();
  }

  private static boolean permits(ProcessBuilder command) throws InterruptedException {
    try {
      return command.start().waitFor() == 0;
    } catch (IOException notInstalled) {
      return false;
    }
  }

  private static void install(Path where) throws IOException {
    Files.copy(
        Path.of("src/main/launcher/pappus"),
        where.resolve("pappus"),
        StandardCopyOption.COPY_ATTRIBUTES);
    where.resolve("pappus").toFile().setExecutable(true);
    Files.copy(
        workshop.resolve("pappus.jar"),
        where.resolve("pappus.jar"),
        StandardCopyOption.COPY_ATTRIBUTES);
  }

  private Path archive() throws InterruptedException {
    return archive(home);
  }

  /** The one archive, once it is there and nothing is written any more. */
  private static Path archive(Path where) throws InterruptedException {
    await(() -> names(where).size() == 3 && names(where).get(1).endsWith(".jsa"));
    return where.resolve(names(where).get(1));
  }

  private Ran run(String... arguments) throws IOException, InterruptedException {
    return finish(start(home, arguments));
  }

  private Process start(Path where, String... arguments) throws IOException {
    var command = new ArrayList<>(List.of(where.resolve("pappus").toString()));
    command.addAll(List.of(arguments));
    return start(command, work);
  }

  private Process start(List<String> command, Path where) throws IOException {
    var builder = new ProcessBuilder(command)
        .directory(where.toFile())
        .redirectInput(Files.writeString(folder.resolve("in"), "typed\n").toFile())
        .redirectOutput(folder.resolve("out").toFile())
        .redirectError(folder.resolve("err").toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder.start();
  }

  private Ran finish(Process process) throws InterruptedException {
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return new Ran(process.exitValue(), text(folder.resolve("out")), text(folder.resolve("err")));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file, UTF_8);
    } catch (IOException e) {
      return "";
    }
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private interface Condition {
    boolean holds() throws IOException, InterruptedException;
  }

  private static void await(Condition condition) throws InterruptedException {
    for (var end = System.nanoTime() + TimeUnit.MINUTES.toNanos(2); System.nanoTime() < end; ) {
      try {
        if (condition.holds()) {
          return;
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      Thread.sleep(100);
    }
    throw new AssertionError("waited in vain");
  }
}
