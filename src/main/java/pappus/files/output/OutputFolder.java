package pappus.files.output;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import pappus.files.Fingerprint;
import pappus.files.Problem;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.files.json.StrictMapper;
import tools.jackson.core.JacksonException;

/**
 * A folder of results. What it holds of ours is what its manifest lists with an equal hash; only
 * that is replaced, unless force is asked for.
 *
 * <p>Every file is written beside its target and then moved, so that none is ever half written, and
 * nothing is written at all if one of them is refused.
 */
public final class OutputFolder {
  /** Name of the file that lists what of a folder is ours. */
  public static final String MANIFEST = "manifest.json";

  private static final String SIMPLE = "[A-Za-z0-9][A-Za-z0-9._-]*";

  /** What no run still writes: files are made and moved within moments. */
  private static final Duration LEFT_OVER = Duration.ofHours(1);

  private final Path folder;
  private final boolean force;
  private final Mover mover;

  /** Puts a file that is whole in its place. */
  interface Mover {
    void move(Path from, Path to) throws IOException;
  }

  /** What the tool wrote into a folder, by name. */
  private record Manifest(List<Fingerprint> files) {}

  /**
   * @param folder which need not exist
   * @param force whether files of others and edited files are replaced too
   */
  public OutputFolder(Path folder, boolean force) {
    this(folder, force, (from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE));
  }

  /** As above, where a test may have the run end between two files. */
  OutputFolder(Path folder, boolean force, Mover mover) {
    this.folder = folder.normalize();
    this.force = force;
    this.mover = mover;
  }

  /** Where a file of the folder is. */
  public Path file(String name) {
    return folder.resolve(name);
  }

