package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How the fibres of a carbon plate lie. */
public enum Layup {
  /** Layers laid all ways round: as stiff in each. */
  @JsonProperty("quasi-isotropic")
  QUASI_ISOTROPIC("quasi-isotropic"),
  /** A weave that is alike everywhere: stiff along its two directions of fibres, soft between them. */
  @JsonProperty("woven")
  WOVEN("woven");

  private final String word;

  Layup(String word) {
    this.word = word;
  }

  /** As it stands in files. */
  public String word() {
    return word;
  }
}
