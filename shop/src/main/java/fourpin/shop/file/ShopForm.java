package fourpin.shop.file;

import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Shop;
import fourpin.job.Tool;
import java.util.List;
import java.util.Map;

/** The whole shop file. */
final class ShopForm {

  private static final int LONGEST_NAME = 60;
  private static final int MOST_TOOLS = 200;

  /** What a shop file states: the shop, and settings for every job made in it. */
  record Stated(Shop shop, Map<Setting, SettingValue> settings) {
    static final Stated NONE = new Stated(Shop.NONE, Map.of());
  }

  private static final Key<String> SHOP =
      Key.required(
          "shop",
          Words.free("a name", "Harrow Mill workshop", LONGEST_NAME),
          "what the shop is called");
  private static final Key<Map<Setting, SettingValue>> SETTINGS =
      Key.optional(
          "settings",
          SettingsForm.FORM,
          "as a job has them",
          "what holds for every job of the shop; a job's own settings go over them");
  static final Key<List<Tool>> TOOLS =
      Key.optional(
          "tools",
          new Named<>("a tool", ToolForm.KIND, MOST_TOOLS),
          "a hand drill, a punch and a story stick",
          "what the shop bores and grooves with, each under a name that the plan calls it by");

  static final Form<Stated> FORM =
      Form.of(
          "a shop",
          List.of(SHOP, JobForm.UNIT, SETTINGS, TOOLS),
          v ->
              new Stated(
                  new Shop(v.get(SHOP), v.find(TOOLS).orElse(List.of())),
                  v.find(SETTINGS).orElse(Map.of())));

  private ShopForm() {}
}
