package pappus.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pappus.catalog.CatalogFolder;
import pappus.catalog.CatalogReader;
import pappus.catalog.ReadCatalog;
import pappus.part.Camera;
import pappus.part.CameraView;
import pappus.part.Frame;
import pappus.part.Motor;
import pappus.part.Propeller;
import pappus.part.Strap;
import tools.jackson.databind.json.JsonMapper;

/** The command {@code import}. */
class ImportCommandTest {
  private static final String TITLES =
      "id,maker,name,price (EUR),sold unit,sold pieces,mass (oz),mass known,width (mm),length (in),source\n";
  private static final String REED = "reed-16,Ousel,Reed,2.50,each,1,0.1,measured,16,8,my scale\n";

  @TempDir
  private Path folder;

  private CommandRun straps(String csv, String... options) throws IOException {
    var file =
        CommandRun.typed(Files.writeString(folder.resolve("straps.csv"), csv)).toString();
    var args = new ArrayList<>(List.of(
        "import",
        file,
        "--kind",
        "strap",
        "--into",
        CommandRun.typed(folder.resolve("mine")).toString()));
    args.addAll(List.of(options));
    return CommandRun.of(args);
  }

  private ReadCatalog mine() {
    return CatalogReader.read(List.of(CatalogFolder.of(folder.resolve("mine"))));
  }

  @Test
  void writesRecordsThatTheCatalogueTakes() throws IOException {
    var run = straps(TITLES + REED);
    assertThat(run.exitCode()).isZero();
    assertThat(run.out()).endsWith("/mine/straps.json: 1 added: reed-16.\n");
    var strap = mine().catalog().part("reed-16", Strap.class).orElseThrow();
    assertThat(strap.mass().grams()).isEqualTo(2.8349523125);
    assertThat(strap.lengthMillimetres()).isEqualTo(203.2);
    assertThat(strap.price().cents()).isEqualTo(250);
  }

  /** What a camera sees, where a frame holds it and its discs, and what frames are ordered with, in cells of their own. */
  @Test
  void takesWhatCamerasSeeAndWhatFramesAreOrderedWith() throws IOException {
    var cameras = imported("camera", """
        id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,family,width (mm),least inner height (mm),cable (mm),power (W),input low (V),input high (V),view horizontal degrees,view vertical degrees,view tilt degrees,view height (mm),source
        wren,Ousel,Wren,20,each,1,2.1,measured,analogue,14,16,0,0.5,3.5,5.5,125,75,-5,1.5,my bench
        finch,Ousel,Finch,21,each,1,2.2,measured,analogue,14,16,0,0.5,3.5,5.5,100,60,,,my bench
        blind,Ousel,Blind,22,each,1,2.2,measured,analogue,14,16,0,0.5,3.5,5.5,,,,,my bench
        """);
    assertThat(cameras.exitCode()).isZero();
    assertThat(mine().catalog().ofKind(Camera.class))
        .extracting(Camera::view)
        .containsExactly(
            null, new CameraView(100, 60, null, null), new CameraView(125, 75, -5.0, 1.5));

    var frames = imported("frame", """
        id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,front spacing (mm),side spacing (mm),arm thickness (mm),arm width root,arm width tip,largest propeller (in),motor bolt circles 1 from (mm),motor bolt circles 1 to (mm),positions 1 name,positions 1 x (mm),positions 1 patterns 1 pattern,positions 1 patterns 1 hole (mm),positions 1 patterns 1 turned,positions 1 open,heights 1 length (mm),heights 1 added (g),heights 2 length (mm),heights 2 added (g),heights 2 price (EUR),camera widths (mm),camera x (mm),camera height (mm),disc height (mm),bay place,bay width (mm),bay rear x (mm),bay front x (mm),bay strap width (mm),centre of mass x (mm),options 1 id,options 1 name,options 1 added (g),options 1 price (EUR),source
        sedge,Ousel,Sedge,40,each,1,38,measured,130,130,2.5,8,6,4,12,12,middle,0,20x20,2.2,false,false,20,0,28,1,2.5,14,55,-4,-12.5,top,40,-50,50,20,0,lite,lite top plate,-3,6,my drawing
        """);
    assertThat(frames.exitCode()).isZero();
    var ordered = mine().catalog().ofKind(Frame.class);
    assertThat(ordered)
        .extracting(frame ->
            frame.id() + " " + frame.mass().grams() + " " + frame.price().cents())
        .containsExactly(
            "sedge 38.0 4000",
            "sedge.28mm 38.0 4250",
            "sedge.lite 35.0 4600",
            "sedge.lite.28mm 35.0 4850");
    assertThat(ordered).allSatisfy(frame -> {
      assertThat(frame.cameraHeightMillimetres()).isEqualTo(-4);
      assertThat(frame.discHeightMillimetres()).isEqualTo(-12.5);
    });

    assertThat(imported("camera", """
                id,maker,name,price (EUR),sold unit,sold pieces,mass (g),mass known,family,width (mm),least inner height (mm),cable (mm),power (W),input low (V),input high (V),view horizontal degrees,view vertical degrees,source
                owl,Ousel,Owl,20,each,1,2.1,measured,analogue,14,16,0,0.5,3.5,5.5,200,75,my bench
                """).errors())
        .singleElement()
        .asString()
        .contains("camera.csv:2: ", "view horizontal degrees", "must be from 20 to 180");
  }

