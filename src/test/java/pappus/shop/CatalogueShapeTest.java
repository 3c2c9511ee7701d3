package pappus.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import pappus.part.Antenna;
import pappus.part.AntennaConnector;
import pappus.part.AntennaPort;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Camera;
import pappus.part.Chemistry;
import pappus.part.Connector;
import pappus.part.Frame;
import pappus.part.Kind;
import pappus.part.Lead;
import pappus.part.Motor;
import pappus.part.Motor.CirclesNeeded;
import pappus.part.Part;
import pappus.part.Receiver;
import pappus.part.Sale.Unit;
import pappus.part.Screw;
import pappus.part.Sundry;
import pappus.part.Transmitter;
import pappus.part.VideoSender;

/** How many there are of each kind, what they are called, and that nothing lacks its counterpart. */
final class CatalogueShapeTest {
  private static Stream<Part> parts() {
    return Stream.of(Kind.values()).flatMap(kind -> of(kind).stream());
  }

  private static List<Part> of(Kind kind) {
    return CommittedCatalogueTest.committed(kind);
  }

  private static long count(Kind kind) {
    return of(kind).size();
  }

  @Test
  void thereIsEnoughOfEveryKindToChooseFrom() {
    assertThat(count(Kind.FRAME)).isEqualTo(40);
    assertThat(count(Kind.MOTOR)).isEqualTo(129);
    assertThat(count(Kind.PROPELLER)).isEqualTo(120);
    assertThat(count(Kind.BATTERY)).isEqualTo(147);
    assertThat(count(Kind.BOARD)).isEqualTo(34);
    assertThat(count(Kind.TRANSMITTER)).isEqualTo(30);
    assertThat(count(Kind.CAMERA)).isEqualTo(30);
    assertThat(count(Kind.RECEIVER)).isEqualTo(24);
    assertThat(count(Kind.ANTENNA)).isEqualTo(30);
    assertThat(count(Kind.GPS)).isEqualTo(10);
    assertThat(count(Kind.BUZZER)).isEqualTo(8);
    assertThat(count(Kind.PAYLOAD_CAMERA)).isEqualTo(11);
    assertThat(count(Kind.CAPACITOR)).isEqualTo(10);
    assertThat(count(Kind.LEAD)).isEqualTo(25);
    assertThat(count(Kind.SCREW)).isGreaterThan(35);
    assertThat(count(Kind.STRAP)).isEqualTo(10);
    assertThat(count(Kind.ADAPTER)).isEqualTo(14);
    assertThat(count(Kind.SUNDRY)).isEqualTo(14);
  }

  @Test
  void everyIdIsUniqueOverAllKindsAndComesFromTheName() {
    assertThat(parts().map(Part::id)).doesNotHaveDuplicates();
    assertThat(parts()).allSatisfy(part -> assertThat(part.id()).isEqualTo(Shelf.id(part.name())));
  }

  @Test
  void filesAreInTheOrderOfIds() {
    assertThat(Kind.values())
        .allSatisfy(kind -> assertThat(of(kind).stream().map(Part::id).toList()).isSorted());
  }

  @Test
  void textsAreCleanAndReadable() {
    assertThat(parts().flatMap(part -> Stream.of(part.name(), part.maker(), part.source())))
        .allSatisfy(
            text -> assertThat(text).doesNotContainPattern("\\p{Cntrl}").isEqualTo(text.strip()));
    assertThat(parts().map(Part::source)).allMatch(source -> source.endsWith("."));
  }

  @Test
  void sourcesAndFiguresAreOfManyKinds() {
    assertThat(parts().map(Part::source).distinct().count()).isGreaterThan(100);
    assertThat(parts().map(part -> part.mass().grams()).distinct().count()).isGreaterThan(200);
    assertThat(parts().map(part -> part.price().cents()).distinct().count()).isGreaterThan(80);
    assertThat(parts().map(part -> part.mass().known()).distinct().count()).isEqualTo(3);
  }

