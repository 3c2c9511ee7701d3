package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.answers.result.Answer;
import pappus.files.json.JsonText;
import pappus.files.json.SchemaText;
import pappus.shop.SmallShop;

/** What commands write for a machine is as its schema says. */
@Tag("slow")
class AnswerSchemaTest {
  private static final String BUILD = String.join(",", SmallShop.ONE_BUILD);

  private static final String HEADER =
      "motor_key,label_kv_rpm_per_v,propeller_key,supply_label_v,esc_pulse_us,thrust_gf,voltage_v,current_a,speed_rpm\n";

  private static final String STRAP = """
      id,maker,name,price (EUR),sold unit,sold pieces,mass (oz),mass known,width (mm),length (in),source
      reed-16,Ousel,Reed,2.50,each,1,0.1,measured,16,8,my scale
      """;

  private static final String SHOP = """
      {
        "shop": "Windlass Row",
        "address": ["3 Windlass Row"],
        "contact": ["knock twice"],
        "currency": "EUR",
        "tax": {"label": "sales tax", "percent": 20},
        "pricesIncludeTax": true,
        "validDays": 14,
        "spares": [{"role": "propeller", "units": 1}]
      }
      """;

  @TempDir
  private Path folder;

  private CommandRun onParts(String command, String... words) {
    return CommandRun.onParts(folder, command, List.of(words), "--format", "json");
  }

  private CommandRun run(String... words) {
    var args = new ArrayList<>(List.of(words));
    args.addAll(List.of("--format", "json"));
    return CommandRun.of(args);
  }

  private CommandRun fits(String... words) {
    var args = new ArrayList<>(List.of("fits"));
    args.addAll(List.of(words));
    args.addAll(List.of("--no-shipped-catalog", "--catalog", path("parts")));
    return run(args.toArray(String[]::new));
  }

  private CommandRun recommend() {
    return CommandRun.recommend(CommandRun.typed(folder), "--force", "--format", "json");
  }

  private CommandRun recommend(String flight, String fields) throws IOException {
    write("marsh.json", SmallShop.scenarioText(fields).replace("{\"style\": \"hover\"}", flight));
    return recommend();
  }

  /** In a folder of its own: other documents are made from the scenario as it is. */
  private CommandRun ofDraftFrame() throws IOException {
    var drafts = Files.createDirectory(folder.resolve("drafts"));
    var frame = JsonText.of(SmallShop.few().part("cottongrass-4").orElseThrow())
        .replace("cottongrass-4", "draft");
    CommandRun.write(drafts, SmallShop.few(), ", \"draftFrame\": " + frame.strip());
    return CommandRun.onParts(
        drafts, "vary", List.of("--over", "frame.mass=40,45"), "--format", "json");
  }

  private CommandRun order(String file) {
    return run(
        "order", file, "--out", path("out"), "--no-shipped-catalog", "--catalog", path("parts"));
  }

  private String write(String name, String text) throws IOException {
    Files.writeString(folder.resolve(name), text);
    return path(name);
  }

  private String path(String name) {
    return CommandRun.typed(folder).resolve(name).toString();
  }

  private Map<Answer, List<CommandRun>> written() throws IOException {
    var written = new EnumMap<Answer, List<CommandRun>>(Answer.class);
    var poor = ", \"budget\": {\"amount\": 170, \"currency\": \"EUR\"}";
    var course = "{\"style\": \"cruise\", \"windMetresPerSecond\": 4}";
    var far = recommend(course, ", \"goal\": \"range\"");
    var none = recommend("{\"style\": \"loiter\"}", poor);
    written.put(Answer.RELAXATION, List.of(onParts("relax")));
    written.put(Answer.REFUSAL, List.of(recommend("{\"style\": \"fly\"}", "")));
    written.put(Answer.RESULT, List.of(far, none, recommend("{\"style\": \"hover\"}", "")));
    var first = path("out/result.json") + "#1";
    var clashes = BUILD.replace("ligule-4x1.9x2", "awn-4.5x2.5x2");
    written.put(
        Answer.ASSESSMENT, List.of(onParts("assess", BUILD), onParts("assess", "cottongrass-4")));
    written.put(
        Answer.EXPLANATION, List.of(onParts("explain", BUILD), onParts("explain", clashes)));
    written.put(Answer.WHY_NOT, List.of(onParts("explain", BUILD, "--part", "newteye-14")));
    written.put(Answer.COMPARISON, List.of(onParts("compare", BUILD, clashes)));
    written.put(Answer.ALTERNATIVES, List.of(onParts("alternatives", BUILD, "--kind", "battery")));
    written.put(
        Answer.SWEEP,
        List.of(
            onParts("vary", "--over", "mass-cap=200:250:25"),
            onParts("vary", "--front"),
            ofDraftFrame()));
    written.put(Answer.MATCHES, List.of(fits("thistledown-5", "spikerush-1303-3400")));
    written.put(Answer.MATRIX, List.of(fits("cottongrass-4", "--matrix")));
    var masses = write("m.csv", "what,grams,pieces\nspikerush-1303-3400,18.4,4\ndry,84,\n");
    var flights = write("f.csv", "style,minutes,charged_mah\nhover,10,700\n");
    written.put(
        Answer.WEIGHING,
        List.of(onParts("weigh", first, "--masses", masses, "--flights", flights)));
    written.put(Answer.SHEET, List.of(run("sheet", first, "--out", path("out"))));
    var settings = write("shop.json", SHOP);
    var stock = write("stock.csv", "id,stock\nspikerush-1303-3400,1\n");
    written.put(
        Answer.OFFER,
        List.of(run(
            "offer",
            first,
            "--settings",
            settings,
            "--stock",
            stock,
            "--date",
            "2026-05-31",
            "--out",
            path("out"))));
    var order = write("order.json", """
        {"name": "fens", "budget": 900, "groups": [{"name": "reed", "scenario": "marsh.json", "pieces": 1}]}""");
    written.put(Answer.PLANNED_ORDER, List.of(order(order)));
    var unserved = write("poor.json", """
        {"name": "fens", "budget": 20, "groups": [{"name": "reed", "scenario": "marsh.json", "pieces": 1}]}""");
    written.put(Answer.UNSERVED_ORDER, List.of(order(unserved)));
    var rows = write(
        "rows.csv",
        HEADER + "a,2600,b,11.1,1500,100,11,2.5,9000\na,2600,b,11.1,1200,-1.5,11,0.5,3000\n");
    written.put(Answer.CALIBRATION, List.of(run("calibrate", rows, "--against", rows)));
    written.put(
        Answer.CHECK, List.of(run("check", "--no-shipped-catalog", path("parts"), settings)));
    written.put(Answer.VERIFICATION, List.of(run("verify", path("out/result.json"))));
    written.put(
        Answer.IMPORTED,
        List.of(
            run("import", write("straps.csv", STRAP), "--kind", "strap", "--into", path("mine"))));
    return written;
  }

  private static List<String> faults(Answer answer, String document) {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(SchemaText.of(answer.key()), InputFormat.JSON)
        .validate(document, InputFormat.JSON)
        .stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  @Test
  void everyDocumentIsAsItsSchemaSays() throws IOException {
    CommandRun.write(folder, SmallShop.few(), "");
    var written = written();

    assertThat(written.keySet()).containsExactly(Answer.values());
    var faults = new ArrayList<String>();
    written.forEach((answer, runs) -> runs.forEach(run -> faults(answer, run.out())
        .forEach(fault -> faults.add(answer.key() + fault + " " + run.err()))));
    assertThat(faults).isEmpty();
  }
}
