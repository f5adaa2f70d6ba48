package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.Quantity;

/** The value of a setting. */
public sealed interface SettingValue {

  record OfLength(Length length) implements SettingValue {}

  /** Numbers and counts. */
  record OfNumber(double number) implements SettingValue {}

  record OfLoad(Quantity load) implements SettingValue {}

  record OfChoice(String choice) implements SettingValue {}
}
