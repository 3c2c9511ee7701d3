package pappus.cli;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Prints a page into a PDF by a browser that is installed.
 *
 * <p>Why: src/site/markdown/decisions.md#a-pdf-bears-the-date-of-the-offer
 */
final class PdfPrinter {
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");

  private static final long MOST_SECONDS = 60;

  private static final Pattern PRINTED =
      Pattern.compile("(/(?:CreationDate|ModDate) \\(D:)[0-9]{14}");

  private PdfPrinter() {}

  /** A browser on the path, if there is one. */
  static Optional<Path> browser(String path) {
    return BROWSERS.stream()
        .flatMap(name -> Stream.of(path.split(File.pathSeparator))
            .filter(folder -> !folder.isEmpty())
            .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .filter(Files::isRegularFile)
        .findFirst();
  }

  /**
   * The page as a PDF.
   *
   * @param browser that prints it
   * @param date that it bears in the place of the time of printing, so that the same page gives the same bytes
   * @return empty if the browser fails, or takes more than a minute
   */
  static Optional<byte[]> print(Path browser, String page, LocalDate date) {
    try {
      var folder = Files.createTempDirectory("pappus");
      try {
        return print(browser, page, folder).map(pdf -> dated(pdf, date));
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Digits for as many digits: nothing else in the file moves. */
  private static byte[] dated(byte[] pdf, LocalDate date) {
    var day = date.toString().replace("-", "") + "000000";
    return PRINTED
        .matcher(new String(pdf, ISO_8859_1))
        .replaceAll(found -> found.group(1) + day)
        .getBytes(ISO_8859_1);
  }

  private static Optional<byte[]> print(Path browser, String page, Path folder) throws IOException {
    var html = Files.writeString(folder.resolve("page.html"), page);
    var pdf = folder.resolve("page.pdf");
    var command = new ArrayList<>(List.of(
        browser.toString(),
        "--headless",
        "--disable-gpu",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--no-pdf-header-footer",
        "--user-data-dir=" + folder.resolve("profile"),
        "--print-to-pdf=" + pdf));
    if (System.getProperty("user.name", "").equals("root")) {
      // Browsers refuse to run as root with their sandbox; the page is our own and loads nothing.
      command.add("--no-sandbox");
    }
    command.add(html.toUri().toString());
    Process process;
    try {
      process = new ProcessBuilder(command)
          .redirectErrorStream(true)
          .redirectOutput(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException notForThisMachine) {
      return Optional.empty();
    }
    try {
      if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
        return Optional.empty();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
    return Files.isRegularFile(pdf) && Files.size(pdf) > 0
        ? Optional.of(Files.readAllBytes(pdf))
        : Optional.empty();
  }

  /** What the browser still holds is left to the system's own cleaning. */
  private static void delete(Path folder) throws IOException {
    try (var paths = Files.walk(folder)) {
      for (var path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (UncheckedIOException | DirectoryNotEmptyException goneOrHeld) {
      // A browser that was killed may still write.
    }
  }
}
