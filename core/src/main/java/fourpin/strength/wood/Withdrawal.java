package fourpin.strength.wood;

import fourpin.reference.PowerLaw;
import fourpin.reference.Reference;

/** What screws in side grain are allowed to be pulled by, for each length of thread (NDS 2018). */
public final class Withdrawal {

  private Withdrawal() {}

  public static PowerLaw lagScrew() {
    return Reference.powerLaws().get("lag screw withdrawal");
  }

  public static PowerLaw woodScrew() {
    return Reference.powerLaws().get("wood screw withdrawal");
  }
}
