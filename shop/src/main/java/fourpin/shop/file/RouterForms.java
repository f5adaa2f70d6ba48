package fourpin.shop.file;

import fourpin.job.Tool;
import fourpin.measure.Length;
import java.util.List;

/** The router and what goes in it. */
final class RouterForms {

  private static final Key<Length> TRAVEL =
      Key.required("travel", Words.length("5 mm", "150 mm"), "of the plunge");
  private static final Key<Length> BASE =
      Key.required("base", Words.length("50 mm", "400 mm"), "diameter or width of its base");
  private static final Key<Length> HEIGHT =
      Key.required(
          "height",
          Words.length("80 mm", "600 mm"),
          "over the base: the room it needs in front of a face");

  static final Form<Tool.Router> ROUTER =
      ToolForm.of(
          "a router",
          List.of(TRAVEL, BASE, HEIGHT),
          v ->
              new Tool.Router(
                  v.name(), v.get(TRAVEL), v.get(BASE), v.get(HEIGHT), v.find(ToolForm.BUY)));

  private static final Key<Length> OUTSIDE =
      Key.required(
          "outside", Words.length("4 mm", "80 mm"), "diameter of the barrel that runs in a guide");
  private static final Key<Length> BORE =
      Key.required("bore", Words.length("2 mm", "78 mm"), "inside diameter of the barrel");
  private static final Key<Length> BARREL =
      Key.required(
          "barrel", Words.length("1 mm", "40 mm"), "how far the barrel stands out of the base");

  static final Form<Tool.Bushing> BUSHING =
      ToolForm.of("a bushing", List.of(OUTSIDE, BORE, BARREL), RouterForms::bushing);

  private static final Key<Length> DIAMETER =
      Key.required("diameter", Words.length("1 mm", "60 mm"), "of the hole that it plunges");
  private static final Key<Length> REACH =
      Key.required("reach", Words.length("3 mm", "150 mm"), "how far it can stand out of the base");

  static final Form<Tool.RouterBit> ROUTER_BIT =
      ToolForm.of(
          "a router bit",
          List.of(DIAMETER, REACH),
          v -> new Tool.RouterBit(v.name(), v.get(DIAMETER), v.get(REACH), v.find(ToolForm.BUY)));

  private RouterForms() {}

  private static Tool.Bushing bushing(Values v) {
    v.require(
        v.get(BORE).isLessThan(v.get(OUTSIDE)),
        BORE,
        "a bushing's bore is smaller than its outside of " + v.stated(OUTSIDE),
        "check both, or swap them");
    return new Tool.Bushing(
        v.name(), v.get(OUTSIDE), v.get(BORE), v.get(BARREL), v.find(ToolForm.BUY));
  }
}
