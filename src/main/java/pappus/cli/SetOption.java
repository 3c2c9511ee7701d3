package pappus.cli;

import java.util.ArrayList;
import java.util.List;
import pappus.scenario.reading.Setting;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What a scenario is to have in place of what its file says. */
final class SetOption {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--set",
      paramLabel = "PATH=VALUE",
      description =
          "Change a value of the scenario, as often as needed: massCap=200, flight.legs[0].seconds=30, wants=gps,buzzer; null removes a field, objects are JSON; describe scenario lists the paths.")
  private List<String> typed = new ArrayList<>();

  /** In the order in which they are typed. */
  List<Setting> settings() {
    var settings = new ArrayList<Setting>();
    for (var one : typed) {
      try {
        settings.add(Setting.parse(one));
      } catch (IllegalArgumentException wrong) {
        throw new ParameterException(spec.commandLine(), "--set " + wrong.getMessage());
      }
    }
    return List.copyOf(settings);
  }
}
