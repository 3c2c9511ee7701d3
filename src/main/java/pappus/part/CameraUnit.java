package pappus.part;

import org.jspecify.annotations.Nullable;

/** The pilot's camera: a part of its own, or sold with its transmitter. */
public sealed interface CameraUnit permits Camera, BundledCamera {
  /** Analogue, or the digital family it belongs to. */
  String family();

  /** Width between its side screws, mm. */
  double widthMillimetres();

  /** Height between plates it needs when tilted, mm. */
  double leastInnerHeightMillimetres();

  /** Length of its cable, mm; 0: plain wires, any length. */
  double cableMillimetres();

  /** What it sees; null where that is not known. */
  @Nullable
  CameraView view();
}
