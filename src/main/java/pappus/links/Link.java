package pappus.links;

import java.util.List;
import pappus.part.Band;
import pappus.part.Role;
import pappus.physics.link.LinkBudget;

/**
 * One radio link of a build.
 *
 * @param way which
 * @param milliwatts sent: by the aircraft for video, from the ground for control
 * @param band of it
 * @param budget what may be lost on the way
 * @param assumed what of it nobody said, in words
 */
public record Link(Way way, double milliwatts, Band band, LinkBudget budget, List<String> assumed) {
  public Link {
    assumed = List.copyOf(assumed);
  }

  /** Which link. */
  public enum Way {
    /** The picture, from the aircraft. */
    VIDEO("video", Role.VIDEO_ANTENNA),
    /** The pilot's sticks, to the aircraft. */
    CONTROL("control", Role.RADIO_ANTENNA);

    private final String label;
    private final Role antenna;

    Way(String label, Role antenna) {
      this.label = label;
      this.antenna = antenna;
    }

    /** The word a person uses. */
    public String label() {
      return label;
    }

    Role antenna() {
      return antenna;
    }
  }

  /** Whether it reaches so far by the likeliest figures. */
  public boolean reaches(double metres) {
    return metres() >= metres;
  }

  /** How far it reaches by the likeliest figures, m. */
  public double metres() {
    return budget.metres();
  }

  /** How far it reaches where all is one standard deviation worse, m. */
  public double lowMetres() {
    return budget.metres(LinkBudget.DOUBT_DB);
  }

  /** How far it reaches where all is one standard deviation better, m. */
  public double highMetres() {
    return budget.metres(-LinkBudget.DOUBT_DB);
  }

  /** How far it reaches behind the pilot's body or where an antenna hears nothing, by the likeliest figures, m. */
  public double shadowedMetres() {
    return budget.metres(LinkBudget.SHADOW_DB);
  }
}
