package pappus.part;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import pappus.physics.structure.Outline;
import pappus.quantity.Require;

/** What a frame is cut from and held together by, as its drawing has it. */
public record FrameDrawing(
    @JsonPropertyDescription(
        "Plates without arms; empty: not drawn, and the frame's mass has to be stated.")
    List<Plate> plates,

    @JsonPropertyDescription("Arms, a front and a rear pair; empty: not drawn.")
    List<Arm> arms,

    @JsonPropertyDescription("Standoffs between the plates; absent: none.") @Nullable
    Standoffs standoffs,

    @JsonPropertyDescription("The frame's own screws and nuts; absent: none.") @Nullable
    Screws screws) {
  /** A drawing of more is none that a person made. */
  private static final int MOST_PLATES = 40;

  public FrameDrawing {
    plates = Require.list("plates", plates);
    if (plates.size() > MOST_PLATES) {
      Require.refuse(
          "plates must list at most %s, but lists %s.".formatted(MOST_PLATES, plates.size()));
    }
    arms = Require.list("arms", arms);
    if (!arms.isEmpty()
        && (arms.size() != 2 || arms.get(0).pair() == arms.get(1).pair())) {
      Require.refuse("arms must list a front and a rear pair, or none, but lists %s."
          .formatted(
              arms.size() == 2 ? "the " + arms.get(0).pair().word() + " pair twice" : arms.size()));
    }
  }

  /** Whether it tells the mass of the whole frame. */
  public boolean tellsAll() {
    return !plates.isEmpty() && !arms.isEmpty();
  }

  /** The same with other arms. */
  public FrameDrawing withArms(UnaryOperator<Arm> other) {
    return new FrameDrawing(plates, arms.stream().map(other).toList(), standoffs, screws);
  }

  /** Which motors two arms carry. */
  public enum Pair {
    @JsonProperty("front")
    FRONT("front"),
    @JsonProperty("rear")
    REAR("rear");

    private final String word;

    Pair(String word) {
      this.word = word;
    }

    /** As it stands in files and sentences. */
    public String word() {
      return word;
    }
  }

  /** A carbon plate; where it is drawn, its area and its middle follow from its outline. */
  public record Plate(
      @JsonPropertyDescription("Bottom, top, ….") String name,

      @JsonPropertyDescription("Thickness, mm, 0.5 to 12.") double thicknessMillimetres,

      @JsonPropertyDescription("How many alike it has, 1 to 8; absent: one.") @Nullable
      Integer pieces,

      @JsonPropertyDescription(
          "Its area without holes, mm², 1 to 100000; absent: that of its outline.")
      @Nullable
      Double squareMillimetres,

      @JsonPropertyDescription(
          "Middle of its area, mm forward of the motor centre, -200 to 200; absent: that of its outline, 0 without one.")
      @Nullable
      Double xMillimetres,

      @JsonPropertyDescription(
          "Its corners in their order round it, 3 to 500, no two sides crossing; absent: its area is stated.")
      @Nullable
      List<Point> outline,

      @JsonPropertyDescription("Round holes within the outline; absent: none.") @Nullable
      List<Hole> holes,

      @JsonPropertyDescription("Other openings within the outline; absent: none.") @Nullable
      List<Opening> openings,

      @JsonPropertyDescription(
          "Density, g/cm³, 0.5 to 12; absent: 1.55, that of carbon plates, 1.43 to 1.60 by their fibre.")
      @Nullable
      Double gramsPerCubicCentimetre) {
    public Plate {
      Require.name("name", name);
      Require.inRange("thicknessMillimetres", thicknessMillimetres, 0.5, 12);
      if (pieces != null) {
        Require.inRange("pieces", pieces, 1, 8);
      }
      if (squareMillimetres != null) {
        Require.inRange(
            "squareMillimetres",
            squareMillimetres,
            1,
            100_000,
            "Maybe it is in square centimetres.");
        if (outline != null) {
          Require.refuse("squareMillimetres must be left out where an outline is drawn, but is %s."
              .formatted(Require.plain(squareMillimetres)));
        }
      } else if (outline == null) {
        Require.refuse("squareMillimetres must be given where no outline is, but is not.");
      }
      if (xMillimetres != null) {
        Require.inRange("xMillimetres", xMillimetres, -200, 200);
      }
      outline = outline == null ? null : corners("outline", outline);
      holes = holes == null ? null : Require.list("holes", holes);
      openings = openings == null ? null : Require.list("openings", openings);
      if (gramsPerCubicCentimetre != null) {
        Require.inRange("gramsPerCubicCentimetre", gramsPerCubicCentimetre, 0.5, 12);
      }
      if (outline == null && (holes != null || openings != null)) {
        Require.refuse("%s must be left out where no outline is drawn, but is there."
            .formatted(holes != null ? "holes" : "openings"));
      } else if (outline != null) {
        requireRoom(shape(outline), holes, openings);
      }
    }

    private static void requireRoom(
        Outline whole, @Nullable List<Hole> holes, @Nullable List<Opening> openings) {
      var cut = cut(holes, openings).stream().mapToDouble(Outline::area).sum();
      if (cut > 0 && cut >= whole.area()) {
        Require.refuse(
            "outline must hold more than its holes and openings, %s mm², but holds %s mm²."
                .formatted(Require.plain(Math.rint(cut)), Require.plain(Math.rint(whole.area()))));
      }
    }

    private static List<Outline> cut(@Nullable List<Hole> holes, @Nullable List<Opening> openings) {
      var cut = new ArrayList<Outline>();
      if (holes != null) {
        holes.forEach(
            hole -> cut.add(Outline.circle(hole.xMillimetres(), hole.diameterMillimetres())));
      }
      if (openings != null) {
        openings.forEach(opening -> cut.add(shape(opening.outline())));
      }
      return cut;
    }

    /** One of it, seen from above. */
    public Outline shape() {
      var x = xMillimetres == null ? 0 : xMillimetres;
      if (outline == null) {
        return new Outline(squareMillimetres == null ? 0 : squareMillimetres, x);
      }
      var left = shape(outline);
      for (var hole : cut(holes, openings)) {
        left = left.without(hole);
      }
      return xMillimetres == null ? left : new Outline(left.area(), x);
    }

    private static Outline shape(List<Point> corners) {
      return Outline.polygon(xs(corners), ys(corners));
    }

    private static double[] xs(List<Point> corners) {
      return corners.stream().mapToDouble(Point::xMillimetres).toArray();
    }

    private static double[] ys(List<Point> corners) {
      return corners.stream().mapToDouble(Point::yMillimetres).toArray();
    }

    static List<Point> corners(String name, @Nullable List<Point> corners) {
      var listed = Require.list(name, corners);
      if (listed.size() < 3 || listed.size() > 500) {
        Require.refuse(
            "%s must list 3 to 500 corners, but lists %s.".formatted(name, listed.size()));
      } else if (Outline.crossesItself(xs(listed), ys(listed))) {
        Require.refuse("%s must not cross itself, but two of its sides meet.".formatted(name));
      }
      return listed;
    }

    /** How many alike. */
    public int count() {
      return pieces == null ? 1 : pieces;
    }
  }

  /** A corner. */
  public record Point(
      @JsonPropertyDescription("Forward of the motor centre, mm, -300 to 300.")
      double xMillimetres,

      @JsonPropertyDescription("To the right of the middle line, mm, -300 to 300.")
      double yMillimetres) {
    public Point {
      Require.inRange("xMillimetres", xMillimetres, -300, 300);
      Require.inRange("yMillimetres", yMillimetres, -300, 300);
    }
  }

  /** A round hole. */
  public record Hole(
      @JsonPropertyDescription("Forward of the motor centre, mm, -300 to 300.")
      double xMillimetres,

      @JsonPropertyDescription("To the right of the middle line, mm, -300 to 300.")
      double yMillimetres,

      @JsonPropertyDescription("Diameter, mm, 0.5 to 200.") double diameterMillimetres) {
    public Hole {
      Require.inRange("xMillimetres", xMillimetres, -300, 300);
      Require.inRange("yMillimetres", yMillimetres, -300, 300);
      Require.inRange("diameterMillimetres", diameterMillimetres, 0.5, 200);
    }
  }

  /** An opening that is not round. */
  public record Opening(
      @JsonPropertyDescription("Its corners in their order, 3 to 500, no two sides crossing.")
      List<Point> outline) {
    public Opening {
      outline = Plate.corners("outline", outline);
    }
  }

  /** Two arms alike; their width is {@code armWidthMillimetres}. */
  public record Arm(
      @JsonPropertyDescription("Which motors they carry.") Pair pair,

      @JsonPropertyDescription("From the plate's edge to the motor axis, mm, 5 to 300.")
      double lengthMillimetres,

      @JsonPropertyDescription("Thickness, mm, 1 to 12; absent: armThicknessMillimetres.") @Nullable
      Double thicknessMillimetres,

      @JsonPropertyDescription(
          "Share of its area that is cut out of it, 0 to 0.8; it then weighs and bears so much less (engineering estimate); absent: 0.")
      @Nullable
      Double shareCutOut,

      @JsonPropertyDescription(
          "How far out from the plate's edge a brace holds it, mm, 0 to 0.9 of its length; absent: no brace.")
      @Nullable
      Double bracedMillimetres,

      @JsonPropertyDescription(
          "How its fibres lie: quasi-isotropic, 45 GPa each way, or woven, 52 GPa along its fibres and 15 between them; absent: quasi-isotropic.")
      @Nullable
      Layup layup,

      @JsonPropertyDescription(
          "Of a weave: between its fibres and the arm, degrees, 0 to 90, 45 where arms of a true X are cut from one plate laid straight; absent: 0.")
      @Nullable
      Double layupDegrees,

      @JsonPropertyDescription(
          "Round end under the motor, diameter, mm, 5 to 60; absent: 4 mm more than the largest bolt circle, no end where none is known.")
      @Nullable
      Double endMillimetres) {
    public Arm {
      Require.present("pair", pair);
      Require.inRange("lengthMillimetres", lengthMillimetres, 5, 300);
      if (thicknessMillimetres != null) {
        Require.inRange("thicknessMillimetres", thicknessMillimetres, 1, 12);
      }
      if (shareCutOut != null) {
        Require.inRange("shareCutOut", shareCutOut, 0, 0.8);
      }
      if (bracedMillimetres != null) {
        Require.inRange("bracedMillimetres", bracedMillimetres, 0, 0.9 * lengthMillimetres);
      }
      if (layupDegrees != null) {
        Require.inRange("layupDegrees", layupDegrees, 0, 90);
        if (layup != Layup.WOVEN) {
          Require.refuse("layupDegrees must be left out where layup is not woven, but is %s."
              .formatted(Require.plain(layupDegrees)));
        }
      }
      if (endMillimetres != null) {
        Require.inRange("endMillimetres", endMillimetres, 5, 60);
      }
    }

    /** What is not cut out of it, 0.2 to 1. */
    public double shareLeft() {
      return shareCutOut == null ? 1 : 1 - shareCutOut;
    }

    /** As thick as the frame's arms are now, where it says a thickness of its own. */
    public Arm withThickness(double millimetres) {
      return thicknessMillimetres == null ? this : copy(millimetres, lengthMillimetres);
    }

    /** So much longer; a brace stays where it is. */
    public Arm longerBy(double millimetres) {
      return copy(thicknessMillimetres, lengthMillimetres + millimetres);
    }

    private Arm copy(@Nullable Double thickness, double length) {
      return new Arm(
          pair,
          length,
          thickness,
          shareCutOut,
          bracedMillimetres,
          layup,
          layupDegrees,
          endMillimetres);
    }

    /** How far out a brace holds it, mm; 0 without one. */
    public double braced() {
      return bracedMillimetres == null ? 0 : bracedMillimetres;
    }
  }

  /** Standoffs that all are as long as the height between the plates. */
  public record Standoffs(
      @JsonPropertyDescription("How many hold the frame together, 0 to 40.")
      int pieces,

      @JsonPropertyDescription("Mass of one for each mm of its length, g, 0.001 to 1.")
      double gramsPerMillimetre,

      @JsonPropertyDescription("Spare ones in its bag, which do not fly, 0 to 40; absent: none.")
      @Nullable
      Integer spare) {
    /** Without spare ones. */
    public Standoffs(int pieces, double gramsPerMillimetre) {
      this(pieces, gramsPerMillimetre, null);
    }

    public Standoffs {
      if (spare != null) {
        Require.inRange("spare", spare, 0, 40);
      }
      Require.inRange("pieces", pieces, 0, 40);
      Require.inRange("gramsPerMillimetre", gramsPerMillimetre, 0.001, 1);
    }
  }

  /** The frame's own screws and nuts. */
  public record Screws(
      @JsonPropertyDescription("How many hold the frame together, 0 to 200.")
      int pieces,

      @JsonPropertyDescription("Mass of one with its nut, g, 0.01 to 20.")
      double grams,

      @JsonPropertyDescription("Spare ones in its bag, which do not fly, 0 to 200; absent: none.")
      @Nullable
      Integer spare) {
    /** Without spare ones. */
    public Screws(int pieces, double grams) {
      this(pieces, grams, null);
    }

    public Screws {
      if (spare != null) {
        Require.inRange("spare", spare, 0, 200);
      }
      Require.inRange("pieces", pieces, 0, 200);
      Require.inRange("grams", grams, 0.01, 20);
    }
  }
}
