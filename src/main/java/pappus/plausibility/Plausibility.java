package pappus.plausibility;

import java.util.List;
import pappus.catalog.Adapter;
import pappus.catalog.Antenna;
import pappus.catalog.Battery;
import pappus.catalog.Board;
import pappus.catalog.Buzzer;
import pappus.catalog.Camera;
import pappus.catalog.Capacitor;
import pappus.catalog.Frame;
import pappus.catalog.Gps;
import pappus.catalog.Lead;
import pappus.catalog.Motor;
import pappus.catalog.Part;
import pappus.catalog.PayloadCamera;
import pappus.catalog.Propeller;
import pappus.catalog.Receiver;
import pappus.catalog.Screw;
import pappus.catalog.Strap;
import pappus.catalog.Sundry;
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
      case ANTENNA -> SmallLaws.remarks((Antenna) part);
      case BUZZER -> SmallLaws.remarks((Buzzer) part);
      case CAPACITOR -> SmallLaws.remarks((Capacitor) part);
      case LEAD -> SmallLaws.remarks((Lead) part);
      case SCREW -> SmallLaws.remarks((Screw) part);
      case STRAP -> SmallLaws.remarks((Strap) part);
      case ADAPTER -> SmallLaws.remarks((Adapter) part);
      case SUNDRY -> SmallLaws.remarks((Sundry) part);
    };
  }
}
