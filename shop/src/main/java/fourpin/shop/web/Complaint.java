package fourpin.shop.web;

import fourpin.shop.fields.Complaints;
import fourpin.shop.fields.Field;
import fourpin.shop.yaml.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is said at a field whose new value a file can't hold.
 *
 * @param rule with the thing that it is about in front, where that is another
 */
record Complaint(String typed, String rule, String remedy) {

  /** Of several problems the one about the field, if there is one. */
  static Complaint of(List<Problem> problems, Field field, String typed) {
    Optional<Problem> own =
        problems.stream().filter(p -> Complaints.isAbout(p, field.at())).findFirst();
    if (own.isPresent()) {
      return new Complaint(typed, own.get().rule(), own.get().remedy());
    }
    Problem other = problems.getFirst();
    return typed.isBlank()
        ? new Complaint(typed, "it can't be left empty", other.remedy())
        : new Complaint(typed, other.thing() + ": " + other.rule(), other.remedy());
  }

  Typing at(Field field) {
    return new Typing(Map.of(field.shown().id(), Typing.Typed.wrong(typed, rule, remedy)));
  }
}
