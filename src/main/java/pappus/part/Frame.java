package pappus.part;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonPropertyDescription;
import com.fasterxml.jackson.annotation.OptBoolean;
import java.util.List;
import org.jspecify.annotations.Nullable;
import pappus.quantity.Money;
import pappus.quantity.Require;

/**
 * A frame with its plates, standoffs and screws. x counts forward from the centre of the motors.
 */
public record Frame(
    @JsonPropertyDescription("Catalogue key.") String id,
    @JsonPropertyDescription("Who makes it.") @ByClass String maker,
    @JsonPropertyDescription("What it is called.") String name,
    @JsonPropertyDescription("Price of one selling unit.") Money price,
    @JsonPropertyDescription("How it is sold.") @ByClass Sale sold,

    @JsonPropertyDescription(
        "Mass of one piece; absent: that of its drawing, which then has plates and arms.")
    @JsonProperty(isRequired = OptBoolean.FALSE)
    Mass mass,

    @JsonPropertyDescription("Distance between the two front motor axes, across, mm, 40 to 400.")
    @ByClass
    double frontSpacingMillimetres,

    @JsonPropertyDescription(
        "Distance between the front and rear motor axes of one side, mm, 40 to 400.")
    @ByClass
    double sideSpacingMillimetres,

    @JsonPropertyDescription(
        "Distance between opposite motor axes, mm; absent: worked out from the two others.")
    @Nullable
    Double diagonalMillimetres,

    @JsonPropertyDescription("Plate under the motor, mm, 1 to 12.") @ByClass
    double armThicknessMillimetres,

    @JsonPropertyDescription(
        "Width of an arm where it leaves the plate and under the motor, seen from above; absent: as usual for its largest propeller and half a spread more, 1.69 and 1.25 mm an inch ± 16 %.")
    @Nullable
    ArmWidth armWidthMillimetres,

    @JsonPropertyDescription("Largest propeller the maker allows, inch, 1 to 8.")
    double largestPropellerInches,

    @AlsoSaid("bolt pattern: 9x9/12x12")
    @JsonPropertyDescription(
        "Bolt circles the arms are drilled for; a slot is a span; empty: not known.")
    List<Span> motorBoltCirclesMillimetres,

    @JsonPropertyDescription("Inner diameter of the motor guards, mm; absent: no guards.") @Nullable
    Double guardInnerMillimetres,

    @AlsoSaid("mounting: 20x20/30.5x30.5")
    @JsonPropertyDescription("Places for boards, front to rear.")
    List<Position> positions,

    @JsonPropertyDescription(
        "Heights between the plates it can be ordered with; empty: no top plate anywhere.")
    @ByClass
    List<PlateHeight> heights,

    @JsonPropertyDescription("Camera widths its cage takes without shims, mm; empty: not known.")
    List<Double> cameraWidthsMillimetres,

    @JsonPropertyDescription("Where the camera sits, mm forward of the motor centre.") @ByClass
    double cameraXMillimetres,

    @JsonPropertyDescription(
        "Side screws of the camera above the arms' upper face, mm, -30 to 60; absent: half of what its camera needs between the plates.")
    @Nullable
    Double cameraHeightMillimetres,

    @JsonPropertyDescription(
        "Propeller discs above the arms' upper face, mm, -60 to 60, below 0 where propellers push; absent: as high as the motor with half the hub on it.")
    @Nullable
    Double discHeightMillimetres,

    @JsonPropertyDescription("Where the battery is strapped.")
    Bay bay,

    @JsonPropertyDescription(
        "Its own centre of mass, mm forward of the motor centre, -60 to 60; absent: that of its drawing with plates and arms, else 0.")
    @ByClass
    @JsonProperty(isRequired = OptBoolean.FALSE)
    double centreOfMassXMillimetres,

    @JsonPropertyDescription(
        "Drag area CdA, m², 0.001 to 0.05; absent: what plates, arms and pack show, but no less than 0.006 at 250 g all-up, by mass to the power of 2/3.")
    @Nullable
    Double dragAreaSquareMetres,

    @JsonPropertyDescription(
        "What it is cut from, by which its mass and how stiff its arms are follow; absent: its mass stays whatever its arms are, and nothing is told of their stiffness.")
    @Nullable
    FrameDrawing drawing,

    @JsonPropertyDescription(
        "Plates and mounts it can be ordered with, at most 3, each with or without the others; absent: none. Each way to order it is a frame of its own, whose id ends in those of its options.")
    @Nullable
    List<FrameOption> options,

    @JsonPropertyDescription("Where the numbers come from.") @ByClass
    String source,

    @JsonIgnore List<Assumed> assumed,

    @JsonIgnore @Nullable String listedAs)
    implements Part {
  /** More would make too many ways to order it. */
  private static final int MOST_OPTIONS = 3;

  /** Of the keys that its options make, with a height of its own behind. */
  private static final int LONGEST_ID = 57;

  /** Motors and propellers of every frame: a quad has four. */
  public static final int ROTORS = 4;

  public Frame {
    Part.check(id, maker, name, price, sold, mass, source);
    assumed = Assumed.listOf(assumed);
    Require.inRange("frontSpacingMillimetres", frontSpacingMillimetres, 40, 400);
    Require.inRange("sideSpacingMillimetres", sideSpacingMillimetres, 40, 400);
    if (diagonalMillimetres != null) {
      var worked = StrictMath.hypot(frontSpacingMillimetres, sideSpacingMillimetres);
      Require.inRange(
          "diagonalMillimetres",
          diagonalMillimetres,
          Math.rint(worked * 0.98),
          Math.rint(worked * 1.02),
          "Maybe the front or side spacing is wrong.");
    }
    Require.inRange("armThicknessMillimetres", armThicknessMillimetres, 1, 12);
    Require.inRange("largestPropellerInches", largestPropellerInches, 1, 8);
    motorBoltCirclesMillimetres =
        Require.list("motorBoltCirclesMillimetres", motorBoltCirclesMillimetres);
    if (guardInnerMillimetres != null) {
      Require.inRange("guardInnerMillimetres", guardInnerMillimetres, 8, 60);
    }
    positions = Require.notEmpty("positions", Require.list("positions", positions));
    heights = Require.list("heights", heights);
    if (heights.isEmpty() && !positions.stream().allMatch(Position::open)) {
      throw new IllegalArgumentException(
          "heights must list at least one unless every position is open, but is empty.");
    }
    for (var i = 0; i < heights.size(); i++) {
      if (mass.grams() > 0 && mass.grams() + heights.get(i).addedGrams() <= 0) {
        Require.refuse(
            "heights[%s].addedGrams must be above %s, since the frame weighs %s g, but is %s."
                .formatted(
                    i,
                    Require.plain(-mass.grams()),
                    Require.plain(mass.grams()),
                    Require.plain(heights.get(i).addedGrams())));
      }
    }
    cameraWidthsMillimetres = Require.list("cameraWidthsMillimetres", cameraWidthsMillimetres);
    Require.inRange("cameraXMillimetres", cameraXMillimetres, -200, 200);
    if (cameraHeightMillimetres != null) {
      Require.inRange("cameraHeightMillimetres", cameraHeightMillimetres, -30, 60);
    }
    if (discHeightMillimetres != null) {
      Require.inRange("discHeightMillimetres", discHeightMillimetres, -60, 60);
    }
    Require.present("bay", bay);
    Require.inRange("centreOfMassXMillimetres", centreOfMassXMillimetres, -60, 60);
    options = options == null ? null : Require.list("options", options);
    requireOptions(id, mass, price, options, heights);
    if (dragAreaSquareMetres != null) {
      Require.inRange("dragAreaSquareMetres", dragAreaSquareMetres, 0.001, 0.05);
    }
  }

  private static void requireOptions(
      String id,
      Mass mass,
      Money price,
      @Nullable List<FrameOption> options,
      List<PlateHeight> heights) {
    for (var i = 0; i < heights.size(); i++) {
      var money = heights.get(i).price();
      if (money != null && !money.currency().equals(price.currency())) {
        Require.refuse("heights[%s].price.currency must be that of the frame, %s, but is %s."
            .formatted(i, price.currency(), money.currency()));
      }
    }
    if (options == null) {
      return;
    }
    if (options.size() > MOST_OPTIONS) {
      Require.refuse(
          "options must list at most %s, but lists %s.".formatted(MOST_OPTIONS, options.size()));
    }
    var least =
        mass.grams() + heights.stream().mapToDouble(PlateHeight::addedGrams).reduce(0, Math::min);
    for (var i = 0; i < options.size(); i++) {
      var option = options.get(i);
      least += Math.min(0, option.addedGrams());
      var money = option.price();
      if (money != null && !money.currency().equals(price.currency())) {
        Require.refuse("options[%s].price.currency must be that of the frame, %s, but is %s."
            .formatted(i, price.currency(), money.currency()));
      }
      if (options.subList(0, i).stream().anyMatch(other -> other.id().equals(option.id()))) {
        Require.refuse(
            "options[%s].id must be there once, but %s is there before.".formatted(i, option.id()));
      }
    }
    if (least <= 0) {
      Require.refuse(
          "options must leave the frame a mass above 0 g with the lightest height, but leave %s g."
              .formatted(Require.plain(Math.rint(least * 100) / 100)));
    }
    if (id.length() + options.stream().mapToInt(one -> one.id().length() + 1).sum() > LONGEST_ID) {
      Require.refuse("options must make ids of at most %s characters, but make longer ones."
          .formatted(LONGEST_ID));
    }
  }

  /** Plates and mounts that it can be ordered with. */
  List<FrameOption> optionsOrNone() {
    return options == null ? List.of() : options;
  }

  @Override
  public String listedId() {
    return listedAs == null ? id : listedAs;
  }

  @Override
  public Kind kind() {
    return Kind.FRAME;
  }

  @Override
  public List<Role> fills() {
    return List.of(Role.FRAME);
  }

  /** Motors and propellers it carries. */
  public int rotors() {
    return ROTORS;
  }

  /** Distance between opposite motor axes, mm. */
  public double diagonal() {
    return StrictMath.hypot(frontSpacingMillimetres, sideSpacingMillimetres);
  }

  /** What its height between the plates adds to its mass at least, g: 0 or below, since a frame may fly without one. */
  public double leastAddedGrams() {
    return heights.stream().mapToDouble(PlateHeight::addedGrams).reduce(0, Math::min);
  }

  /** How wide an arm is, seen from above. */
  public record ArmWidth(
      @JsonPropertyDescription("Where it leaves the plate, mm, 2 to 40.")
      double root,

      @JsonPropertyDescription("Where the motor's mount begins, mm, 2 to 40.")
      double tip) {
    public ArmWidth {
      Require.inRange("root", root, 2, 40);
      Require.inRange("tip", tip, 2, 40);
    }

    /** Between both ends, mm. */
    public double mean() {
      return 0.5 * (root + tip);
    }
  }

  /** A place for boards; a column of parts of one pattern stands in it. */
  public record Position(
      @JsonPropertyDescription("Front, middle, rear, ….") @ByClass
      String name,

      @JsonPropertyDescription("Its middle, mm forward of the motor centre.") @ByClass
      double xMillimetres,

      @JsonPropertyDescription("Hole patterns of the plate there.")
      List<MountingHoles> patterns,

      @JsonPropertyDescription("Whether no plate is above it.") @ByClass
      boolean open) {
    public Position {
      Require.name("name", name);
      Require.inRange("xMillimetres", xMillimetres, -200, 200);
      patterns = Require.notEmpty("patterns", Require.list("patterns", patterns));
    }
  }

  /** A height between the plates that the frame can be ordered with. */
  public record PlateHeight(
      @JsonPropertyDescription("Inner height, mm, 8 to 60.") double millimetres,

      @JsonPropertyDescription(
          "Mass above that of the frame as listed, g, -30 to 30; below 0: so much less than listed.")
      double addedGrams,

      @JsonPropertyDescription("Price above that of the frame as listed; absent: none.") @Nullable
      Money price) {
    /** A height that costs nothing more. */
    public PlateHeight(double millimetres, double addedGrams) {
      this(millimetres, addedGrams, null);
    }

    public PlateHeight {
      Require.inRange("millimetres", millimetres, 8, 60);
      Require.inRange("addedGrams", addedGrams, -30, 30);
    }
  }

  /** The place of the battery. */
  public record Bay(
      @JsonPropertyDescription("Above the frame or under it.")
      Side place,

      @JsonPropertyDescription("Between standoffs or strap slots, mm.") @ByClass
      double widthMillimetres,

      @JsonPropertyDescription("Rear end of the supporting plate, mm forward of the motor centre.")
      @ByClass
      double rearXMillimetres,

      @JsonPropertyDescription("Front end of the supporting plate, mm forward of the motor centre.")
      @ByClass
      double frontXMillimetres,

      @JsonPropertyDescription("Room to the ground or to propellers, mm; absent: no bound.")
      @Nullable
      Double tallestMillimetres,

      @JsonPropertyDescription("Widest strap its slots take, mm.") @ByClass
      double strapWidthMillimetres) {
    /** Above or below the frame. */
    public enum Side {
      @JsonProperty("top")
      TOP,
      @JsonProperty("bottom")
      BOTTOM
    }

    public Bay {
      Require.present("place", place);
      Require.inRange("widthMillimetres", widthMillimetres, 10, 120);
      Require.inRange("rearXMillimetres", rearXMillimetres, -200, 200);
      Require.inRange("frontXMillimetres", frontXMillimetres, rearXMillimetres, 200);
      if (tallestMillimetres != null) {
        Require.inRange("tallestMillimetres", tallestMillimetres, 5, 100);
      }
      Require.inRange("strapWidthMillimetres", strapWidthMillimetres, 5, 40);
    }
  }
}
