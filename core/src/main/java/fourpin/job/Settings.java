package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The settings in force: what was set, over the defaults for the job's unit.
 *
 * @param unit whose defaults hold
 * @param set what the shop, the job or the case sets
 * @param ofShop which of these the shop file alone states
 */
public record Settings(Unit unit, Map<Setting, SettingValue> set, Set<Setting> ofShop) {

  // Read once: settings are asked for by the thousand.
  private static final Map<Setting, SettingValue> INCH_DEFAULTS = defaults(Unit.INCH);
  private static final Map<Setting, SettingValue> METRIC_DEFAULTS = defaults(Unit.MILLIMETRE);

  public Settings {
    Map<Setting, SettingValue> copy = new EnumMap<>(Setting.class);
    copy.putAll(set);
    set = Collections.unmodifiableMap(copy);
    ofShop = Set.copyOf(ofShop);
  }

  /** The defaults alone. */
  public static Settings standard(Unit unit) {
    return new Settings(unit, Map.of(), Set.of());
  }

  /** These settings with others over them. */
  public Settings with(Map<Setting, SettingValue> over) {
    Set<Setting> left = EnumSet.noneOf(Setting.class);
    left.addAll(ofShop);
    left.removeAll(over.keySet());
    return new Settings(unit, both(over), left);
  }

  /** These settings with those of a shop file over them. */
  public Settings withShop(Map<Setting, SettingValue> over) {
    return new Settings(unit, both(over), over.keySet());
  }

  private Map<Setting, SettingValue> both(Map<Setting, SettingValue> over) {
    Map<Setting, SettingValue> both = new EnumMap<>(Setting.class);
    both.putAll(set);
    both.putAll(over);
    return both;
  }

  public Settings with(Setting setting, SettingValue value) {
    return with(Map.of(setting, value));
  }

  /**
   * The length in force. @throws IllegalStateException if the setting has no default and is not set
   */
  public Length length(Setting setting) {
    return find(setting)
        .map(v -> ((SettingValue.OfLength) v).length())
        .orElseThrow(() -> unset(setting));
  }

  /** The length in force, of a setting that may have none. */
  public Optional<Length> optionalLength(Setting setting) {
    return find(setting).map(v -> ((SettingValue.OfLength) v).length());
  }

  public double number(Setting setting) {
    return find(setting)
        .map(v -> ((SettingValue.OfNumber) v).number())
        .orElseThrow(() -> unset(setting));
  }

  /** The number in force, of a setting that may have none. */
  public Optional<Double> optionalNumber(Setting setting) {
    return find(setting).map(v -> ((SettingValue.OfNumber) v).number());
  }

  public int count(Setting setting) {
    return (int) number(setting);
  }

  public Quantity load(Setting setting) {
    return find(setting)
        .map(v -> ((SettingValue.OfLoad) v).load())
        .orElseThrow(() -> unset(setting));
  }

  public String choice(Setting setting) {
    return find(setting)
        .map(v -> ((SettingValue.OfChoice) v).choice())
        .orElseThrow(() -> unset(setting));
  }

  /** Where the value in force comes from: the job, the shop file, or the origin of the default. */
  public Source source(Setting setting) {
    if (!set.containsKey(setting)) {
      return setting.origin();
    }
    return ofShop.contains(setting) ? Source.SHOP_FILE : Source.STATED;
  }

  private Optional<SettingValue> find(Setting setting) {
    return Optional.ofNullable(set.get(setting)).or(() -> standard(setting));
  }

  private Optional<SettingValue> standard(Setting setting) {
    Map<Setting, SettingValue> defaults = unit.customary() ? INCH_DEFAULTS : METRIC_DEFAULTS;
    return Optional.ofNullable(defaults.get(setting));
  }

  private static Map<Setting, SettingValue> defaults(Unit unit) {
    Map<Setting, SettingValue> defaults = new EnumMap<>(Setting.class);
    for (Setting setting : Setting.values()) {
      String text = unit.customary() ? setting.inchDefault() : setting.metricDefault();
      if (!text.isEmpty()) {
        defaults.put(setting, SettingReader.read(setting, text, unit).orThrow());
      }
    }
    return Collections.unmodifiableMap(defaults);
  }

  private static IllegalStateException unset(Setting setting) {
    return new IllegalStateException(setting.key() + " has no value");
  }
}
