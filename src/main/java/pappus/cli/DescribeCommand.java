package pappus.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import pappus.answers.result.Answer;
import pappus.catalog.CatalogReader;
import pappus.catalog.Shelf;
import pappus.document.CsvText;
import pappus.files.Shown;
import pappus.files.json.SchemaFields;
import pappus.files.json.SchemaText;
import pappus.inspection.FileExample;
import pappus.inspection.RecordText;
import pappus.offer.Shop;
import pappus.order.Order;
import pappus.part.Flown;
import pappus.part.Kind;
import pappus.part.Lump;
import pappus.part.Part;
import pappus.spreadsheet.RecordSheet;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Every field of a file. */
@Command(
    name = "describe",
    description =
        "Lists every field of a kind of part, of a scenario or of what --format json writes: unit, range, and what is assumed without it.",
    footer = {
      "pappus describe motor",
      "pappus describe cypsela-1404-2800",
      "pappus describe motor --columns",
      "pappus describe motor --example"
    })
final class DescribeCommand implements Callable<Integer> {
  private static final String SCENARIO = "scenario";

  @Spec
  private CommandSpec spec;

  @Parameters(
      paramLabel = "KIND",
      description =
          "The id of a part, whose record is shown with what is assumed of it; or a kind of part, such as motor or battery, or shelf, or scenario, or shop: the settings of an offer, or order: what a club orders; or a document that is written, such as result, which is what recommend writes.")
  private String kind;

  @Mixin
  private CatalogOptions catalogs = new CatalogOptions();

  @Option(names = "--schema", description = "Print the JSON Schema (2020-12), for editors.")
  private boolean asSchema;

  @Option(
      names = "--columns",
      description =
          "Print the column titles of a spreadsheet for import, as its first line; of lists the first place.")
  private boolean asColumns;

  @Option(
      names = "--example",
      description =
          "Print a small file of the format, complete, to begin one's own with; one of parts is named by its list, such as motors.json.")
  private boolean asExample;

  @Override
  public Integer call() {
    var part = isWord() ? Optional.<Part>empty() : part();
    if (part.isPresent()) {
      RecordText.of(part.get()).forEach(Printer.out(spec.commandLine())::line);
      return ExitCode.OK;
    }
    var format = format();
    var out = Printer.out(spec.commandLine());
    if (asExample) {
      out.document(example(format));
    } else if (asColumns) {
      printColumns(out, format);
    } else if (asSchema) {
      out.document(SchemaText.of(format));
    } else {
      for (var field : SchemaFields.of(format)) {
        out.line("%s (%s, %s): %s"
            .formatted(
                field.path(),
                field.type(),
                field.required() ? "required" : "optional",
                field.description()));
      }
    }
    return ExitCode.OK;
  }

  private String example(String format) {
    if (Answer.ofKey(format).isPresent()) {
      throw new ParameterException(
          spec.commandLine(),
          "--example must be asked of a file that one writes, but is of " + format + ".");
    }
    var record = Kind.ofKey(kind);
    if (record.isEmpty()) {
      return FileExample.of(format);
    }
    var catalog = CatalogReader.read(catalogs.folders()).catalog();
    if (catalog.ofKind(record.get()).isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "--example must be asked of a kind that the catalogue has a part of, but has no %s."
              .formatted(record.get().key()));
    }
    return FileExample.of(record.get(), catalog);
  }

  private void printColumns(Printer out, String format) {
    if (format.equals(SCENARIO)
        || format.equals(Flown.NAME)
        || format.equals(Lump.LIST)
        || format.equals(Shop.SCHEMA)
        || format.equals(Order.SCHEMA)
        || Answer.ofKey(format).isPresent()) {
      throw new ParameterException(
          spec.commandLine(),
          "--columns must be asked of a kind of part, but is of " + format + ".");
    }
    out.document(CsvText.of(RecordSheet.titles(format), List.of()));
  }

  private static List<String> words() {
    return Stream.of(
            Stream.of(Kind.values()).map(Kind::key),
            Stream.of(Shelf.NAME, Flown.NAME, Lump.LIST, SCENARIO, Shop.SCHEMA, Order.SCHEMA),
            Stream.of(Answer.values()).map(Answer::key))
        .flatMap(words -> words)
        .toList();
  }

  private boolean isWord() {
    return asColumns || asSchema || asExample || words().contains(kind);
  }

  private Optional<Part> part() {
    return CatalogReader.read(catalogs.folders()).catalog().part(kind);
  }

  /** Name of the schema of the kind. */
  private String format() {
    if (List.of(SCENARIO, Shelf.NAME, Flown.NAME, Lump.LIST, Shop.SCHEMA, Order.SCHEMA)
            .contains(kind)
        || Answer.ofKey(kind).isPresent()) {
      return kind;
    }
    return Kind.ofKey(kind)
        .map(Kind::listName)
        .orElseThrow(() -> new ParameterException(
            spec.commandLine(),
            "KIND must be the id of a part of the catalogue or %s, but is %s."
                .formatted(Shown.choice(words()), kind)));
  }
}
