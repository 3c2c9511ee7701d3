package pappus.evidence.prior;

import java.util.List;
import pappus.part.Adapter;
import pappus.part.Antenna;
import pappus.part.Battery;
import pappus.part.Board;
import pappus.part.Buzzer;
import pappus.part.Camera;
import pappus.part.Capacitor;
import pappus.part.Frame;
import pappus.part.Gps;
import pappus.part.Lead;
import pappus.part.Motor;
import pappus.part.Part;
import pappus.part.PayloadCamera;
import pappus.part.Propeller;
import pappus.part.Receiver;
import pappus.part.Screw;
import pappus.part.Strap;
import pappus.part.Sundry;
import pappus.part.Transmitter;

/** What is unusual about a part. */
public final class Plausibility {
  private Plausibility() {}

  /** One sentence for each figure outside its bounds; none for a part like others of its kind. */
  public static List<String> remarks(Part part) {
    return switch (part.kind()) {
      case FRAME -> FramePriors.remarks((Frame) part);
      case MOTOR -> MotorPriors.remarks((Motor) part);
      case PROPELLER -> PropellerPriors.remarks((Propeller) part);
      case BATTERY -> BatteryPriors.remarks((Battery) part);
      case BOARD -> BoardPriors.remarks((Board) part);
      case TRANSMITTER -> VideoPriors.remarks((Transmitter) part);
      case CAMERA -> VideoPriors.remarks((Camera) part);
      case RECEIVER -> RadioPriors.remarks((Receiver) part);
      case GPS -> RadioPriors.remarks((Gps) part);
      case PAYLOAD_CAMERA -> VideoPriors.remarks((PayloadCamera) part);
      case ANTENNA -> SmallPriors.remarks((Antenna) part);
      case BUZZER -> SmallPriors.remarks((Buzzer) part);
      case CAPACITOR -> SmallPriors.remarks((Capacitor) part);
      case LEAD -> SmallPriors.remarks((Lead) part);
      case SCREW -> SmallPriors.remarks((Screw) part);
      case STRAP -> SmallPriors.remarks((Strap) part);
      case ADAPTER -> SmallPriors.remarks((Adapter) part);
      case SUNDRY -> SmallPriors.remarks((Sundry) part);
    };
  }
}
