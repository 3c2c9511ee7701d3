package pappus.catalog;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * How long a catalogue of a hundred thousand parts takes to load in a fresh Java process: run once
 * with a folder to write it, again to read it.
 */
final class LoadTime {
  private static final int MOTORS = 70_000;
  private static final int STRAPS = 30_000;

  private LoadTime() {}

  public static void main(String[] args) throws IOException {
    var folder = Path.of(args[0]);
    if (!Files.exists(folder.resolve("motors.json"))) {
      write(folder);
      return;
    }
    var begin = System.nanoTime();
    var catalog = CatalogReader.read(List.of(CatalogFolder.of(folder))).catalog();
    var seconds = (System.nanoTime() - begin) / 1e9;
    print(System.out, catalog.size(), seconds);
  }

  private static void print(PrintStream out, int parts, double seconds) {
    out.printf(Locale.ROOT, "%d parts in %.2f s%n", parts, seconds);
  }

  private static void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.writeString(
        folder.resolve("motors.json"),
        IntStream.range(0, MOTORS)
            .mapToObj(i -> Examples.motor("motor-" + i))
            .collect(Collectors.joining(",\n", "{\"motors\": [\n", "\n]}\n")));
    Files.writeString(
        folder.resolve("straps.json"),
        IntStream.range(0, STRAPS)
            .mapToObj(i -> Examples.strap("strap-" + i))
            .collect(Collectors.joining(",\n", "{\"straps\": [\n", "\n]}\n")));
  }
}
