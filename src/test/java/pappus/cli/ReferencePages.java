package pappus.cli;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import pappus.Rooms;
import pappus.answers.result.Answer;
import pappus.assessment.LimitKind;
import pappus.catalog.Shelf;
import pappus.compatibility.CompatibilityRule;
import pappus.compatibility.Rules;
import pappus.files.json.SchemaFields;
import pappus.offer.Shop;
import pappus.order.Order;
import pappus.part.Flown;
import pappus.part.Kind;
import pappus.part.Lump;
import pappus.part.Role;

/** What documents say that the code says already: written from it, between two marks. */
final class ReferencePages {
  private static final String BEGIN = "<!-- written by DocumentsTest -->\n";
  private static final String END = "<!-- end -->\n";

  /** First sentence of a class's comment. */
  private static final Pattern SENTENCE =
      Pattern.compile("(?ms)^/\\*\\*(.*?)(?:\\n \\* *<p>|\\*/|@)");

  /**
   * The part of a document that is written, all between its two marks.
   *
   * @param file the document
   * @param content what belongs there
   */
  record Written(Path file, Supplier<String> content) {
    /** The document as it should be. */
    String fresh() {
      var text = Documents.text(file);
      var begin = text.indexOf(BEGIN);
      var end = text.indexOf(END, begin);
      if (begin < 0 || end < 0) {
        throw new IllegalStateException(file + " must have both marks.");
      }
      return text.substring(0, begin) + BEGIN + "\n" + content.get() + "\n" + text.substring(end);
    }

    @Override
    public String toString() {
      return file.toString();
    }
  }

  private ReferencePages() {}

  /** All of them; what is to be written too gets a line here. */
  static List<Written> all() {
    var folder = Documents.SITE.resolve("reference");
    return List.of(
        new Written(Documents.README, () -> new Manual().table()),
        new Written(Documents.SITE.resolve("rooms.md"), Rooms::table),
        new Written(folder.resolve("commands.md"), () -> new Manual().markdown()),
        new Written(folder.resolve("rules.md"), ReferencePages::rules),
        new Written(folder.resolve("limits.md"), ReferencePages::limits),
        new Written(folder.resolve("scenario.md"), ReferencePages::scenario),
        new Written(folder.resolve("parts.md"), ReferencePages::parts),
        new Written(folder.resolve("other-files.md"), ReferencePages::otherFiles),
        new Written(folder.resolve("results.md"), ReferencePages::results));
  }

  private static String rules() {
    return table(
        List.of("id", "rule", "depends on"),
        Rules.ALL.stream()
            .map(rule -> List.of("`" + rule.id() + "`", sentence(rule), roles(rule.reads())))
            .toList());
  }

  private static String sentence(CompatibilityRule rule) {
    var source = Path.of("src/main/java", rule.getClass().getName().replace('.', '/') + ".java");
    var comment = SENTENCE.matcher(Documents.text(source)).results().findFirst().orElseThrow();
    var sentence = comment.group(1).replaceAll("(\\s*\\n \\*)+\\s*", " ").strip();
    return rule.mayBeWaived() ? sentence : sentence + " Never set aside.";
  }

  private static String roles(Set<Role> roles) {
    return roles.size() == Role.values().length
        ? "all parts"
        : Stream.of(Role.values()).filter(roles::contains).map(Role::label).collect(joining(", "));
  }

  private static String limits() {
    return table(
        List.of("id", "what is held to it", "unit", "must be"),
        Stream.of(LimitKind.values())
            .map(kind -> List.of(
                "`" + kind.id() + "`",
                kind.label(example(kind)),
                kind.unit("EUR"),
                kind.isAtMost() ? "at most" : "at least"))
            .toList());
  }

  /** What its label leaves open, by an example. */
  private static String example(LimitKind kind) {
    return switch (kind) {
      case IN_STOCK -> "pieces of a part";
      case REACH -> "video";
      case TOP_SPEED, GROUND_SPEED -> "on the way out";
      default -> "in hover";
    };
  }

  private static String scenario() {
    return fields(SchemaFields.of("scenario").stream()
        .filter(field -> !field.path().startsWith("draftFrame."))
        .toList());
  }

  /** What all kinds have in the same words comes first, then each kind's own. */
  private static String parts() {
    var ofKinds = new LinkedHashMap<String, List<SchemaFields.Field>>();
    Stream.of(Kind.values())
        .forEach(kind -> ofKinds.put(kind.listName(), SchemaFields.of(kind.listName())));
    var shared = new LinkedHashSet<>(ofKinds.get(Kind.FRAME.listName()));
    ofKinds.values().forEach(shared::retainAll);
    var page = new StringBuilder("## Every part\n\n").append(fields(List.copyOf(shared)));
    ofKinds.forEach((name, all) -> page.append("\n## ")
        .append(name)
        .append("\n\n")
        .append(fields(all.stream().filter(field -> !shared.contains(field)).toList())));
    return page.toString();
  }

  private static String otherFiles() {
    return Stream.of(Shelf.NAME, Flown.NAME, Lump.LIST, Shop.SCHEMA, Order.SCHEMA)
        .map(name -> "## " + name + "\n\n" + fields(SchemaFields.of(name)))
        .collect(joining("\n"));
  }

  /** The ranking's in full, the others by the word that describes them. */
  private static String results() {
    var others = Stream.of(Answer.values())
        .filter(answer -> answer != Answer.RESULT)
        .map(answer -> "`" + answer.key() + "`")
        .collect(joining(", "));
    return "Described likewise: %s.\n\n## result\n\n%s"
        .formatted(others, fields(SchemaFields.of(Answer.RESULT.key())));
  }

  private static String fields(List<SchemaFields.Field> fields) {
    return table(
        List.of("field", "is", "meaning"),
        fields.stream()
            .map(field -> List.of(
                "`" + field.path() + "`",
                field.type() + (field.required() ? ", required" : ""),
                field.description()))
            .toList());
  }

  private static String table(List<String> titles, List<List<String>> rows) {
    var lines =
        new ArrayList<>(List.of(titles, titles.stream().map(title -> "---").toList()));
    lines.addAll(rows);
    return lines.stream()
        .map(cells -> cells.stream()
            .map(cell -> cell.replace("|", "\\|"))
            .collect(joining(" | ", "| ", " |\n")))
        .collect(joining());
  }
}
