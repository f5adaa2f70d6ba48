package fourpin.job;

import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import java.util.regex.Pattern;

/** Reads the value of a setting and holds it against the setting's range. */
public final class SettingReader {

  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");

  private SettingReader() {}

  /**
   * @param unit of a bare length
   */
  public static Reading<SettingValue> read(Setting setting, String text, Unit unit) {
    return switch (setting.kind()) {
      case CHOICE -> choice(setting, text.strip());
      case LENGTH -> new LengthReader(unit).read(text).then(length -> inRange(setting, length));
      case NUMBER, COUNT -> number(setting, text.strip());
      case LINE_LOAD -> QuantityReader.LOAD.read(text).then(load -> inRange(setting, load));
    };
  }

  private static Reading<SettingValue> choice(Setting setting, String text) {
    return setting.choices().contains(text)
        ? Reading.good(new SettingValue.OfChoice(text))
        : Reading.bad(
            setting.key() + " is one of " + String.join(", ", setting.choices()),
            "choose one of them");
  }

  private static Reading<SettingValue> number(Setting setting, String text) {
    if (!NUMBER.matcher(text).matches()) {
      return Reading.bad(
          setting.key() + " is a number", "write digits, with a point before decimals");
    }
    double number = Double.parseDouble(text);
    if (setting.kind() == Setting.Kind.COUNT && number != Math.rint(number)) {
      return Reading.bad(setting.key() + " is a whole number", "leave out the decimals");
    }
    if (setting.kind() == Setting.Kind.COUNT && number % 2 == 0) {
      return Reading.bad(
          setting.key() + " is odd, with the planned one in the middle",
          "take one more or one less");
    }
    boolean fits =
        number >= Double.parseDouble(setting.least())
            && number <= Double.parseDouble(setting.most());
    return fits ? Reading.good(new SettingValue.OfNumber(number)) : outside(setting);
  }

  private static Reading<SettingValue> inRange(Setting setting, Length length) {
    boolean fits =
        length.isAtLeast(limit(setting.least())) && limit(setting.most()).isAtLeast(length);
    return fits ? Reading.good(new SettingValue.OfLength(length)) : outside(setting);
  }

  private static Reading<SettingValue> inRange(Setting setting, Quantity load) {
    if (load.unit() != QuantityUnit.LINE_LOAD) {
      return Reading.bad(setting.key() + " is a load by length", "use lb/ft, kg/m or N/m");
    }
    boolean fits =
        load.value() >= QuantityReader.LOAD.read(setting.least()).orThrow().value()
            && load.value() <= QuantityReader.LOAD.read(setting.most()).orThrow().value();
    return fits ? Reading.good(new SettingValue.OfLoad(load)) : outside(setting);
  }

  private static Length limit(String text) {
    return new LengthReader(Unit.MILLIMETRE).read(text).orThrow();
  }

  private static Reading<SettingValue> outside(Setting setting) {
    return Reading.bad(
        setting.key() + " is from " + setting.least() + " to " + setting.most(),
        "check the number and its unit");
  }
}
