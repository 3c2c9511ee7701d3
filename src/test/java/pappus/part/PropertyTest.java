package pappus.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pappus.files.Shown;
import pappus.files.json.SchemaFields;
import pappus.shop.SmallShop;

class PropertyTest {
  /** As {@code describe} names them: all but objects, which hold no value. */
  @ParameterizedTest
  @EnumSource
  void theFieldsOfARoleAreThoseOfItsSchema(Role role) {
    var kind =
        Role.ANTENNAS.contains(role) ? Kind.ANTENNA : Kind.ofKey(role.key()).orElseThrow();
    var values = SchemaFields.of(kind.listName()).stream()
        .filter(field -> !field.type().endsWith("object"))
        .map(SchemaFields.Field::path)
        .toList();

    assertThat(Property.of(role).keySet()).containsExactlyElementsOf(values);
  }

  @ParameterizedTest
  @EnumSource
  void theirTypesAreThoseOfTheSchema(Role role) {
    var kind =
        Role.ANTENNAS.contains(role) ? Kind.ANTENNA : Kind.ofKey(role.key()).orElseThrow();

    assertThat(SchemaFields.of(kind.listName()).stream()
            .filter(field -> !field.type().endsWith("object")))
        .allSatisfy(field -> {
          var property = Property.of(role, field.path()).orElseThrow();
          assertThat(field.type().replace("list of ", ""))
              .isEqualTo(
                  switch (property.type()) {
                    case NUMBER -> "number";
                    case WHOLE_NUMBER -> "whole number";
                    case TEXT -> "text";
                    case TRUTH -> "true or false";
                    case WORD -> Shown.choice(property.words());
                  });
        });
  }

  @Test
  void aListSaysEachOfItsElements() {
    assertThat(said("glowmoss-100", Role.TRANSMITTER, "powers[].milliwatts").values())
        .hasSizeGreaterThan(1)
        .allSatisfy(value -> assertThat(value).isInstanceOf(BigDecimal.class));
    assertThat(said("glowmoss-100", Role.TRANSMITTER, "powers.milliwatts"))
        .isEqualTo(said("glowmoss-100", Role.TRANSMITTER, "powers[].milliwatts"));
  }

  @Test
  void whatIsBuiltInSaysWhatTheWholeSaysOfIt() {
    var board = (Board) part("culvert-6-whole");

    assertThat(said("culvert-6-whole", Role.RECEIVER, "link").values())
        .containsExactly(Objects.requireNonNull(board.receiver()).link());
    assertThat(said("culvert-6-whole", Role.TRANSMITTER, "family").values())
        .containsExactly(Objects.requireNonNull(board.transmitter()).family());
    assertThat(said("culvert-6-whole", Role.RADIO_ANTENNA, "band").values()).hasSize(1);
    assertThat(said("lumfret-sprig", Role.CAMERA, "widthMillimetres").values()).hasSize(1);
    assertThat(said("lumfret-sprig", Role.VIDEO_ANTENNA, "polarisation").values())
        .containsExactly("right");
    assertThat(said("culvert-6-whole", Role.RADIO_ANTENNA, "gainDbi").values()).hasSize(1);
  }

  @Test
  void whatIsBuiltInIsMadeByWhoMakesTheWhole() {
    assertThat(said("culvert-6-whole", Role.RECEIVER, "maker").values())
        .containsExactly(part("culvert-6-whole").maker());
  }

  @Test
  void whatTheWholeDoesNotSayOfItIsNotKnown() {
    for (var unknown : List.of(
        said("culvert-6-whole", Role.RECEIVER, "mass.grams"),
        said("culvert-6-whole", Role.RADIO_ANTENNA, "mass.grams"),
        said("culvert-12", Role.BUZZER, "mass.grams"))) {
      assertThat(unknown.values()).isEmpty();
      assertThat(unknown.isComplete()).isFalse();
    }
  }

  /** Every role that some part brings along is asked for in that part's record, or nowhere. */
  @Test
  void everyBuiltInPartIsFound() {
    var built = SmallShop.all().parts().stream()
        .flatMap(part ->
            part.fills().stream().skip(1).map(role -> Stream.of(part, role).toList()))
        .toList();

    assertThat(built).isNotEmpty();
    for (var one : built) {
      var part = (Part) one.get(0);
      var role = (Role) one.get(1);
      var field = Role.ANTENNAS.contains(role)
          ? "band"
          : role == Role.RECEIVER ? "link" : role == Role.BUZZER ? "maker" : "family";
      assertThat(Property.of(role, field).orElseThrow().in(part, role).values())
          .as("%s of %s", role, part.id())
          .isNotEmpty();
    }
  }

  @Test
  void anAssumedFactIsNotKnown() {
    var motor = (Motor) part("cypsela-1404-2800");
    var stated = Property.of(Role.MOTOR, "resistanceMilliohms").orElseThrow();
    var assumed = Parts.with(
        motor,
        "assumed",
        List.of(new Assumed(
            "resistanceMilliohms", "winding resistance", "226 mΩ", 0.3, "stator and Kv")));

    assertThat(stated.in(motor, Role.MOTOR).isComplete()).isTrue();
    assertThat(stated.in(assumed, Role.MOTOR)).isEqualTo(new Property.Said(List.of(), false));
  }

  /** Of a list one element may be assumed, or a whole object. */
  @Test
  void whatStandsWithinAnAssumedFactIsNotKnownEither() {
    var sender = (Transmitter) part("glowmoss-100");
    var first = Parts.with(
        sender,
        "assumed",
        List.of(new Assumed("powers[0].watts", "draw", "1 W", 0.2, "its power")));
    var watts = Property.of(Role.TRANSMITTER, "powers[].watts").orElseThrow();

    assertThat(watts.in(first, Role.TRANSMITTER).isComplete()).isFalse();
    assertThat(watts.in(first, Role.TRANSMITTER).values())
        .hasSize(sender.powers().size() - 1);
    var whole = Parts.with(
        sender, "assumed", List.of(new Assumed("antenna", "port", "U.FL", 0, "its class")));
    assertThat(Property.of(Role.TRANSMITTER, "antenna.band")
            .orElseThrow()
            .in(whole, Role.TRANSMITTER)
            .values())
        .isEmpty();
  }

  private static Property.Said said(String id, Role role, String path) {
    return Property.of(role, path).orElseThrow().in(part(id), role);
  }

  private static Part part(String id) {
    return SmallShop.all().part(id).orElseThrow();
  }
}
