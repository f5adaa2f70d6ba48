package fourpin.boring.way;

import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import fourpin.measure.LengthStyle;

/** What to ask for where a tool is sold. */
record ToolWords(LengthStyle style) {

  String size(Tool tool) {
    return switch (tool) {
      case Tool.HandDrill _ -> "hand drill";
      case Tool.PlainBit bit ->
          "plain bit of %s, reach %s"
              .formatted(style.diameter(bit.diameter()), style.text(bit.reach()));
      case Tool.CentringBit bit ->
          "self-centring bit of %s, nose %s"
              .formatted(style.diameter(bit.diameter()), style.diameter(bit.nose()));
      case Tool.Router router -> "router, plunges " + style.text(router.travel());
      case Tool.Bushing bushing -> bushing(bushing);
      case Tool.RouterBit bit ->
          "straight bit of %s, reach %s"
              .formatted(style.diameter(bit.diameter()), style.text(bit.reach()));
      case Tool.DrillPress press ->
          "drill press, throat %s, stroke %s"
              .formatted(style.text(press.throat()), style.text(press.stroke()));
      case Tool.PerforatedStrip strip -> strip(strip);
      case Tool.TableSaw saw -> "table saw, cuts " + style.text(saw.cut()) + " wide";
      case Tool.Machine machine ->
          "boring machine, bed %s x %s"
              .formatted(style.number(machine.bedLength()), style.text(machine.bedWidth()));
      case Tool.GuideStock stock ->
          "%s, %s x %s x %s"
              .formatted(
                  stock.material(),
                  style.number(stock.length()),
                  style.number(stock.width()),
                  style.text(stock.thickness()));
    };
  }

  private String bushing(Tool.Bushing bushing) {
    return "guide bushing of %s, bore %s, barrel %s"
        .formatted(
            style.diameter(bushing.outside()),
            style.diameter(bushing.bore()),
            style.text(bushing.barrel()));
  }

  private String strip(Tool.PerforatedStrip strip) {
    return "%s, holes of %s each %s, %s x %s x %s"
        .formatted(
            strip.kind() == StripKind.STEEL ? "perforated steel strap" : "perforated hardboard",
            style.diameter(strip.hole()),
            style.text(strip.pitch()),
            style.number(strip.length()),
            style.number(strip.width()),
            style.text(strip.thickness()));
  }
}
