package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Quantity;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import fourpin.sheets.packet.Words;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.Known;
import java.util.List;

/** What a job knows for the fields of its file. */
record JobKnown(State state) implements Known {

  private Job job() {
    return state.job();
  }

  @Override
  public List<Field.Choice> materials(List<Material.Kind> kinds) {
    return job().materials().stream()
        .filter(m -> kinds.contains(m.kind()))
        .map(m -> new Field.Choice(m.name(), m.name() + ", " + m.of()))
        .toList();
  }

  @Override
  public List<String> cases() {
    return job().cases().stream().map(CaseOrder::name).toList();
  }

  /** What holds for the whole job. */
  @Override
  public String standing(Setting setting) {
    return new Words(job()).value(job().settings(), setting);
  }

  @Override
  public String limit(String written) {
    return limit(written, job().unit());
  }

  /** Limits are written with a unit; those of loads and numbers are shown so. */
  static String limit(String written, Unit unit) {
    return written.matches(".*(mm|cm|m|in|ft)")
            && new LengthReader(Unit.MILLIMETRE).read(written)
                instanceof Reading.Good<Length>(Length length)
        ? Quantity.of(length).text(unit)
        : written;
  }

  @Override
  public String start(String group, String key) {
    return Starts.of(job().unit().customary()).find(group + "." + key).orElse("");
  }
}
