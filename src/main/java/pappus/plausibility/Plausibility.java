package pappus.plausibility;

import java.util.List;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Camera;
import pappus.catalog.Frame;
import pappus.catalog.Gps;
import pappus.catalog.Motor;
import pappus.catalog.Part;
import pappus.catalog.PayloadCamera;
import pappus.catalog.Propeller;
import pappus.catalog.Receiver;
import pappus.catalog.Transmitter;

/** What is unusual about a part. */
public final class Plausibility {
  private Plausibility() {}

  /** One sentence for each figure outside its bounds; none for a part like others of its kind. */
  public static List<String> remarks(Part part) {
    return switch (part.kind()) {
      case FRAME -> FrameLaws.remarks((Frame) part);
      case MOTOR -> MotorLaws.remarks((Motor) part);
      case PROPELLER -> PropellerLaws.remarks((Propeller) part);
      case BATTERY -> BatteryLaws.remarks((Battery) part);
      case BOARD -> BoardLaws.remarks((Board) part);
      case TRANSMITTER -> VideoLaws.remarks((Transmitter) part);
      case CAMERA -> VideoLaws.remarks((Camera) part);
      case RECEIVER -> RadioLaws.remarks((Receiver) part);
      case GPS -> RadioLaws.remarks((Gps) part);
      case PAYLOAD_CAMERA -> VideoLaws.remarks((PayloadCamera) part);
      case ANTENNA, BUZZER, CAPACITOR, LEAD, SCREW, STRAP, ADAPTER, SUNDRY -> List.of();
    };
  }
}
