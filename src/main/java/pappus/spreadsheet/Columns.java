package pappus.spreadsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import pappus.files.Closest;
import pappus.files.CsvTable;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Shown;
import pappus.files.json.SchemaFields;

/** The columns a spreadsheet may have for the records of one file format. */
final class Columns {
  /** A title with a unit behind it in round or square brackets. */
  private static final Pattern WITH_UNIT =
      Pattern.compile("(.*\\S)\\s*[(\\[]\\s*([^()\\[\\]]*[^()\\[\\]\\s])\\s*[)\\]]");

  private static final Pattern NUMBER = Pattern.compile("[0-9]+");
  private static final Pattern CURRENCY = Pattern.compile("[A-Z]{3}");

  /** As many as a person will ever write in columns; a mistyped number must not fill the memory. */
  private static final int MOST_PLACES = 50;

  private final List<Leaf> leaves = new ArrayList<>();
  private final Map<String, Leaf> byName = new LinkedHashMap<>();
  private final Map<String, Leaf> byPath = new HashMap<>();
  private final String list;
  private final boolean isOfOneKind;

  /** Those of a spreadsheet whose rows are all of one kind. */
  Columns(String schema) {
    this(schema, true);
  }

  /**
   * @param isOfOneKind otherwise a column without a cell is that of another kind, whatever it is called
   */
  Columns(String schema, boolean isOfOneKind) {
    this.list = schema;
    this.isOfOneKind = isOfOneKind;
    var required = new HashMap<String, Boolean>();
    for (var field : SchemaFields.of(schema)) {
      var around = field.path().contains(".")
          ? field.path().substring(0, field.path().lastIndexOf('.'))
          : "";
      var isList = field.type().startsWith("list of ");
      var isRequired =
          field.required() && !isList && (around.isEmpty() || required.getOrDefault(around, false));
      required.put(field.path(), isRequired);
      if (!field.type().endsWith("object")) {
        leaves.add(Leaf.of(field, isRequired));
      }
    }
    for (var leaf : leaves) {
      byName.put(Leaf.key(leaf.name()), leaf);
      byPath.put(Leaf.key(leaf.path().replace("[]", "1")), leaf);
    }
  }

  /** Titles of all columns, in the order of the record's fields. */
  List<String> titles() {
    return leaves.stream().filter(leaf -> !isCurrency(leaf)).map(Leaf::title).toList();
  }

  /**
   * The columns of a table.
   *
   * @param plain those that hold one field
   * @param trade those titled as in shops
   */
  record Found(List<Column> plain, List<Trade> trade) {}

  /**
   * A column titled as in shops.
   *
   * @param index from 0
   */
  record Trade(int index, String title, TradeWord word) {
    String letters() {
      return Column.letters(index);
    }
  }

  /** The columns of a table by their place in it; what is wrong with them is added to the problems. */
  Found of(String file, CsvTable table, Problems problems) {
    var header = table.header().orElseThrow();
    var columns = new ArrayList<Column>();
    var trade = new ArrayList<Trade>();
    var byPathHere = new HashMap<String, Column>();
    var meant = new HashSet<String>();
    for (var i = 0; i < header.cells().size(); i++) {
      var index = i;
      var title = header.cells().get(i);
      if ((title.isEmpty() || !isOfOneKind)
          && table.rows().stream().allMatch(row -> row.cells().get(index).isEmpty())) {
        continue;
      }
      if (title.equalsIgnoreCase(RecordSheet.KIND)) {
        continue;
      }
      var word = TradeWord.of(title, list)
          .filter(
              one -> !byName.containsKey(Leaf.key(title)) && !byPath.containsKey(Leaf.key(title)));
      if (word.isPresent()) {
        trade.add(new Trade(i, title, word.get()));
        continue;
      }
      meant(title).ifPresent(leaf -> meant.add(leaf.path()));
      try {
        var column = column(i, title);
        var twin = byPathHere.putIfAbsent(column.path(), column);
        if (twin != null) {
          throw new Refused(
              "must be there once, but column %s is the same.".formatted(twin.letters()));
        }
        columns.add(column);
      } catch (Refused refused) {
        problems.add(new Problem(
            file,
            header.line(),
            "column %s %s %s".formatted(Column.letters(i), Shown.text(title), refused.predicate)));
      }
    }
    addMissing(file, header.line(), columns, trade, meant, problems);
    return new Found(columns, trade);
  }

