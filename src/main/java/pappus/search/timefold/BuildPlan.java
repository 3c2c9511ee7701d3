package pappus.search.timefold;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningVariable;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import pappus.part.Build;
import pappus.part.Part;
import pappus.part.Role;
import pappus.search.Question;

/**
 * The one planning entity: a part for every role the scenario leaves open. Mutable, because the
 * solver wants it so; it never leaves this package.
 */
@PlanningEntity
@SuppressWarnings({"unused", "NullAway"}) // the solver reads and fills the fields by reflection
class BuildPlan {
  @PlanningId
  private String id = "plan";

  private Question question;

  @PlanningVariable(valueRangeProviderRefs = "frame", allowsUnassigned = true)
  private @Nullable Part frame;

  @ValueRangeProvider(id = "frame")
  List<Part> frameOptions() {
    return question.options(Role.FRAME);
  }

  @PlanningVariable(valueRangeProviderRefs = "motor", allowsUnassigned = true)
  private @Nullable Part motor;

  @ValueRangeProvider(id = "motor")
  List<Part> motorOptions() {
    return question.options(Role.MOTOR);
  }

  @PlanningVariable(valueRangeProviderRefs = "propeller", allowsUnassigned = true)
  private @Nullable Part propeller;

  @ValueRangeProvider(id = "propeller")
  List<Part> propellerOptions() {
    return question.options(Role.PROPELLER);
  }

  @PlanningVariable(valueRangeProviderRefs = "battery", allowsUnassigned = true)
  private @Nullable Part battery;

  @ValueRangeProvider(id = "battery")
  List<Part> batteryOptions() {
    return question.options(Role.BATTERY);
  }

  @PlanningVariable(valueRangeProviderRefs = "board", allowsUnassigned = true)
  private @Nullable Part board;

  @ValueRangeProvider(id = "board")
  List<Part> boardOptions() {
    return question.options(Role.BOARD);
  }

  @PlanningVariable(valueRangeProviderRefs = "transmitter", allowsUnassigned = true)
  private @Nullable Part transmitter;

  @ValueRangeProvider(id = "transmitter")
  List<Part> transmitterOptions() {
    return question.options(Role.TRANSMITTER);
  }

  @PlanningVariable(valueRangeProviderRefs = "camera", allowsUnassigned = true)
  private @Nullable Part camera;

  @ValueRangeProvider(id = "camera")
  List<Part> cameraOptions() {
    return question.options(Role.CAMERA);
  }

  @PlanningVariable(valueRangeProviderRefs = "receiver", allowsUnassigned = true)
  private @Nullable Part receiver;

  @ValueRangeProvider(id = "receiver")
  List<Part> receiverOptions() {
    return question.options(Role.RECEIVER);
  }

  @PlanningVariable(valueRangeProviderRefs = "videoAntenna", allowsUnassigned = true)
  private @Nullable Part videoAntenna;

  @ValueRangeProvider(id = "videoAntenna")
  List<Part> videoAntennaOptions() {
    return question.options(Role.VIDEO_ANTENNA);
  }

  @PlanningVariable(valueRangeProviderRefs = "radioAntenna", allowsUnassigned = true)
  private @Nullable Part radioAntenna;

  @ValueRangeProvider(id = "radioAntenna")
  List<Part> radioAntennaOptions() {
    return question.options(Role.RADIO_ANTENNA);
  }

  @PlanningVariable(valueRangeProviderRefs = "gps", allowsUnassigned = true)
  private @Nullable Part gps;

  @ValueRangeProvider(id = "gps")
  List<Part> gpsOptions() {
    return question.options(Role.GPS);
  }

  @PlanningVariable(valueRangeProviderRefs = "buzzer", allowsUnassigned = true)
  private @Nullable Part buzzer;

  @ValueRangeProvider(id = "buzzer")
  List<Part> buzzerOptions() {
    return question.options(Role.BUZZER);
  }

  @PlanningVariable(valueRangeProviderRefs = "payloadCamera", allowsUnassigned = true)
  private @Nullable Part payloadCamera;

  @ValueRangeProvider(id = "payloadCamera")
  List<Part> payloadCameraOptions() {
    return question.options(Role.PAYLOAD_CAMERA);
  }

  @PlanningVariable(valueRangeProviderRefs = "capacitor", allowsUnassigned = true)
  private @Nullable Part capacitor;

  @ValueRangeProvider(id = "capacitor")
  List<Part> capacitorOptions() {
    return question.options(Role.CAPACITOR);
  }

  @PlanningVariable(valueRangeProviderRefs = "lead", allowsUnassigned = true)
  private @Nullable Part lead;

  @ValueRangeProvider(id = "lead")
  List<Part> leadOptions() {
    return question.options(Role.LEAD);
  }

  BuildPlan() {}

  BuildPlan(Question question, Map<Role, Part> start) {
    this.question = question;
    for (var role : Role.values()) {
      set(role, start.get(role));
    }
  }

  /** The part chosen for a role. */
  @Nullable
  Part get(Role role) {
    return switch (role) {
      case FRAME -> frame;
      case MOTOR -> motor;
      case PROPELLER -> propeller;
      case BATTERY -> battery;
      case BOARD -> board;
      case TRANSMITTER -> transmitter;
      case CAMERA -> camera;
      case RECEIVER -> receiver;
      case VIDEO_ANTENNA -> videoAntenna;
      case RADIO_ANTENNA -> radioAntenna;
      case GPS -> gps;
      case BUZZER -> buzzer;
      case PAYLOAD_CAMERA -> payloadCamera;
      case CAPACITOR -> capacitor;
      case LEAD -> lead;
    };
  }

  void set(Role role, @Nullable Part part) {
    switch (role) {
      case FRAME -> frame = part;
      case MOTOR -> motor = part;
      case PROPELLER -> propeller = part;
      case BATTERY -> battery = part;
      case BOARD -> board = part;
      case TRANSMITTER -> transmitter = part;
      case CAMERA -> camera = part;
      case RECEIVER -> receiver = part;
      case VIDEO_ANTENNA -> videoAntenna = part;
      case RADIO_ANTENNA -> radioAntenna = part;
      case GPS -> gps = part;
      case BUZZER -> buzzer = part;
      case PAYLOAD_CAMERA -> payloadCamera = part;
      case CAPACITOR -> capacitor = part;
      case LEAD -> lead = part;
    }
  }

  /** The build as it would be built. */
  Build toBuild() {
    var chosen = new EnumMap<Role, Part>(Role.class);
    for (var role : Role.values()) {
      var part = get(role);
      if (part != null) {
        chosen.put(role, part);
      }
    }
    return Question.tidy(chosen);
  }
}
