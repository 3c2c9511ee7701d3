package pappus.spreadsheet;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pappus.catalog.Shipped;
import pappus.document.CsvText;
import pappus.evidence.filling.Filling;
import pappus.files.Problem;
import pappus.files.Problems;
import pappus.files.Source;
import pappus.files.json.JsonText;
import pappus.files.json.Listed;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.PartCopy;
import pappus.part.Screw;
import pappus.part.Strap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RecordSheetTest {
  private static final String TITLES =
      "id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,width (mm),length (mm),source";
  private static final String ROW = "s1,Ousel,Reed,2.5,each,1,3.2,measured,16,200,weighed";

  private record Read<T>(List<RecordSheet.Entry<T>> entries, List<String> problems) {}

  private static <P extends Part> BiFunction<Source, Problems, List<Listed<P>>> as(
      Kind kind, Class<P> record) {
    return (source, problems) -> Filling.read(source, kind, record, problems);
  }

  private static Read<Strap> straps(String text) {
    return straps(text.getBytes(UTF_8));
  }

  private static Read<Strap> straps(byte[] bytes) {
    var problems = new Problems();
    var entries = RecordSheet.read(
        Source.of("s.csv", bytes), "straps", as(Kind.STRAP, Strap.class), problems);
    return new Read<>(entries, problems.sorted().stream().map(Problem::toString).toList());
  }

  private static String with(String from, String to) {
    return TITLES + "\n" + ROW.replace(from, to) + "\n";
  }

  @Test
  void readsARow() {
    var read = straps(TITLES + "\n" + ROW + "\n");
    assertThat(read.problems).isEmpty();
    var strap = read.entries.get(0).value();
    assertThat(strap.id()).isEqualTo("s1");
    assertThat(strap.price().cents()).isEqualTo(250);
    assertThat(strap.price().currency()).isEqualTo("EUR");
    assertThat(strap.mass().grams()).isEqualTo(3.2);
    assertThat(strap.widthMillimetres()).isEqualTo(16);
  }

  @ParameterizedTest(name = "{0} {1} is {3}")
  @CsvSource({
    "mass (g), 0.5, 3.2, 0.5",
    "mass (oz), 0.5, 3.2, 14.1747615625",
    "mass (mg), 500, 3.2, 0.5",
    "mass (kg), 0.01, 3.2, 10",
    "Mass [oz], 1, 3.2, 28.349523125",
    "mass.grams, 7, 3.2, 7"
  })
  void takesUnitsFromTitles(String title, String typed, String before, double grams) {
    var read = straps(TITLES.replace("mass (g)", title) + "\n"
        + ROW.replace("," + before + ",", "," + typed + ","));
    assertThat(read.problems).isEmpty();
    assertThat(read.entries.get(0).value().mass().grams()).isEqualTo(grams);
  }

  @Test
  void takesInchesForMillimetres() {
    var read =
        straps(TITLES.replace("width (mm)", "width (in)").replace("length (mm)", "Length (cm)")
            + "\n"
            + ROW.replace(",16,", ",0.5,").replace(",200,", ",19.5,"));
    assertThat(read.entries.get(0).value().widthMillimetres()).isEqualTo(12.7);
    assertThat(read.entries.get(0).value().lengthMillimetres()).isEqualTo(195);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1d",
        "1f",
        "0x1p3",
        "NaN",
        "Infinity",
        "1e2",
        "12 g",
        "12g",
        "+3",
        ".5",
        "5.",
        "- 3",
        "--3",
        "١٢",
        "1 000",
        "1_000",
        "=2+3"
      })
  void refusesWhatIsNoPlainDecimalNumber(String cell) {
    var read = straps(with(",3.2,", "," + cell + ","));
    assertThat(read.problems).hasSize(1);
    assertThat(read.problems.get(0))
        .startsWith(
            "s.csv:2: row 2, column G \"mass (g)\", must be a plain number such as 12.5, but is \""
                + cell
                + "\".");
  }

  @Test
  void advisesOnCommasAndUnits() {
    assertThat(straps(with(",3.2,", ",\"1,234.5\",")).problems)
        .containsExactly(
            "s.csv:2: row 2, column G \"mass (g)\", must be a plain number such as 12.5, but is \"1,234.5\". Maybe write decimals after a point, and nothing between thousands.");
    assertThat(straps(with(",3.2,", ",12 g,")).problems)
        .containsExactly(
            "s.csv:2: row 2, column G \"mass (g)\", must be a plain number such as 12.5, but is \"12 g\". Maybe move what follows the number into the title of the column.");
  }

  @Test
  void tellsEveryBadCellAtOnceAndCountsRowsAsSpreadsheetsDo() {
    var read = straps("# my straps\n\n"
        + TITLES
        + "\n"
        + ROW.replace("Reed", "\"Reed\nand Rush\"")
        + "\n,,,,,,,,,,\n"
        + ROW.replace("s1", "S2").replace(",16,", ",wide,").replace(",1,", ",one,")
        + "\n"
        + ROW.replace("each", "pair").replace(",200,", ",2000,").replace("Reed", "")
        + "\n");
    assertThat(read.problems)
        .containsExactly(
            "s.csv:4: row 4, column C \"name\", is \"Reed\\u000aand Rush\": name must be text without control or hidden characters, but is the text \"Reed\\u000aand Rush\".",
            "s.csv:7: row 6, column F \"sold pieces\", must be a whole number, but is \"one\".",
            "s.csv:7: row 6, column I \"width (mm)\", must be a plain number such as 12.5, but is \"wide\".",
            "s.csv:8: row 7, column C \"name\", must have a value, but is empty.",
            "s.csv:8: row 7, column E \"sold unit\", is \"pair\": sold.unit must be each, set, bag or kit, but is the text \"pair\".");
  }

  @Test
  void tellsWhatTheRecordSaysInTheCellsWords() {
    var read = straps(
        TITLES.replace("width (mm)", "width (in)") + "\n" + ROW.replace(",16,", ",4,") + "\n");
    assertThat(read.problems)
        .containsExactly(
            "s.csv:2: row 2, column I \"width (in)\", is \"4\": widthMillimetres must be from 5 to 40, but is 101.6.");
  }

  @Test
  void refusesColumnsItDoesNotUnderstand() {
    var read = straps("""
        id,makr,name,price,sold unit,sold pieces,mass,mass known,width (ft),length (mm),length (in),source (g),,remark
        a,b,c,1,each,1,1,maker,1,1,1,x,x,
        """);
    assertThat(read.problems)
        .containsExactly(
            "s.csv:1: column B \"makr\" is not known. Maybe maker was meant.",
            "s.csv:1: column D \"price\" must name its currency, such as \"price (EUR)\".",
            "s.csv:1: column G \"mass\" must name its unit, such as \"mass (g)\".",
            "s.csv:1: column I \"width (ft)\" must be in mm, cm or in, but is in \"ft\".",
            "s.csv:1: column K \"length (in)\" must be there once, but column J is the same.",
            "s.csv:1: column L \"source (g)\" must be without a unit: \"source\".",
            "s.csv:1: column M \"\" must have a title, for it has cells.",
            "s.csv:1: column N \"remark\" is not known.");
  }

  /** Of two letters, two others are not a slip. */
  @Test
  void guessesNoOtherWordOfTwoLetters() {
    assertThat(straps(TITLES + ",KV,ide\n" + ROW + ",4,x\n").problems)
        .containsExactly(
            "s.csv:1: column L \"KV\" is not known.",
            "s.csv:1: column M \"ide\" is not known. Maybe id was meant.");
  }

  @Test
  void namesColumnsThatAreMissing() {
    assertThat(straps("id,maker,price (EUR)\na,b,1\n").problems)
        .containsExactlyInAnyOrder(
            "s.csv:1: must have a column \"name\", but has none.",
            "s.csv:1: must have a column \"mass (g)\", but has none.",
            "s.csv:1: must have a column \"width (mm)\", but has none.",
            "s.csv:1: must have a column \"length (mm)\", but has none.");
    assertThat(straps(TITLES.replace("price (EUR)", "price amount") + "\n" + ROW).problems)
        .containsExactly("s.csv:1: must have a column \"price currency\", but has none.");
  }

  @Test
  void refusesRowsOfAnotherLength() {
    assertThat(straps(TITLES + "\n" + ROW + ",x\n" + ROW.replace(",weighed", "") + "\n").problems)
        .containsExactly(
            "s.csv:2: must have 11 cells, but has 12.", "s.csv:3: must have 11 cells, but has 10.");
  }

  @Test
  void refusesAQuoteThatIsNotClosed() {
    var read =
        straps(TITLES + "\n" + ROW + "\n" + ROW.replace("Reed", "\"Reed") + "\n" + ROW + "\n");
    assertThat(read.entries).isEmpty();
    assertThat(read.problems)
        .singleElement()
        .asString()
        .startsWith("s.csv:3: must be CSV, but is not: ");
  }

  @Test
  void refusesBytesThatAreNotUtf8() {
    var read = straps(with("Reed", "Réed").getBytes(ISO_8859_1));
    assertThat(read.problems)
        .containsExactly(
            "s.csv:2: The file must be text in UTF-8, but has the byte 0xE9 in a wrong place. Maybe it was saved in another encoding.");
  }

  @Test
  void takesAByteOrderMarkAndCarriageReturns() {
    var read = straps("\uFEFF" + TITLES + "\r\n" + ROW + "\r\n");
    assertThat(read.problems).isEmpty();
    assertThat(read.entries).hasSize(1);
  }

  @Test
  void takesSemicolonsWithDecimalCommas() {
    var row = ROW.replace(',', ';').replace(";16;", ";16,5;");
    var read = straps(TITLES.replace(',', ';') + "\n" + row.replaceAll("([0-9])\\.", "$1,") + "\n");
    assertThat(read.problems).isEmpty();
    assertThat(read.entries.get(0).value().widthMillimetres()).isEqualTo(16.5);
  }

  @Test
  void refusesDecimalsThatCouldPartThousands() {
    var row = ROW.replace(',', ';');
    var read = straps(TITLES.replace(',', ';')
        + "\n"
        + row.replace(";16;", ";16,5;")
        + "\n"
        + row.replace("s1", "s2").replace(";200;", ";200.5;")
        + "\n");
    assertThat(read.problems)
        .anyMatch(told -> told.contains("row 3 must write decimals as row 2 does, after a comma")
            && told.contains("which could be 200,5 or 2005"));
  }

  @Test
  void aRowWithoutAnIdGetsOneFromMakerAndName() {
    var read = straps("""
        maker,name,price (EUR),weight,width (mm),length (mm),note
        Öllå Weir,Reed 16/2,2.50,6.8 g / set of 8,16,200,slips a little
        """);
    assertThat(read.problems).isEmpty();
    var strap = read.entries.get(0).value();
    assertThat(strap.id()).isEqualTo("olla-weir-reed-16-2");
    assertThat(strap.mass().grams()).isEqualTo(0.85);
    assertThat(strap.source()).isEqualTo("slips a little");
  }

  @Test
  void refusesTabsBetweenCells() {
    assertThat(straps(TITLES.replace(',', '\t') + "\n").problems)
        .containsExactly(
            "s.csv:1: must separate its cells by commas, but has tabs. Maybe export it again with commas, and points in numbers.");
  }

  @Test
  void refusesATextThatNobodyTyped() {
    assertThat(straps(with("Reed", "Reed".repeat(3000))).problems)
        .singleElement()
        .asString()
        .startsWith(
            "s.csv:2: row 2, column C \"name\", must be text of at most 10000 characters, but is \"ReedReed");
  }

  @Test
  void keepsAFormulaAsTheTextItIs() {
    var read = straps(with("Reed", "=1+2"));
    assertThat(read.entries.get(0).value().name()).isEqualTo("=1+2");
  }

  @Test
  void countsPlacesInListsFromOne() {
    var problems = new Problems();
    RecordSheet.read(
        Source.of("b.csv", "positions 0 name,positions 99 name\n".getBytes(UTF_8)),
        "frames",
        as(Kind.FRAME, Frame.class),
        problems);
    assertThat(problems.sorted().stream().map(Problem::text).filter(text -> text.contains("count")))
        .containsExactly(
            "column A \"positions 0 name\" must count from 1 to 50, but has 0.",
            "column B \"positions 99 name\" must count from 1 to 50, but has 99.");
  }

  /** Every column that is offered is understood, and as the field it was made from. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void understandsEveryTitleItOffers(Kind kind) {
    var titles = RecordSheet.titles(kind.listName());
    var problems = new Problems();
    var text = CsvText.of(titles, List.of()).getBytes(UTF_8);
    RecordSheet.read(
        Source.of("t.csv", text), kind.listName(), as(kind, kind.recordClass()), problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(titles).doesNotHaveDuplicates();
  }

  /** A catalogue written as a spreadsheet and read again is the same catalogue, whatever its fields. */
  @ParameterizedTest
  @EnumSource(Kind.class)
  void readsEveryShippedPartFromASpreadsheet(Kind kind) {
    var shipped = Shipped.CATALOG.ofKind(kind);
    var rows = new ArrayList<Map<String, Object>>();
    for (var part : shipped) {
      var cells = new LinkedHashMap<String, Object>();
      flatten("", JsonMapper.shared().readTree(JsonText.of(part)), cells);
      rows.add(cells);
    }
    var paths = new TreeSet<String>();
    rows.forEach(row -> paths.addAll(row.keySet()));
    var columns = List.copyOf(paths);
    var text = CsvText.of(
        columns.stream().map(RecordSheetTest::fromOne).toList(),
        rows.stream()
            .map(row ->
                columns.stream().<Object>map(path -> row.getOrDefault(path, "")).toList())
            .toList());
    var problems = new Problems();
    var read = RecordSheet.read(
        Source.of("all.csv", text.getBytes(UTF_8)),
        kind.listName(),
        as(kind, kind.recordClass()),
        problems);
    assertThat(problems.sorted()).isEmpty();
    // What was assumed is no cell: a list without one is the empty list that the class has here.
    assertThat(read.stream().map(entry -> stated(entry.value())))
        .containsExactlyElementsOf(shipped.stream().map(RecordSheetTest::stated).toList());
  }

  private static String stated(Part part) {
    return PartCopy.with(part, Map.of("assumed", List.of())).toString();
  }

  @Test
  void namesMetricScrewsAsTheTradeDoes() {
    var problems = new Problems();
    var text = """
        id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,thread,length (mm),material,source
        x,y,z,1,bag,20,0.4,maker,M3,8,steel,sheet
        """;
    var read = RecordSheet.read(
        Source.of("s.csv", text.getBytes(UTF_8)), "screws", as(Kind.SCREW, Screw.class), problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(read.get(0).value().lengthMillimetres()).isEqualTo(8);
  }

  private static final String MOTORS =
      "id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,stator diameter (mm),stator height (mm),speed constant (rpm/V),speed constant reading,resistance (mΩ),resistance reading,no load current (A),no load (V),cells from,cells to,bolt circles (mm),bolt circles needed,screw count,screw,propeller seat,bell diameter (mm),height (mm),leads included (mm),lead gauge,figures,source\n";

  private static Read<Motor> motor(String circles, String needed) {
    var row =
        "x,y,z,15,each,1,10,maker,14,4,3000,label,150,winding,0.6,10,2,4,%s,%s,4,M2,screws-1.5mm,19,15,0,26,maker,sheet\n"
            .formatted(circles, needed);
    var problems = new Problems();
    var entries = RecordSheet.read(
        Source.of("m.csv", (MOTORS + row).getBytes(UTF_8)),
        "motors",
        as(Kind.MOTOR, Motor.class),
        problems);
    return new Read<>(entries, problems.sorted().stream().map(Problem::toString).toList());
  }

  /** Patterns of which one is enough, in mm. */
  @Test
  void takesAMotorDrilledTwiceForNoPair() {
    assertThat(patterns("9; 12", "either")).containsExactly(List.of(9.0), List.of(12.0));
    assertThat(patterns("16; 19", "both")).containsExactly(List.of(16.0, 19.0));
    assertThat(patterns("12", "")).containsExactly(List.of(12.0));
    assertThat(patterns("", "")).isEmpty();
  }

  private static List<List<Double>> patterns(String circles, String needed) {
    var read = motor(circles, needed);
    assertThat(read.problems).isEmpty();
    return read.entries.get(0).value().boltPatterns();
  }

  @Test
  void asksWhichOfTheTwoSeveralBoltCirclesAre() {
    assertThat(motor("9; 12", "").problems)
        .containsExactly(
            "m.csv:2: row 2, column S \"bolt circles (mm)\", is \"9; 12\": boltCirclesMillimetres must be no more than one where boltCirclesNeeded is left out, but is 9, 12. Maybe boltCirclesNeeded is both (one pattern of two distances, such as 16 by 19 mm) or either (drilled for each by itself, such as 9 by 9 and 12 by 12 mm).");
    assertThat(motor("9", "either").problems)
        .containsExactly(
            "m.csv:2: row 2, column T \"bolt circles needed\", is \"either\": boltCirclesNeeded must be left out unless there are several boltCirclesMillimetres, but is given. Maybe a bolt circle is missing.");
    assertThat(motor("9; 12", "any").problems)
        .containsExactly(
            "m.csv:2: row 2, column T \"bolt circles needed\", is \"any\": boltCirclesNeeded must be both or either, but is the text \"any\".");
  }

  private static String fromOne(String path) {
    return Pattern.compile("\\[([0-9]+)]")
        .matcher(path)
        .replaceAll(match -> "[" + (Integer.parseInt(match.group(1)) + 1) + "]");
  }

  private static void flatten(String path, JsonNode node, Map<String, Object> cells) {
    if (node.isObject()) {
      node.properties()
          .forEach(field -> flatten(
              path.isEmpty() ? field.getKey() : path + "." + field.getKey(),
              field.getValue(),
              cells));
    } else if (node.isArray() && node.size() > 0 && node.get(0).isObject()) {
      for (var i = 0; i < node.size(); i++) {
        flatten(path + "[" + i + "]", node.get(i), cells);
      }
    } else if (node.isArray() && node.size() > 0) {
      var values = new ArrayList<String>();
      node.forEach(each -> values.add(each.asString()));
      cells.put(path, String.join("; ", values));
    } else if (!node.isArray()) {
      // A number keeps its sign: only texts are guarded against being run as formulas.
      cells.put(path, node.isFloatingPointNumber() ? (Object) node.doubleValue() : node.asString());
    }
  }
}