  private CommandRun imported(String kind, String csv) throws IOException {
    var file = CommandRun.typed(Files.writeString(folder.resolve(kind + ".csv"), csv));
    return CommandRun.of(
        "import",
        file.toString(),
        "--kind",
        kind,
        "--into",
        CommandRun.typed(folder.resolve("mine")).toString());
  }

  @Test
  void keepsWhatTheFolderHeldAndReplacesById() throws IOException {
    straps(TITLES + REED);
    var run = straps(
        TITLES + REED.replace("0.1", "0.2") + REED.replace("reed-16", "rush-16"),
        "--format",
        "json");
    assertThat(run.json().get("status").asString()).isEqualTo("written");
    assertThat(run.json().get("added").toString()).isEqualTo("[\"rush-16\"]");
    assertThat(run.json().get("replaced").toString()).isEqualTo("[\"reed-16\"]");
    assertThat(mine().catalog().ids()).containsExactly("reed-16", "rush-16");
    assertThat(mine().catalog().part("reed-16").orElseThrow().mass().grams())
        .isEqualTo(5.669904625);
  }

  @Test
  void writesNothingWhereOneCellIsWrong() throws IOException {
    var run = straps(TITLES + REED + REED.replace("reed-16", "rush-16").replace(",16,", ",1e1,"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.errors()).hasSize(1);
    assertThat(run.err())
        .contains(
            "straps.csv:3: row 3, column I \"width (mm)\", must be a plain number such as 12.5, but is \"1e1\".");
    assertThat(folder.resolve("mine")).doesNotExist();
  }

  @Test
  void answersInJsonWhereACellIsWrong() throws IOException {
    var run = straps(TITLES + REED.replace(",16,", ",wide,"), "--format", "json");
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.json().get("status").asString()).isEqualTo("bad-data");
  }

  @Test
  void refusesAnIdThatStandsTwice() throws IOException {
    var run = straps(TITLES + REED + REED);
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .endsWith("straps.csv:3: row 3: id must be there once, but reed-16 is in row 2 too.\n");
  }

