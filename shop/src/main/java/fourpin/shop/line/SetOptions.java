package fourpin.shop.line;

import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.measure.Reading;
import fourpin.measure.Spelling;
import fourpin.measure.Unit;
import fourpin.plan.CutPlanner;
import fourpin.shop.yaml.Problem;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Settings of a cutting without a job, each written KEY=VALUE. */
final class SetOptions {

  private final Optional<Unit> bare;
  private final List<String> wrong;
  private final Map<Setting, SettingValue> values = new EnumMap<>(Setting.class);

  private SetOptions(Optional<Unit> bare, List<String> wrong) {
    this.bare = bare;
    this.wrong = wrong;
  }

  /**
   * Reads them.
   *
   * @param printed the unit of what is printed
   * @param bare the unit of lengths without one; without it such lengths are refused
   * @param wrong gets what is wrong with them
   */
  static Settings read(
      List<String> options, Unit printed, Optional<Unit> bare, List<String> wrong) {
    SetOptions read = new SetOptions(bare, wrong);
    options.forEach(read::read);
    return Settings.standard(printed).with(read.values);
  }

  private void read(String option) {
    switch (read(option.split("=", 2))) {
      case Reading.Good<Map.Entry<Setting, SettingValue>>(var value) ->
          values.put(value.getKey(), value.getValue());
      case Reading.Bad<Map.Entry<Setting, SettingValue>>(String rule, String remedy) ->
          wrong.add(Problem.ofFile("--set " + option, rule, remedy));
    }
  }

  private Reading<Map.Entry<Setting, SettingValue>> read(String... sides) {
    if (sides.length == 1) {
      return Reading.bad("nothing is said of its value", "write it like kerf=3.2mm");
    }
    String text = sides[1];
    List<String> keys = CutPlanner.SETTINGS.stream().map(Setting::key).toList();
    Optional<Setting> named = Setting.named(sides[0]).filter(CutPlanner.SETTINGS::contains);
    if (named.isEmpty()) {
      return Reading.bad(
          "cutting has no such setting",
          Spelling.nearest(sides[0], keys)
              .map(near -> "did you mean '" + near + "'?")
              .orElse("it has " + String.join(", ", keys)));
    }
    if (values.containsKey(named.get())) {
      return Reading.bad("it is set before", "leave the one that holds");
    }
    if (named.get().kind() == Setting.Kind.LENGTH
        && bare.isEmpty()
        && text.strip().matches("[\\d./ -]+")) {
      return Reading.bad("a length without a unit", "write it like 1/8 in or 3.2 mm");
    }
    return SettingReader.read(named.get(), text, bare.orElse(Unit.MILLIMETRE))
        .then(value -> Reading.good(Map.entry(named.get(), value)));
  }
}
