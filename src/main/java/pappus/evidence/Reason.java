package pappus.evidence;

import java.util.Locale;

/** Why a figure counts otherwise than its record states. */
public enum Reason {
  /** Its doubt against the spread of its class, as both are stated. */
  CLASS("its class"),
  /** Parts of this catalogue differ less than the class may. */
  NARROW_CATALOGUE("little variety in the catalogue"),
  /** Records of this catalogue scatter more than spread and stated doubts allow. */
  SCATTER("its scattered records"),
  /** The maker's figures lie to one side. */
  MAKER("its maker's bias"),
  /** It is so far off that it may be a blunder. */
  BLUNDER("a likely slip"),
  /** Hardly any blades are so good. */
  CEILING("what such blades can reach");

  private final String words;

  Reason(String words) {
    this.words = words;
  }

  /** As it stands in JSON. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What drew the figure, in words. */
  public String words() {
    return words;
  }
}