  @Test
  void screwsComeInBagsAndCamerasWithTheirTransmitterInKits() {
    assertThat(of(Kind.SCREW)).allMatch(part -> part.sold().unit() == Unit.BAG);
    assertThat(of(Kind.TRANSMITTER).stream().map(Transmitter.class::cast))
        .allMatch(part -> (part.camera() != null) == (part.sold().unit() == Unit.KIT));
  }

  @Test
  void everyAntennaPortFindsAnAntenna() {
    assertThat(ports())
        .allSatisfy(port -> assertThat(of(Kind.ANTENNA).stream().map(Antenna.class::cast))
            .anyMatch(antenna ->
                antenna.connector() == port.connector() && antenna.band() == port.band()));
  }

  private static Stream<AntennaPort> ports() {
    return parts().flatMap(part -> {
      if (part instanceof Transmitter transmitter && !transmitter.antennaIncluded()) {
        return Stream.of(transmitter.antenna());
      }
      if (part instanceof Receiver receiver && !receiver.antennaFixed()) {
        return Stream.of(receiver.antenna());
      }
      if (part instanceof Board board) {
        var receiver = board.receiver();
        var transmitter = board.transmitter();
        return Stream.concat(
            receiver == null || receiver.antennaFixed()
                ? Stream.empty()
                : Stream.of(receiver.antenna()),
            transmitter == null ? Stream.empty() : Stream.of(transmitter.antenna()));
      }
      return Stream.empty();
    });
  }

  @Test
  void everyPlugOfAPackGoesOntoBarePadsAndXt30Boards() {
    var leads = of(Kind.LEAD).stream().map(Lead.class::cast).toList();
    assertThat(of(Kind.BATTERY).stream()
            .map(Battery.class::cast)
            .map(Battery::connector)
            .distinct())
        .allSatisfy(plug -> {
          assertThat(leads)
              .anyMatch(lead -> lead.boardSide() == null && lead.batterySide() == plug);
          if (plug != Connector.XT30) {
            assertThat(leads)
                .anyMatch(lead -> lead.boardSide() == Connector.XT30 && lead.batterySide() == plug);
          }
        });
  }

  @Test
  void everyVideoFamilyHasTransmittersAndCameras() {
    var transmitting =
        of(Kind.TRANSMITTER).stream().map(part -> ((Transmitter) part).family()).distinct();
    var filming = of(Kind.CAMERA).stream()
        .map(part -> ((Camera) part).family())
        .distinct()
        .toList();
    assertThat(transmitting)
        .containsExactlyInAnyOrderElementsOf(filming)
        .contains(VideoSender.ANALOGUE, Video.LUMFRET, Video.OSTRALINE, Video.VELLIMAR)
        .hasSize(4);
  }

  @Test
  void everyRadioLinkHasSeveralReceivers() {
    assertThat(of(Kind.RECEIVER).stream().map(part -> ((Receiver) part).link()))
        .contains(Radio.THRENNEL, Radio.CALLOWHIT, Radio.MURRELODE, Radio.SANDRIGAL)
        .hasSize(24);
  }

  @Test
  void everySundryPurposeHasAtLeastTwo() {
    assertThat(Sundry.Purpose.values())
        .allSatisfy(purpose -> assertThat(
                of(Kind.SUNDRY).stream().filter(part -> ((Sundry) part).purpose() == purpose))
            .hasSizeGreaterThanOrEqualTo(2));
  }

  @Test
  void motorsDrilledTwiceGoOntoArmsOfEitherCircle() {
    var twice = of(Kind.MOTOR).stream()
        .map(Motor.class::cast)
        .filter(motor -> motor.boltCirclesNeeded() == CirclesNeeded.EITHER)
        .toList();

    assertThat(twice)
        .hasSize(9)
        .allSatisfy(motor -> assertThat(motor.boltCirclesMillimetres()).containsExactly(9.0, 12.0));
    assertThat(of(Kind.FRAME).stream().map(Frame.class::cast))
        .anyMatch(frame -> drilledFor(frame, 9) && !drilledFor(frame, 12))
        .anyMatch(frame -> drilledFor(frame, 12) && !drilledFor(frame, 9));
  }

