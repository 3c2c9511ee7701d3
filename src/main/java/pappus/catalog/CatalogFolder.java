package pappus.catalog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import pappus.files.Closest;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.output.OutputFolder;
import pappus.part.Flown;
import pappus.part.Kind;
import pappus.part.Lump;

/**
 * Where catalogue files are: a folder, or the copy that travels in the jar.
 *
 * <p>Why: src/site/markdown/decisions.md#a-manifest-is-no-stranger-in-a-catalogue-folder
 */
public abstract sealed class CatalogFolder {
  private static final String COPY = "/pappus/catalog/";
  private static final List<String> FILE_NAMES = Stream.concat(
          Stream.of(Kind.values()).map(Kind::fileName),
          Stream.of(Shelf.FILE_NAME, Flown.FILE_NAME, Lump.FILE_NAME))
      .toList();

  private CatalogFolder() {}

  /** A folder as the user typed it. */
  public static CatalogFolder of(Path folder) {
    return new OnDisk(folder);
  }

  /** One file of a catalogue, without the others of its folder. */
  public static CatalogFolder ofFile(Path file) {
    return new OneFile(file);
  }

  /** True for the names of files that a catalogue folder may hold. */
  public static boolean isFileName(String name) {
    return FILE_NAMES.contains(name);
  }

  /** The folder {@code catalog} where there is one, else the copy in the jar. */
  public static CatalogFolder shipped() {
    var folder = Path.of("catalog");
    return Files.isDirectory(folder) ? new OnDisk(folder) : new InJar();
  }

  /** True if a folder on disk holds a file of a catalogue. */
  public static boolean isCatalogue(Path folder) {
    return FILE_NAMES.stream().anyMatch(name -> Files.exists(folder.resolve(name)));
  }

  /** The files by kind; what is wrong with the folder or its files is added to the problems. */
  abstract Map<Kind, Source> sources(Problems problems);

  /** The file of what is at hand and what can be bought, of what own flights say or of lumps, if there is one. */
  abstract Optional<Source> other(String fileName, Problems problems);

  private static final class InJar extends CatalogFolder {
    @Override
    Map<Kind, Source> sources(Problems problems) {
      var sources = new EnumMap<Kind, Source>(Kind.class);
      for (var kind : Kind.values()) {
        try (var stream = CatalogFolder.class.getResourceAsStream(COPY + kind.fileName())) {
          if (stream != null) {
            sources.put(kind, Source.read("(shipped)/" + kind.fileName(), stream));
          }
        } catch (IOException e) {
          throw new UncheckedIOException(e);
        }
      }
      return sources;
    }

    @Override
    Optional<Source> other(String fileName, Problems problems) {
      return Optional.empty();
    }
  }

  private static final class OneFile extends CatalogFolder {
    private final Path file;

    OneFile(Path file) {
      this.file = file;
    }

    @Override
    Map<Kind, Source> sources(Problems problems) {
      var sources = new EnumMap<Kind, Source>(Kind.class);
      Kind.ofFileName(name())
          .ifPresent(
              kind -> Source.find(file, problems).ifPresent(source -> sources.put(kind, source)));
      return sources;
    }

    @Override
    Optional<Source> other(String fileName, Problems problems) {
      return name().equals(fileName) ? Source.find(file, problems) : Optional.empty();
    }

    private String name() {
      return String.valueOf(file.getFileName());
    }
  }

  private static final class OnDisk extends CatalogFolder {
    private final Path folder;

    OnDisk(Path folder) {
      this.folder = folder;
    }

    @Override
    Map<Kind, Source> sources(Problems problems) {
      var sources = new EnumMap<Kind, Source>(Kind.class);
      var names = Source.namesIn(folder, problems);
      if (names.isEmpty()) {
        return sources;
      }
      var strangers = new ArrayList<String>(names.get());
      strangers.removeIf(
          name -> !isJson(name) || FILE_NAMES.contains(name) || name.equals(OutputFolder.MANIFEST));
      for (var name : strangers) {
        problems.add(Problem.ofFile(
            folder.resolve(name).toString(),
            "is not a file of a catalogue." + Closest.advice(name, FILE_NAMES)));
      }
      var isCatalogue = !strangers.isEmpty()
          || names.get().contains(Shelf.FILE_NAME)
          || names.get().contains(Flown.FILE_NAME)
          || names.get().contains(Lump.FILE_NAME);
      for (var kind : Kind.values()) {
        if (names.get().contains(kind.fileName())) {
          isCatalogue = true;
          Source.find(folder.resolve(kind.fileName()), problems)
              .ifPresent(source -> sources.put(kind, source));
        }
      }
      if (!isCatalogue) {
        problems.add(Problem.ofFile(
            folder.toString(),
            "must hold a file of a catalogue, such as motors.json, but holds none."));
      }
      return sources;
    }

    @Override
    Optional<Source> other(String fileName, Problems problems) {
      var file = folder.resolve(fileName);
      return Files.exists(file) ? Source.find(file, problems) : Optional.empty();
    }

    /** Hidden files are the business of editors and file systems. */
    private static boolean isJson(String name) {
      return name.toLowerCase(Locale.ROOT).endsWith(".json") && !name.startsWith(".");
    }
  }
}
