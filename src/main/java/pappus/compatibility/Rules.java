package pappus.compatibility;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Every fit rule, in the order of reports. */
public final class Rules {
  /** All of them. */
  public static final List<CompatibilityRule> ALL = List.of(
      new RolesRule(),
      new MotorMountRule(),
      new MotorScrewRule(),
      new MotorGuardRule(),
      new MotorCellsRule(),
      new PropellerSeatRule(),
      new PropellerLoadRule(),
      new PropellerClearanceRule(),
      new StackPlacesRule(),
      new CameraCageRule(),
      new VideoFamilyRule(),
      new VideoPowerRule(),
      new RadioLinkRule(),
      new BoardVoltsRule(),
      new InputWindowRule(),
      new RegulatorLoadRule(),
      new SerialPortsRule(),
      new VideoAntennaRule(),
      new RadioAntennaRule(),
      new BatteryPlugRule(),
      new CapacitorRule(),
      new BatteryStrapRule(),
      new BatteryBayRule(),
      new BalanceRule());

  private Rules() {}

  /** Ids of the rules a scenario may set aside. */
  public static Set<String> waivableIds() {
    return ALL.stream()
        .filter(CompatibilityRule::mayBeWaived)
        .map(CompatibilityRule::id)
        .collect(Collectors.toUnmodifiableSet());
  }
}