  /** @param meant paths of columns that are there in some way: a misspelt one is not missing too */
  private void addMissing(
      String file,
      int line,
      List<Column> columns,
      List<Trade> trade,
      Set<String> meant,
      Problems problems) {
    var said = trade.stream().flatMap(each -> each.word().fields(list).stream()).toList();
    for (var leaf : leaves) {
      var isThere = (leaf.path().equals("id") && !list.equals("shelf"))
          || said.stream()
              .anyMatch(path -> leaf.path().equals(path) || leaf.path().startsWith(path + "."))
          || columns.stream()
              .anyMatch(column -> column.leaf().equals(leaf)
                  || (isCurrency(leaf)
                      && column.currency().isPresent()
                      && parent(column.leaf().path()).equals(parent(leaf.path()))));
      if (leaf.isRequired()
          && !isThere
          && !meant.contains(leaf.path())
          && !(isCurrency(leaf) && lacksAmount(leaf, columns))) {
        problems.add(new Problem(
            file, line, "must have a column \"%s\", but has none.".formatted(leaf.title())));
      }
    }
  }

  /** Then one line, on the amount, is enough. */
  private static boolean lacksAmount(Leaf currency, List<Column> columns) {
    return columns.stream()
        .noneMatch(column -> column.leaf().isMoney()
            && parent(column.leaf().path()).equals(parent(currency.path())));
  }

  private boolean isCurrency(Leaf leaf) {
    return leaf.path().endsWith(".currency")
        && leaves.stream()
            .anyMatch(other -> other.isMoney() && parent(other.path()).equals(parent(leaf.path())));
  }

  private static String parent(String path) {
    return path.substring(0, Math.max(0, path.lastIndexOf('.')));
  }

  /** The field that a title means, be it right or nearly so. */
  private Optional<Leaf> meant(String title) {
    var withUnit = WITH_UNIT.matcher(title);
    var key = Leaf.key(withUnit.matches() ? withUnit.group(1) : title);
    var leaf = byName.getOrDefault(key, byPath.get(key));
    return leaf != null
        ? Optional.of(leaf)
        : Closest.to(title, titles())
            .flatMap(near ->
                leaves.stream().filter(each -> each.title().equals(near)).findFirst());
  }

  private Column column(int index, String title) {
    if (title.isEmpty()) {
      throw new Refused("must have a title, for it has cells.");
    }
    var withUnit = WITH_UNIT.matcher(title);
    var hasUnit = withUnit.matches();
    var name = hasUnit ? withUnit.group(1) : title;
    var unit = hasUnit ? withUnit.group(2) : "";
    var key = Leaf.key(name);
    var named = byName.get(key);
    var leaf = named == null ? byPath.get(key) : named;
    if (leaf == null) {
      throw new Refused("is not known." + Closest.advice(title, titles()));
    }
    var path = leaf.path(places(name, leaf));
    if (leaf.isMoney()) {
      if (named != null && !CURRENCY.matcher(unit).matches()) {
        throw new Refused("must name its currency, such as \"%s\".".formatted(leaf.title()));
      }
      return new Column(
          index,
          title,
          leaf,
          path,
          Optional.empty(),
          Optional.of(unit).filter(each -> !each.isEmpty()));
    }
    return new Column(index, title, leaf, path, ratio(leaf, unit, named != null), Optional.empty());
  }

  /** @param isNamed whether the unit is left to the title's end: a field's own name has it in it */
  private static Optional<Measure.Ratio> ratio(Leaf leaf, String unit, boolean isNamed) {
    if (leaf.measure().isEmpty()) {
      if (!unit.isEmpty()) {
        throw new Refused("must be without a unit: \"%s\".".formatted(leaf.title()));
      }
      return Optional.empty();
    }
    var measure = leaf.measure().get();
    if (unit.isEmpty()) {
      if (isNamed) {
        throw new Refused("must name its unit, such as \"%s\".".formatted(leaf.title()));
      }
      return measure.ratio(measure.symbol());
    }
    var ratio = measure.ratio(unit);
    if (ratio.isEmpty()) {
      throw new Refused("must be in %s, but is in %s."
          .formatted(Shown.choice(measure.symbols()), Shown.text(unit)));
    }
    return ratio;
  }

  /** Places in lists, from 0; people count from 1. */
  private static List<Integer> places(String name, Leaf leaf) {
    var places = new ArrayList<Integer>();
    var numbers = NUMBER.matcher(name);
    while (numbers.find() && places.size() < leaf.depth()) {
      var number = numbers.group();
      if (number.length() > 2
          || Integer.parseInt(number) < 1
          || Integer.parseInt(number) > MOST_PLACES) {
        throw new Refused("must count from 1 to %s, but has %s.".formatted(MOST_PLACES, number));
      }
      places.add(Integer.parseInt(number) - 1);
    }
    return places;
  }

  /** A title was refused; the predicate goes on after it. */
  private static final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String predicate;

    Refused(String predicate) {
      super(predicate, null, false, false);
      this.predicate = predicate;
    }
  }
}
