package fourpin.boring;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Stated;
import fourpin.job.Bay;
import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.SettingValue;
import fourpin.measure.Length;
import fourpin.measure.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Gathers the cures of one finding: those that can be written into a job file only if they cure it
 * in a trial, those that are done by hand as they are.
 */
final class Cures {

  private final Reporter reporter;
  private final String kind;
  private final Optional<String> part;
  private final Trials.Reach reach;
  private final List<Remedy> list = new ArrayList<>();

  /**
   * @param kind of the finding, {@code part} the mark of the part that it is on, if it is on one
   */
  Cures(Reporter reporter, String kind, Optional<String> part) {
    this(reporter, kind, part, Trials.Reach.ONE);
  }

  Cures(Reporter reporter, String kind, Optional<String> part, Trials.Reach reach) {
    this.reporter = reporter;
    this.kind = kind;
    this.part = part;
    this.reach = reach;
  }

  List<Remedy> list() {
    return List.copyOf(list);
  }

  /** At the bench or in the shop that sells it. */
  Cures byHand(String what, String cost) {
    list.add(new Remedy(what, cost));
    return this;
  }

  /** By other stock or supports, if nothing else cures it. */
  Cures orElse(String what, String cost) {
    return list.isEmpty() ? byHand(what, cost) : this;
  }

  /** In the job file. */
  Cures stated(String what, String cost, UnaryOperator<CaseOrder> change) {
    return tried(new Remedy(what, cost), change);
  }

  /** In the job file, by a change that it can be told. */
  Cures stated(String what, String cost, Stated stated, UnaryOperator<CaseOrder> change) {
    return tried(new Remedy(what, cost, Optional.of(stated)), change);
  }

  private Cures tried(Remedy remedy, UnaryOperator<CaseOrder> change) {
    if (reporter.trials().cures(kind, part, reach, change)) {
      list.add(remedy);
    }
    return this;
  }

  /** A setting of the case, if its range allows the value. */
  Cures setting(Setting setting, Length value, String cost) {
    return setting(setting, value, "", cost);
  }

  /**
   * @param more said after the value
   */
  Cures setting(Setting setting, Length value, String more, String cost) {
    String text = reporter.text(value);
    String what = "set " + setting.key() + " to " + text + more;
    if (read(setting, text) instanceof Reading.Good<SettingValue>(SettingValue read)) {
      Stated stated = new Stated.OfSetting(setting, text);
      tried(
          new Remedy(what, cost, Optional.of(stated)),
          o -> o.with(o.settings().with(setting, read)));
    }
    return this;
  }

  private Reading<SettingValue> read(Setting setting, String text) {
    return SettingReader.read(setting, text, reporter.style().unit());
  }

  /** The first of several values that cures it. */
  Cures firstOf(Setting setting, List<Length> values, String cost) {
    int before = list.size();
    for (Length value : values) {
      if (list.size() == before) {
        setting(setting, value, cost);
      }
    }
    return this;
  }

  /** Changes those bays of a case that are meant. */
  static UnaryOperator<CaseOrder> bays(Predicate<Integer> meant, UnaryOperator<Bay> change) {
    return order -> {
      List<Bay> bays = new ArrayList<>();
      for (Bay bay : order.bays()) {
        bays.add(meant.test(bays.size() + 1) ? change.apply(bay) : bay);
      }
      return order.with(bays);
    };
  }
}
