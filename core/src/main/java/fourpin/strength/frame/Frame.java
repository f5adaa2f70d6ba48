package fourpin.strength.frame;

import java.util.Optional;

/** What leans sideways under a push at its head. */
public sealed interface Frame permits SwayFrame, FrameOnLegs {

  /** How far the head goes under a push there, mm; nothing where the frame falls. */
  Optional<Double> sway(double push);

  /** How many times what stands on it would lean it over by itself. */
  double reserve();

  /** From the floor, or the lowest panel where that lies on it, to the head, mm. */
  double height();

  /** From the lowest panel upwards. */
  SwayFrame above();
}
