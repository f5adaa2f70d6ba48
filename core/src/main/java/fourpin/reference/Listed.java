package fourpin.reference;

import fourpin.measure.Source;
import java.util.List;

/** A row of a reference table. */
public interface Listed {

  /** What the table calls it: "oak, white". */
  String name();

  /** What else it goes by in the trade. */
  default List<String> also() {
    return List.of();
  }

  Source source();
}