  private static boolean drilledFor(Frame frame, double circle) {
    return frame.motorBoltCirclesMillimetres().stream()
        .anyMatch(span -> span.fromMillimetres() <= circle && circle <= span.toMillimetres());
  }

  @Test
  void boardsForOneCellStandAFullHighVoltageOneAndNoTwo() {
    assertThat(of(Kind.BOARD).stream()
            .map(Board.class::cast)
            .filter(board -> board.input().highVolts() < 2 * Chemistry.LIPO.fullVolts()))
        .hasSize(4)
        .allMatch(board -> board.input().highVolts() > Chemistry.LIHV.fullVolts())
        .anyMatch(board -> board.input().lowVolts() <= Chemistry.LI_ION_ENERGY.floorVolts());
  }

  @Test
  void consumablesServeSeveralBuilds() {
    var serving = of(Kind.SUNDRY).stream()
        .map(Sundry.class::cast)
        .filter(sundry -> sundry.serves() != null)
        .toList();

    assertThat(serving).extracting(Sundry::serves).contains(25).allMatch(builds -> builds > 1);
    assertThat(serving)
        .extracting(Sundry::purpose)
        .contains(Sundry.Purpose.SOLDER_AND_TIES, Sundry.Purpose.BATTERY_PAD);
  }

  /** A label behind a plug that cannot pass it, a rail that ends early, threads that few screws fit. */
  @Test
  void whatIsSmallHasItsTrapsToo() {
    var pack = one(Kind.BATTERY, "driblet-1s-850", Battery.class);
    assertThat(Objects.requireNonNull(pack.labelRating()) * pack.capacityMilliampHours() / 1000)
        .isGreaterThan(5 * pack.connector().burstAmps());
    var board = one(Kind.BOARD, "runlet-12-one", Board.class);
    assertThat(board.regulators())
        .allMatch(rail -> rail.needsVolts() > Chemistry.LIPO.floorVolts() + 0.5);
    assertThat(board.input().lowVolts()).isLessThan(Chemistry.LIPO.floorVolts());
    var motor = one(Kind.MOTOR, "tansy-1504-2500", Motor.class);
    assertThat(of(Kind.SCREW).stream().map(Screw.class::cast))
        .filteredOn(screw -> screw.thread() == motor.screw())
        .extracting(Screw::lengthMillimetres)
        // On arms of 2, 3, 4 and 5 mm.
        .noneMatch(length -> length % 1 >= 0.5 && length % 1 <= 0.6);
    assertThat(motor.threadDepthMillimetres()).isEqualTo(1.6);
    assertThat(List.of(pack, board, motor))
        .allMatch(part -> part.source().matches(".*(plug decides|gone below|thin base).*"));
  }

  private static <P extends Part> P one(Kind kind, String id, Class<P> record) {
    return of(kind).stream()
        .filter(part -> part.id().equals(id))
        .map(record::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void builtInPartsAreOffered() {
    var boards = of(Kind.BOARD).stream().map(Board.class::cast).toList();
    assertThat(boards.stream().filter(board -> board.receiver() != null)).hasSizeGreaterThan(4);
    assertThat(boards.stream().filter(board -> board.transmitter() != null)).hasSizeGreaterThan(2);
    assertThat(boards.stream().filter(board -> board.plug() != null)).hasSizeGreaterThan(5);
    assertThat(boards.stream().filter(board -> board.plug() == null)).hasSizeGreaterThan(10);
  }

  @Test
  void lookalikeAntennaPlugsAreOnTheShelf() {
    assertThat(of(Kind.ANTENNA).stream().map(part -> ((Antenna) part).connector()))
        .contains(AntennaConnector.values());
  }
}
