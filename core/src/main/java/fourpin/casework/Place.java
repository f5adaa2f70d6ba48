package fourpin.casework;

import java.util.Optional;

/**
 * Where a finding is.
 *
 * @param caseName of the job, or empty for the whole job
 * @param part mark of the part
 * @param spot in case coordinates, to be drawn on the picture
 */
public record Place(String caseName, Optional<String> part, Optional<Box> spot) {

  /** The whole job. */
  public static final Place JOB = new Place("", Optional.empty(), Optional.empty());

  public static Place of(String caseName) {
    return new Place(caseName, Optional.empty(), Optional.empty());
  }

  public static Place of(String caseName, String part) {
    return new Place(caseName, Optional.of(part), Optional.empty());
  }

  public static Place of(String caseName, String part, Box spot) {
    return new Place(caseName, Optional.of(part), Optional.of(spot));
  }
}
