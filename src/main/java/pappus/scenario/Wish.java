package pappus.scenario;

import com.fasterxml.jackson.annotation.JsonProperty;
import pappus.part.Role;

/** Things a build may do without. */
public enum Wish {
  @JsonProperty("gps")
  GPS(Role.GPS),
  @JsonProperty("buzzer")
  BUZZER(Role.BUZZER),
  @JsonProperty("payload-camera")
  PAYLOAD_CAMERA(Role.PAYLOAD_CAMERA);

  private final Role role;

  Wish(Role role) {
    this.role = role;
  }

  /** The role it asks for. */
  public Role role() {
    return role;
  }
}