  /** Whether a file of it was written here and then changed by somebody. */
  public boolean isEdited(String name) {
    try {
      var before = known().get(name);
      return before != null
          && Files.isRegularFile(file(name))
          && !Source.sha256(Files.readAllBytes(file(name))).equals(before);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Writes texts into files of these names, all or none.
   *
   * @throws CannotCreateException if the folder cannot be made, or a file of that name is there that
   *     is not ours or was edited since
   * @throws UncheckedIOException if the disk fails; files written before are complete
   */
  public void write(Map<String, String> texts) {
    write(texts, Map.of());
  }

  /**
   * Writes texts, and files that are no text.
   *
   * @throws CannotCreateException as above
   * @throws UncheckedIOException as above
   */
  public void write(Map<String, String> texts, Map<String, byte[]> others) {
    var bytes = new LinkedHashMap<String, byte[]>();
    texts.forEach((name, text) -> bytes.put(simple(name), text.getBytes(UTF_8)));
    others.forEach((name, content) -> bytes.put(simple(name), content));
    try {
      var known = known();
      refuseWhatIsNotOurs(bytes, known);
      bytes.forEach((name, content) -> known.put(name, Source.sha256(content)));
      known.keySet().removeIf(name -> !bytes.containsKey(name) && !isThere(file(name)));
      // Last: a run cut short before it is repeated with the same bytes, which are accepted.
      bytes.put(MANIFEST, manifest(known).getBytes(UTF_8));
      createFolder();
      replace(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String simple(String name) {
    if (!name.matches(SIMPLE) || name.equals(MANIFEST)) {
      throw new IllegalArgumentException(
          "name must be a simple one other than %s, but is %s.".formatted(MANIFEST, name));
    }
    return name;
  }

  /** Hashes by name as the manifest lists them; none if there is no manifest. */
  private Map<String, String> known() throws IOException {
    var known = new TreeMap<String, String>();
    var file = file(MANIFEST);
    if (isThere(file)) {
      var listed = listed(file);
      if (listed.isEmpty() && (!force || Files.isDirectory(file))) {
        throw new CannotCreateException(List.of(Problem.ofFile(
            file.toString(),
            "must be the list of files written here before, but is something else."
                + advice(file))));
      }
      listed
          .orElse(new Manifest(List.of()))
          .files()
          .forEach(each -> known.put(each.name(), each.sha256()));
    }
    // A run that was killed between its files had its manifest ready, or had moved none of them.
    for (var left : leftovers(MANIFEST)) {
      for (var each : listed(left).orElse(new Manifest(List.of())).files()) {
        if (each.name().matches(SIMPLE) && isOneOf(file(each.name()), each.sha256(), "")) {
          known.put(each.name(), each.sha256());
        }
      }
    }
    return known;
  }

  /** What a manifest lists, if it is one. */
  private static Optional<Manifest> listed(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try {
      var bytes = Files.readAllBytes(file);
      return Optional.of(StrictMapper.bind(
          StrictMapper.readerFor(Manifest.class), Manifest.class, bytes, 0, bytes.length));
    } catch (JacksonException notOurs) {
      return Optional.empty();
    }
  }

  /** Files that were made to become one of this name, and did not. */
  private List<Path> leftovers(String name) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    var pattern = Pattern.compile("\\." + Pattern.quote(name) + "\\.[0-9]{1,9}\\.part");
    try (var files = Files.list(folder)) {
      return files
          .filter(file -> pattern.matcher(String.valueOf(file.getFileName())).matches())
          .sorted()
          .toList();
    }
  }

  private void refuseWhatIsNotOurs(Map<String, byte[]> bytes, Map<String, String> known)
      throws IOException {
    var problems = new ArrayList<Problem>();
    for (var entry : bytes.entrySet()) {
      var file = file(entry.getKey());
      if (!isThere(file)) {
        continue;
      }
      var hash = known.get(entry.getKey());
      if (Files.isDirectory(file)) {
        problems.add(Problem.ofFile(file.toString(), "must be a file, but is a folder."));
      } else if (!force && !isOneOf(file, hash, Source.sha256(entry.getValue()))) {
        problems.add(Problem.ofFile(
            file.toString(),
            hash == null
                ? "must not be there yet, but is, and was not written by this tool." + advice(file)
                : "must be as this tool wrote it, but was changed since." + advice(file)));
      }
    }
    if (!problems.isEmpty()) {
      throw new CannotCreateException(problems);
    }
  }

  private static String advice(Path file) {
    return Files.isDirectory(file) ? "" : " Maybe move it away, or replace it with --force.";
  }

  private static boolean isOneOf(Path file, @Nullable String before, String after)
      throws IOException {
    if (!Files.isRegularFile(file)) {
      return false;
    }
    var found = Source.sha256(Files.readAllBytes(file));
    return found.equals(before) || found.equals(after);
  }

  /** A link that leads nowhere is something too. */
  private static boolean isThere(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  private static String manifest(Map<String, String> known) {
    return JsonText.of(new Manifest(known.entrySet().stream()
        .map(entry -> new Fingerprint(entry.getKey(), entry.getValue()))
        .toList()));
  }

  private void createFolder() {
    try {
      Files.createDirectories(folder.toAbsolutePath());
    } catch (IOException e) {
      throw new CannotCreateException(
          List.of(Problem.ofFile(folder.toString(), "must be a folder, but cannot be made one.")));
    }
  }

  private void replace(Map<String, byte[]> bytes) throws IOException {
    var parts = new LinkedHashMap<Path, Path>();
    try {
      for (var entry : bytes.entrySet()) {
        var target = file(entry.getKey());
        try {
          var part = newPart(target);
          parts.put(part, target);
          Files.write(part, entry.getValue());
        } catch (AccessDeniedException e) {
          throw new CannotCreateException(
              List.of(Problem.ofFile(target.toString(), "must be writable, but is not.")));
        } catch (IOException e) {
          throw named(target, e);
        }
      }
      for (var entry : parts.entrySet()) {
        try {
          mover.move(entry.getKey(), entry.getValue());
        } catch (IOException e) {
          throw named(entry.getValue(), e);
        }
      }
      for (var name : bytes.keySet()) {
        removeOld(leftovers(name));
      }
    } finally {
      for (var part : parts.keySet()) {
        Files.deleteIfExists(part);
      }
    }
  }

  /** The system's own message may lack the file, or name one that nobody has asked for. */
  private static FileSystemException named(Path target, IOException e) {
    var reason = e instanceof FileSystemException known ? known.getReason() : e.getMessage();
    var named = new FileSystemException(target.toString(), null, reason);
    named.initCause(e);
    return named;
  }

  private static void removeOld(List<Path> leftovers) throws IOException {
    for (var file : leftovers) {
      if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
          && Files.getLastModifiedTime(file).toInstant().isBefore(Instant.now().minus(LEFT_OVER))) {
        Files.deleteIfExists(file);
      }
    }
  }

  /** A new empty file beside the target, readable as the user's umask says. */
  private static Path newPart(Path target) throws IOException {
    for (var i = 1; ; i++) {
      var part = target.resolveSibling("." + target.getFileName() + "." + i + ".part");
      try {
        Files.newByteChannel(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)
            .close();
        return part;
      } catch (FileAlreadyExistsException leftOverOrInUse) {
        // The next number is free, or the one after it.
      }
    }
  }
}
