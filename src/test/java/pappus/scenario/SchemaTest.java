package pappus.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pappus.answers.calibration.CalibrationJson;
import pappus.answers.check.CheckJson;
import pappus.answers.check.ImportJson;
import pappus.answers.check.VerifyJson;
import pappus.answers.explain.ComparisonJson;
import pappus.answers.explain.WhyJson;
import pappus.answers.explain.WhyNotJson;
import pappus.answers.match.MatchJson;
import pappus.answers.match.MatrixJson;
import pappus.answers.offer.OfferJson;
import pappus.answers.order.OrderJson;
import pappus.answers.order.Unserved;
import pappus.answers.ranking.RankingJson;
import pappus.answers.result.Answer;
import pappus.answers.result.AssessedJson;
import pappus.answers.result.Document;
import pappus.answers.result.Refusal;
import pappus.answers.sheet.SheetJson;
import pappus.answers.swap.AlternativesJson;
import pappus.answers.weighing.WeighJson;
import pappus.answers.whatif.RelaxationJson;
import pappus.answers.whatif.SweepJson;
import pappus.catalog.SchemaWriter;
import pappus.catalog.Shelf;
import pappus.catalog.ShelfEntry;
import pappus.files.json.SchemaText;
import pappus.offer.Shop;
import pappus.offer.ShopSettings;
import pappus.order.Order;
import pappus.part.Flown;
import pappus.part.Kind;
import pappus.part.Lump;

/**
 * The schemas in the jar are those of the records. After a change of a record, write them again with
 * {@code mvn test -Dtest=SchemaTest -Dpappus.writeSchema=true}.
 */
class SchemaTest {
  private static final Path FOLDER = Path.of("src/main/resources/pappus/schema");

  @ParameterizedTest
  @MethodSource("names")
  void isThatOfTheRecord(String name) throws IOException {
    var fresh = fresh(name);
    var file = FOLDER.resolve(name + ".schema.json");
    if (Boolean.getBoolean("pappus.writeSchema")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, fresh);
    }

    assertThat(Files.readString(file)).isEqualTo(fresh);
  }

  @ParameterizedTest
  @MethodSource("names")
  void isInTheJar(String name) throws IOException {
    assertThat(SchemaText.of(name))
        .isEqualTo(Files.readString(FOLDER.resolve(name + ".schema.json")));
  }

  @Test
  void thereIsNoOther() throws IOException {
    try (var files = Files.list(FOLDER)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(
              names().map(name -> name + ".schema.json").toList());
    }
  }

  private static Stream<String> names() {
    return Stream.concat(
        Stream.of(Kind.values()).map(Kind::listName),
        Stream.concat(
            Stream.of(Shelf.NAME, Flown.NAME, Lump.LIST, "scenario", Shop.SCHEMA, Order.SCHEMA),
            Stream.of(Answer.values()).map(Answer::key)));
  }

  private static String fresh(String name) {
    var writer = new SchemaWriter();
    if (name.equals(Shelf.NAME)) {
      return writer.ofList(name, ShelfEntry.class);
    }
    if (name.equals(Flown.NAME)) {
      return writer.ofList(name, Flown.class);
    }
    if (name.equals(Lump.LIST)) {
      return writer.ofList(name, Lump.class);
    }
    if (name.equals(Shop.SCHEMA)) {
      return writer.ofRecord(name, ShopSettings.class);
    }
    if (name.equals(Order.SCHEMA)) {
      return writer.ofRecord(name, Order.class);
    }
    var answer = Answer.ofKey(name);
    if (answer.isPresent()) {
      return document(answer.get(), writer);
    }
    return name.equals("scenario")
        ? writer.ofRecord("scenario", Scenario.class)
        : Stream.of(Kind.values())
            .filter(kind -> kind.listName().equals(name))
            .map(kind -> writer.ofList(name, kind.recordClass()))
            .findFirst()
            .orElseThrow();
  }

  private static String document(Answer answer, SchemaWriter writer) {
    var record = switch (answer) {
      case RESULT -> RankingJson.class;
      case ASSESSMENT -> AssessedJson.class;
      case EXPLANATION -> WhyJson.class;
      case WHY_NOT -> WhyNotJson.class;
      case COMPARISON -> ComparisonJson.class;
      case ALTERNATIVES -> AlternativesJson.class;
      case RELAXATION -> RelaxationJson.class;
      case SWEEP -> SweepJson.class;
      case MATCHES -> MatchJson.class;
      case MATRIX -> MatrixJson.class;
      case WEIGHING -> WeighJson.class;
      case SHEET -> SheetJson.class;
      case OFFER -> OfferJson.class;
      case PLANNED_ORDER -> OrderJson.class;
      case UNSERVED_ORDER -> Unserved.Told.class;
      case CALIBRATION -> CalibrationJson.class;
      case CHECK -> CheckJson.class;
      case VERIFICATION -> VerifyJson.class;
      case IMPORTED -> ImportJson.class;
      case REFUSAL -> Refusal.class;
    };
    return switch (answer) {
      case MATCHES,
          MATRIX,
          OFFER,
          PLANNED_ORDER,
          UNSERVED_ORDER,
          CALIBRATION,
          CHECK,
          VERIFICATION,
          IMPORTED,
          REFUSAL -> writer.ofDocument(answer.key(), record);
      default -> writer.ofDocument(answer.key(), Document.class, record);
    };
  }
}
