package fourpin.shop.file;

import fourpin.job.Tool;
import fourpin.job.Tool.StripKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** A tool, by its kind. */
final class ToolForm {

  /** What every tool may state. */
  static final Key<BigDecimal> BUY =
      Key.optional(
          "buy",
          Words.money(),
          "it is there",
          "it is not there yet, and costs so much in the job's currency");

  static final Kind<Tool> KIND = new OneOf<>("a tool", forms());

  private ToolForm() {}

  private static Map<String, Form<? extends Tool>> forms() {
    Map<String, Form<? extends Tool>> forms = new LinkedHashMap<>();
    forms.put("hand-drill", DrillForms.HAND_DRILL);
    forms.put("bit", DrillForms.BIT);
    forms.put("centring-bit", DrillForms.CENTRING_BIT);
    forms.put("drill-press", DrillForms.DRILL_PRESS);
    forms.put("router", RouterForms.ROUTER);
    forms.put("bushing", RouterForms.BUSHING);
    forms.put("router-bit", RouterForms.ROUTER_BIT);
    forms.put("hardboard-strip", StripForm.of(StripKind.HARDBOARD));
    forms.put("steel-strap", StripForm.of(StripKind.STEEL));
    forms.put("guide-stock", StripForm.GUIDE_STOCK);
    forms.put("table-saw", MachineForms.TABLE_SAW);
    forms.put("machine", MachineForms.MACHINE);
    return forms;
  }

  /**
   * The form of one kind of tool.
   *
   * @param kind the word for it, with its article: "a hand drill"
   * @param keys of its own, besides its kind and its price
   * @param make the tool; what does not hold between its keys it requires first
   */
  static <T extends Tool> Form<T> of(String kind, List<Key<?>> keys, Function<Values, T> make) {
    String word = kind.replaceFirst("^an? ", "").replace(' ', '-');
    List<Key<?>> all = new ArrayList<>();
    all.add(Key.required(OneOf.KEY, Words.choice(List.of(word)), "what it is"));
    all.addAll(keys);
    all.add(BUY);
    return Form.of(kind, all, make);
  }
}
