package pappus.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The bytes of an input, and what the user calls it. */
public final class Source {
  /** More than a catalogue of a hundred thousand parts needs, and less than an array can hold. */
  static final int MOST_BYTES = 512 << 20;

  private static final int LONGEST_LINE = 100_000;

  private final String name;
  private final byte[] bytes;
  private final String sha256;
  private final List<Origin> origins;

  private Source(String name, byte[] bytes) {
    this(name, bytes, sha256(bytes), List.of());
  }

  private Source(String name, byte[] bytes, String sha256, List<Origin> origins) {
    this.name = name;
    this.bytes = bytes;
    this.sha256 = sha256;
    this.origins = origins;
  }

  /**
   * Where a line of what was rewritten comes from.
   *
   * @param file as the user typed it, or an option
   * @param line from 1; 0 if it concerns all of it
   * @param column in that line, characters from 1; 0 where only the line is known
   */
  public record Origin(String file, int line, int column) {}

  /**
   * What is to be read in place of this file, of which the name and the fingerprint stay.
   *
   * @param lines where each comes from
   */
  public Source rewritten(String text, List<Origin> lines) {
    return new Source(name, text.getBytes(StandardCharsets.UTF_8), sha256, List.copyOf(lines));
  }

  /** A problem with what was read, where whoever wrote that finds it. */
  public Problem home(Problem problem) {
    if (problem.line() == 0
        || problem.line() > origins.size()
        || !problem.file().equals(name)) {
      return problem;
    }
    var from = origins.get(problem.line() - 1);
    return new Problem(from.file(), from.line(), from.column(), problem.text());
  }

  /**
   * Reads a file.
   *
   * @throws InputException if it is missing, a folder, too large or cannot be read
   */
  public static Source read(Path file) {
    var problems = new Problems();
    var source = find(file, problems);
    problems.throwIfAny();
    return source.orElseThrow();
  }

  /** As {@link #read}, but adds to the problems instead of throwing. */
  public static Optional<Source> find(Path file, Problems problems) {
    var name = file.toString();
    if (Files.isDirectory(file)) {
      problems.add(
          InputException.Kind.MISSING, Problem.ofFile(name, "must be a file, but is a folder."));
      return Optional.empty();
    }
    try (var stream = Files.newInputStream(file)) {
      if (Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
        return Optional.of(new Source(name, stream.readAllBytes()));
      }
      return Optional.of(readAll(name, stream));
    } catch (NoSuchFileException e) {
      problems.add(
          InputException.Kind.MISSING, Problem.ofFile(name, "must be a file, but is missing."));
    } catch (IOException e) {
      problems.add(
          InputException.Kind.UNREADABLE,
          Problem.ofFile(name, "must be readable, but cannot be read."));
    } catch (InputException e) {
      problems.addAll(e.problems());
    }
    return Optional.empty();
  }

  /** As above; - reads standard input. */
  public static Optional<Source> find(Path file, InputStream standardInput, Problems problems) {
    return file.toString().equals("-")
        ? Optional.of(read("-", standardInput))
        : find(file, problems);
  }

  /**
   * Reads a stream to its end, such as standard input; its name is what the user typed.
   *
   * @throws InputException if it is too large or cannot be read
   */
  public static Source read(String name, InputStream stream) {
    try {
      return readAll(name, stream);
    } catch (IOException e) {
      throw new InputException(
          InputException.Kind.UNREADABLE,
          List.of(Problem.ofFile(name, "must be readable, but cannot be read.")));
    }
  }

