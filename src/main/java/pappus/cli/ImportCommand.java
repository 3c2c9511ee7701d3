package pappus.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import pappus.answers.check.ImportJson;
import pappus.catalog.Catalog;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.OwnFolder;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.evidence.filling.Filling;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.Source;
import pappus.files.json.JsonReader;
import pappus.files.json.JsonText;
import pappus.files.json.Listed;
import pappus.inspection.NewBuilds;
import pappus.inspection.RecordText;
import pappus.part.Kind;
import pappus.part.Part;
import pappus.spreadsheet.RecordSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** A spreadsheet's rows as records. */
@Command(
    name = "import",
    description =
        "Turns a spreadsheet saved as CSV into records of a catalogue folder; describe KIND --columns names the columns.",
    footer = {
      "pappus import motors.csv --kind motor --into my-parts",
      "pappus import motors.csv --kind motor --preview",
      "pappus import shelf.csv --kind shelf --into my-parts"
    })
final class ImportCommand implements Callable<Integer>, JsonAnswer {
  /** Of a long list the first ids tell what became of it; JSON has all. */
  private static final int MOST_NAMED = 20;

  @Spec
  private CommandSpec spec;

  @Parameters(
      paramLabel = "CSV",
      description =
          "Column titles in the first line, with units; one part a row; - reads standard input.")
  private Path file;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description =
          "What the rows are: a kind of part such as motor, or shelf for what is at hand, in stock and its price; else a column kind says it.")
  private @Nullable String kindKey;

  @Option(
      names = "--into",
      paramLabel = "FOLDER",
      description =
          "Catalogue folder for the records; it may hold others, of which those with the same id are replaced.")
  private @Nullable Path folder;

  @Option(
      names = "--preview",
      description = "Show what was understood and what is assumed of each row, and write nothing.")
  private boolean preview;

  @Option(
      names = "--format",
      paramLabel = "text|json",
      defaultValue = "text",
      description = "How to print what was written.")
  private TextOrJson format;

  @Option(
      names = "--force",
      description =
          "Replace a file in the folder that this tool did not write, or that was edited.")
  private boolean force;

  @Option(names = "--quiet", description = "No remarks on standard error.")
  private boolean quiet;

  @Override
  public Integer call() {
    if (!preview && folder == null) {
      throw new ParameterException(
          spec.commandLine(),
          "--into must name a folder unless --preview is given, but is left out.");
    }
    if (kindKey != null && !kindKey.equals(Shelf.NAME)) {
      kind(kindKey);
    }
    if (Shelf.NAME.equals(kindKey)) {
      addToShelf();
    } else {
      addParts();
    }
    return ExitCode.OK;
  }

  private void addToShelf() {
    var source = read();
    var entries = values(checked(
        source,
        problems -> RecordSheet.read(
            source,
            Shelf.NAME,
            (json, found) ->
                JsonReader.readList(json, Shelf.NAME, Shelf.NAME, ShelfEntry.class, found),
            problems),
        ShelfEntry::id));
    if (folder == null || preview) {
      entries.forEach(entry -> Printer.out(spec.commandLine()).line(entry.id()));
      return;
    }
    var own = OwnFolder.at(folder);
    own.addToShelf(entries, force);
    var ids = entries.stream().map(ShelfEntry::id).toList();
    print(
        Map.of(own.file(Shelf.FILE_NAME), ids), id -> own.shelf().entry(id).isPresent(), List.of());
  }

  private void addParts() {
    var source = read();
    var entries = checked(source, problems -> parts(source, problems), Part::id);
    var parts = values(entries);
    if (folder == null || preview) {
      var out = Printer.out(spec.commandLine());
      parts.forEach(part -> RecordText.of(part).forEach(out::line));
      return;
    }
    var own = OwnFolder.at(folder);
    checkKinds(entries, own);
    var before = catalog(folder, !own.parts().parts().isEmpty());
    own.add(parts, force);
    var made = NewBuilds.of(
        before, catalog(folder, true), parts.stream().limit(MOST_NAMED).toList());
    var written = new LinkedHashMap<Path, List<String>>();
    for (var kind : Kind.values()) {
      var ids = parts.stream().filter(part -> part.kind() == kind).map(Part::id).toList();
      if (!ids.isEmpty()) {
        written.put(own.file(kind.fileName()), ids);
      }
    }
    print(written, id -> own.parts().part(id).isPresent(), made);
  }

  /** The shipped catalogue with a folder, if it is there; as much of it as can be read. */
  private static Catalog catalog(Path folder, boolean isThere) {
    var folders = isThere
        ? List.of(CatalogFolder.shipped(), CatalogFolder.of(folder))
        : List.of(CatalogFolder.shipped());
    return CatalogReader.read(folders, new Problems()).catalog();
  }

  /** The parts of a file that holds one kind, or says in a column which each row is. */
  private List<RecordSheet.Entry<Part>> parts(Source source, Problems problems) {
    var key = kindKey;
    var kinds = key == null ? List.of(Kind.values()) : List.of(kind(key));
    var table = RecordSheet.table(source, problems);
    if (table.header().isEmpty()) {
      return List.of();
    }
    var at = table.columns().stream()
        .map(title -> title.toLowerCase(Locale.ROOT))
        .toList()
        .indexOf(RecordSheet.KIND);
    if (at < 0) {
      if (key == null) {
        throw new ParameterException(
            spec.commandLine(),
            "--kind must be given where no column is called kind, but is left out.");
      }
      return parts(
          kinds.get(0),
          (reading, found) -> RecordSheet.read(source, kinds.get(0).listName(), reading, found),
          problems);
    }
    var words = kinds.stream().map(Kind::key).toList();
    for (var row : table.rows()) {
      var word = row.cells().get(at).toLowerCase(Locale.ROOT);
      if (!words.contains(word)) {
        problems.add(new Problem(
            source.name(),
            row.line(),
            "row %s: kind must be %s, but is %s."
                .formatted(
                    row.number(), Shown.choice(words), Shown.text(row.cells().get(at)))));
      }
    }
    var entries = new ArrayList<RecordSheet.Entry<Part>>();
    for (var kind : kinds) {
      var rows =
          table.withRows(row -> row.cells().get(at).toLowerCase(Locale.ROOT).equals(kind.key()));
      if (!rows.rows().isEmpty()) {
        entries.addAll(parts(
            kind,
            (reading, found) ->
                RecordSheet.read(source.name(), rows, kind.listName(), reading, found),
            problems));
      }
    }
    return entries;
  }

  private static List<RecordSheet.Entry<Part>> parts(
      Kind kind,
      BiFunction<
              BiFunction<Source, Problems, List<Listed<Part>>>,
              Problems,
              List<RecordSheet.Entry<Part>>>
          sheet,
      Problems problems) {
    return sheet.apply((source, found) -> parts(source, kind, kind.recordClass(), found), problems);
  }

  private static <P extends Part> List<Listed<Part>> parts(
      Source source, Kind kind, Class<P> record, Problems problems) {
    return Filling.read(source, kind, record, problems).stream()
        .map(one -> new Listed<Part>(one.value(), one.index(), one.line(), one.offset()))
        .toList();
  }

  @Override
  public boolean wantsJson() {
    return format == TextOrJson.JSON;
  }

  private Kind kind(String key) {
    return Kind.ofKey(key)
        .orElseThrow(() -> new ParameterException(
            spec.commandLine(),
            "--kind must be %s, but is %s."
                .formatted(
                    Shown.choice(Stream.concat(
                            Stream.of(Kind.values()).map(Kind::key), Stream.of(Shelf.NAME))
                        .toList()),
                    Shown.text(key))));
  }

  private Source read() {
    var problems = new Problems();
    var found = Source.find(file, System.in, problems);
    problems.throwIfAny();
    return found.orElseThrow();
  }

  /** The records of the file; an id stands for one of them. */
  private <T> List<RecordSheet.Entry<T>> checked(
      Source source, Function<Problems, List<RecordSheet.Entry<T>>> read, Function<T, String> id) {
    var problems = new Problems();
    var entries = read.apply(problems);
    problems.throwIfAny();
    if (entries.isEmpty()) {
      problems.add(Problem.ofFile(source.name(), "must have a row for each record, but has none."));
    }
    var rows = new HashMap<String, Integer>();
    for (var entry : entries) {
      var key = id.apply(entry.value());
      var earlier = rows.putIfAbsent(key, entry.row());
      if (earlier != null) {
        problems.add(new Problem(
            file.toString(),
            entry.line(),
            "row %s: id must be there once, but %s is in row %s too."
                .formatted(entry.row(), key, earlier)));
      }
    }
    problems.throwIfAny();
    return entries;
  }

  private static <T> List<T> values(List<RecordSheet.Entry<T>> entries) {
    return entries.stream().map(RecordSheet.Entry::value).toList();
  }

  /** An id stands for a part of one kind; two of one folder would make it unreadable. */
  private void checkKinds(List<RecordSheet.Entry<Part>> entries, OwnFolder own) {
    var problems = new Problems();
    for (var entry : entries) {
      var part = entry.value();
      own.parts()
          .part(part.id())
          .filter(other -> other.kind() != part.kind())
          .ifPresent(other -> problems.add(new Problem(
              file.toString(),
              entry.line(),
              "row %s: id must be new or that of another %s, but %s is a %s in %s."
                  .formatted(
                      entry.row(),
                      part.kind().key(),
                      part.id(),
                      other.kind().key(),
                      own.file(other.kind().fileName())))));
    }
    problems.throwIfAny();
  }

  /** @param written ids by the file they went to */
  private void print(
      Map<Path, List<String>> written, Predicate<String> wasThere, List<NewBuilds> made) {
    var out = Printer.out(spec.commandLine());
    if (wantsJson()) {
      var ids = written.values().stream().flatMap(List::stream).toList();
      out.document(JsonText.of(new ImportJson(
          "written",
          written.keySet().stream().map(Path::toString).toList(),
          ids.stream().filter(wasThere.negate()).toList(),
          ids.stream().filter(wasThere).toList(),
          made.stream().map(ImportJson.Made::of).toList())));
    } else {
      written.forEach((path, ids) -> out.line(path
          + ": "
          + Stream.of(
                  counted("added", ids.stream().filter(wasThere.negate()).toList()),
                  counted("replaced", ids.stream().filter(wasThere).toList()))
              .flatMap(Optional::stream)
              .collect(Collectors.joining("; "))
          + "."));
      made.forEach(one -> out.line(one.text()));
    }
    if (!quiet) {
      var name = String.valueOf(folder);
      Printer.err(spec.commandLine())
          .line("Use it with --catalog %s; check %s says what is doubtful in it."
              .formatted(name, name));
    }
  }

  private static Optional<String> counted(String word, List<String> ids) {
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of("%s %s: %s%s"
            .formatted(
                ids.size(),
                word,
                ids.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")),
                ids.size() > MOST_NAMED ? ", …" : ""));
  }
}