  @Test
  void refusesAnIdOfAnotherKindInTheFolder() throws IOException {
    var mine = Files.createDirectories(folder.resolve("mine"));
    var buzzers = JsonMapper.shared()
        .readTree(Files.readString(Path.of("catalog/buzzers.json")))
        .get("buzzers")
        .get(0);
    Files.writeString(mine.resolve("buzzers.json"), "{\"buzzers\": [" + buzzers + "]}");
    var id = buzzers.get("id").asString();
    var run = straps(TITLES + REED.replace("reed-16", id));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_DATA);
    assertThat(run.err())
        .contains("row 2: id must be new or that of another strap, but " + id + " is a buzzer in ");
    assertThat(mine.resolve("straps.json")).doesNotExist();
  }

  @Test
  void leavesAFileOfAnotherHandAlone() throws IOException {
    straps(TITLES + REED);
    var file = folder.resolve("mine/straps.json");
    var edited = Files.readString(file).replace("my scale", "my other scale");
    Files.writeString(file, edited);
    var rush = TITLES + REED.replace("reed-16", "rush-16");
    assertThat(straps(rush).exitCode()).isEqualTo(ExitCode.CANNOT_CREATE);
    assertThat(file).hasContent(edited);
    assertThat(straps(rush, "--force").exitCode()).isZero();
    assertThat(mine().catalog().part("reed-16").orElseThrow().source()).isEqualTo("my other scale");
  }

  @Test
  void refusesAFileWithoutRowsAndAFileThatIsMissing() throws IOException {
    assertThat(straps(TITLES).err())
        .endsWith("straps.csv: must have a row for each record, but has none.\n");
    var run = CommandRun.of("import", "no.csv", "--kind", "strap", "--into", folder.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.NO_INPUT);
  }

  @Test
  void refusesAKindThatIsNone() {
    var run = CommandRun.of("import", "a.csv", "--kind", "rope", "--into", folder.toString());
    assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    assertThat(run.err()).startsWith("--kind must be frame, motor, ").contains("but is \"rope\"; ");
  }

  @Test
  void takesTheLineThatDescribePrints() throws IOException {
    var titles = CommandRun.of("describe", "strap", "--columns").out();
    assertThat(titles).startsWith("id,maker,name,price (EUR),").endsWith(",source\n");
    var run = straps(titles + "reed-16,Ousel,Reed,2.50,each,1,2.8,measured,0.1,16,200,my scale\n");
    assertThat(run.exitCode()).isZero();
    assertThat(CommandRun.of("describe", "scenario", "--columns").exitCode())
        .isEqualTo(ExitCode.USAGE);
  }

  private static final String PAGE = """
      kind,name,price (EUR),weight,stator,KV,bolt pattern,propeller seat,size,blades,seats,note
      motor,Shop 1404 3800,14.90,9.3 g with 100 mm wire,1404,3800KV,9x9/12x12,screws-1.5mm,,,,
      propeller,Shop 4x2.5,3.90,2.1 g,,,,,4x2.5x2,,screws-1.5mm,seen on the page
      """;

  private CommandRun page(String... options) throws IOException {
    var file =
        CommandRun.typed(Files.writeString(folder.resolve("page.csv"), PAGE)).toString();
    var args = new ArrayList<>(List.of("import", file));
    args.addAll(List.of(options));
    return CommandRun.of(args);
  }

  @Test
  void oneFileHoldsAllKindsInTheWordsOfShops() throws IOException {
    var run = page("--into", CommandRun.typed(folder.resolve("mine")).toString());
    assertThat(run.err()).doesNotContain("page.csv");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out().lines())
        .hasSize(4)
        .anyMatch(
            line -> line.matches(
                "shop-1404-3800 makes builds possible, with [1-9][0-9]* of 40 as frame, .*: such as .*shop-1404-3800, .*"));
    // Of what could be built with before, nothing new is told.
    assertThat(page("--into", CommandRun.typed(folder.resolve("mine")).toString())
            .out()
            .lines())
        .hasSize(2)
        .allMatch(line -> line.contains("replaced"));
    var motor = mine().catalog().part("shop-1404-3800", Motor.class).orElseThrow();
    assertThat(motor.leadsIncludedMillimetres()).isEqualTo(100);
    assertThat(motor.boltPatterns()).hasSize(2);
    assertThat(motor.assumed("resistanceMilliohms")).isPresent();
    var propeller = mine().catalog().part("shop-4x2.5", Propeller.class).orElseThrow();
    assertThat(propeller.sold().pieces()).isEqualTo(4);
    assertThat(propeller.source()).isEqualTo("seen on the page");
    // What was assumed is worked out anew at each reading: it is no fact of the record.
    assertThat(Files.readString(folder.resolve("mine/motors.json")))
        .doesNotContain("resistance")
        .doesNotContain("assumed");
  }

  @Test
  void wordsOfAChoiceAreReadAsShopsPrintThem() throws IOException {
    var file = folder.resolve("page.csv");
    Files.writeString(file, """
        kind,name,price (EUR),weight,chemistry,cells,capacity (mAh),mass includes leads,connector,band
        Battery,Tin 2S 450,9.50,29 g,LiPo,2S,450,Yes,XT-30,
        Antenna,Twig,6.50,1.2 g,,,,,U.FL,5.8 GHz
        """);

    var run = CommandRun.of("import", CommandRun.typed(file).toString(), "--preview");

    assertThat(run.exitCode()).as(run.err()).isZero();
    assertThat(run.out())
        .contains("stated   chemistry: lipo\n")
        .contains("stated   connector: xt30\n")
        .contains("stated   connector: u.fl\n")
        .contains("stated   band: 5.8-ghz\n");
    Files.writeString(file, Files.readString(file).replace("LiPo", "lead"));
    assertThat(CommandRun.of("import", CommandRun.typed(file).toString(), "--preview")
            .err())
        .contains("row 2, column E \"chemistry\", is \"lead\": chemistry must be lipo, lihv,");
  }

  @Test
  void aPreviewWritesNothing() throws IOException {
    var run = page("--preview");
    assertThat(run.exitCode()).isZero();
    assertThat(run.out())
        .contains("shop-1404-3800, a motor\n")
        .contains("stated   statorDiameterMillimetres: 14\n")
        .contains("assumed  resistanceMilliohms: winding resistance ")
        .contains(", from stator and Kv\n");
    assertThat(folder.resolve("mine")).doesNotExist();
  }

  @Test
  void aFolderOrAPreviewMustBeAskedFor() throws IOException {
    assertThat(page().exitCode()).isEqualTo(ExitCode.USAGE);
  }
}
