package fourpin.shop.file;

import fourpin.job.Setting;
import fourpin.job.SettingValue;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Settings, each under its key. */
final class SettingsForm {

  private static final Map<Setting, Key<SettingValue>> KEYS = keys();

  static final Form<Map<Setting, SettingValue>> FORM =
      Form.of("settings", List.copyOf(KEYS.values()), SettingsForm::make);

  private SettingsForm() {}

  private static Map<Setting, Key<SettingValue>> keys() {
    Map<Setting, Key<SettingValue>> keys = new LinkedHashMap<>();
    for (Setting setting : Setting.values()) {
      keys.put(
          setting,
          Key.optional(
              setting.key(), Words.setting(setting), standard(setting), setting.meaning()));
    }
    return keys;
  }

  private static String standard(Setting s) {
    return s.inchDefault().equals(s.metricDefault())
        ? s.inchDefault()
        : s.inchDefault() + " for inch, " + s.metricDefault() + " for mm";
  }

  private static Map<Setting, SettingValue> make(Values v) {
    Map<Setting, SettingValue> set = new EnumMap<>(Setting.class);
    KEYS.forEach((setting, key) -> v.find(key).ifPresent(value -> set.put(setting, value)));
    return set;
  }
}
