package pappus.compatibility;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import pappus.scenario.Scenario;

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
      new PayloadPlaceRule(),
      new BalanceRule());

  private Rules() {}

  /**
   * The rules for a scenario: where the power of video follows from how far it must reach, what the rails carry depends on
   * its antenna too.
   */
  public static List<CompatibilityRule> of(Scenario scenario) {
    return !scenario.choosesPower()
        ? ALL
        : ALL.stream()
            .map(rule -> rule instanceof RegulatorLoadRule ? new RegulatorLoadRule(true) : rule)
            .toList();
  }

  /** Ids of the rules a scenario may set aside. */
  public static Set<String> waivableIds() {
    return ALL.stream()
        .filter(CompatibilityRule::mayBeWaived)
        .map(CompatibilityRule::id)
        .collect(Collectors.toUnmodifiableSet());
  }
}