  /** Names of the files in a folder, sorted; what is wrong with it is added to the problems. */
  public static Optional<List<String>> namesIn(Path folder, Problems problems) {
    var name = folder.toString();
    try (var files = Files.list(folder)) {
      return Optional.of(
          files.map(file -> file.getFileName().toString()).sorted().toList());
    } catch (NotDirectoryException e) {
      problems.add(
          InputException.Kind.MISSING, Problem.ofFile(name, "must be a folder, but is a file."));
    } catch (NoSuchFileException e) {
      problems.add(
          InputException.Kind.MISSING, Problem.ofFile(name, "must be a folder, but is missing."));
    } catch (IOException | UncheckedIOException e) {
      problems.add(
          InputException.Kind.UNREADABLE,
          Problem.ofFile(name, "must be readable, but cannot be read."));
    }
    return Optional.empty();
  }

  /** A source of bytes at hand. */
  public static Source of(String name, byte[] bytes) {
    return new Source(name, bytes.clone());
  }

  private static Source readAll(String name, InputStream stream) throws IOException {
    // A device or a pipe may never end.
    var bytes = stream.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw InputException.badData(Problem.ofFile(name, "must be at most 512 MiB, but is larger."));
    }
    return new Source(name, bytes);
  }

  public String name() {
    return name;
  }

  public String sha256() {
    return sha256;
  }

  public Fingerprint fingerprint() {
    return new Fingerprint(name, sha256);
  }

  /** Its bytes as UTF-8. */
  public String text() {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  /** Whether the bytes are UTF-8, which Java and Jackson would patch or guess; else after a problem. */
  public boolean isText(Problems problems) {
    var input = ByteBuffer.wrap(bytes);
    var decoder = StandardCharsets.UTF_8.newDecoder();
    var characters = CharBuffer.allocate(8192);
    while (true) {
      var result = decoder.decode(input, characters, true);
      if (result.isUnderflow()) {
        break;
      }
      if (result.isError()) {
        var offset = input.position();
        problems.add(new Problem(
            name,
            lineAt(offset),
            String.format(
                Locale.ROOT,
                "The file must be text in UTF-8, but has the byte 0x%02X in a wrong place. Maybe it was saved in another encoding.",
                bytes[offset])));
        return false;
      }
      characters.clear();
    }
    for (var i = 0; i < Math.min(4, bytes.length); i++) {
      if (bytes[i] == 0) {
        problems.add(
            new Problem(
                name,
                1,
                "The file must be text in UTF-8, but has a zero byte. Maybe it was saved in another encoding."));
        return false;
      }
    }
    return true;
  }

  /** Not a copy: stays in this package, which does not write to it. */
  public byte[] bytes() {
    return bytes;
  }

  /** A copy of what was read. */
  public byte[] content() {
    return bytes.clone();
  }

  /** Line of a byte, from 1. */
  int lineAt(int offset) {
    var line = 1;
    for (var i = 0; i < Math.min(offset, bytes.length); i++) {
      var feed = bytes[i] == '\n';
      var lonelyReturn = bytes[i] == '\r' && (i + 1 >= bytes.length || bytes[i + 1] != '\n');
      if (feed || lonelyReturn) {
        line++;
      }
    }
    return line;
  }

  /** Who tells columns of places, quickly where they are asked for in their order. */
  public Columns columns() {
    return new Columns();
  }

  /** Tells columns of places. */
  public final class Columns {
    private int last;
    private int lastColumn = 1;

    private Columns() {}

    /** Column of a byte in its line, in characters from 1; 0 in a line too long for anyone to count. */
    public int at(int offset) {
      var end = Math.min(offset, bytes.length);
      var start = end;
      while (start > 0 && bytes[start - 1] != '\n' && bytes[start - 1] != '\r' && start != last) {
        start--;
        if (end - start > LONGEST_LINE) {
          last = end;
          lastColumn = LONGEST_LINE + 1;
          return 0;
        }
      }
      var isCounted = start == last && start > 0;
      var before = new String(bytes, start, end - start, StandardCharsets.UTF_8);
      lastColumn = (isCounted ? lastColumn : 1) + before.codePointCount(0, before.length());
      last = end;
      return lastColumn > LONGEST_LINE ? 0 : lastColumn;
    }
  }

  public static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java platform has SHA-256.", e);
    }
  }
}
