package fourpin.boring.tolerance;

import static fourpin.job.SampleJobs.bay;
import static fourpin.job.SampleJobs.in;
import static fourpin.job.SampleJobs.job;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Clamping.Step;
import fourpin.boring.way.Gang;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Method;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.casework.Face;
import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A case of two bays, and ways of boring it put together by hand. */
record Workshop(BuiltCase built, List<BayGrid> grids) {

  static final List<Setting> ERRORS =
      Stream.concat(
              Stream.of(CauseKind.values()).flatMap(kind -> kind.setting().stream()),
              Stream.of(Setting.STEP_PIN_SLIP))
          .distinct()
          .toList();

  /** How many holes a guide that is moved along has. */
  private static final int SHORT = 20;

  static Workshop with(Settings settings, Support support) {
    CaseDraft draft = new CaseDraft();
    draft.settings = settings;
    draft.bays = List.of(bay(4).with(support), bay(4).with(support));
    Job job = job(draft.order());
    Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
    return new Workshop(boring.cases().getFirst(), boring.grids());
  }

  static Workshop with(Settings settings) {
    return with(settings, pins("1/4"));
  }

  static Support pins(String diameter) {
    return new Support.Pins(in(diameter), in("3/8"), in("3/8"), in("1/8"));
  }

  static Settings defaults() {
    return Settings.standard(Unit.INCH);
  }

  /** Nothing misses but what is named. */
  static Settings only(Setting setting, String twice) {
    Settings settings = defaults();
    for (Setting error : ERRORS) {
      settings = settings.with(error, new SettingValue.OfLength(in("0")));
    }
    for (Setting wear : List.of(Setting.WEAR_BIT, Setting.WEAR_NOSE, Setting.WEAR_STEEL)) {
      settings = settings.with(wear, new SettingValue.OfNumber(0));
    }
    return settings.with(setting, new SettingValue.OfLength(in(twice)));
  }

  ErrorModel model(Way way, Method method, Alteration alteration) {
    return ErrorModels.of(built, grids, way, method, alteration);
  }

  /** As long as the rows; {@code play} is what the guide's holes are wider. */
  Method.Guided guided(String play) {
    return whole(in(play));
  }

  /** What runs in the guide's holes is thicker than they are, by {@code over}. */
  Method.Guided tapered(String over) {
    return whole(in(over).negated());
  }

  private Method.Guided whole(Length play) {
    int levels = grids.getFirst().levels().size();
    return guided(play, levels, List.of(new Reach(Optional.empty(), numbers(1, levels))));
  }

  /** Moved along, its first hole over the last hole that was bored before. */
  Method.Guided stepped(String play) {
    List<Reach> reaches = new ArrayList<>();
    reaches.add(new Reach(Optional.empty(), numbers(1, SHORT)));
    int left = grids.getFirst().levels().size() - SHORT;
    while (left > 0) {
      int more = Math.min(left, SHORT - 1);
      reaches.add(new Reach(Optional.of(new Step(1, SHORT)), numbers(2, 1 + more)));
      left -= more;
    }
    return guided(in(play), SHORT, reaches);
  }

  private static List<Integer> numbers(int first, int last) {
    return IntStream.rangeClosed(first, last).boxed().toList();
  }

  private Method.Guided guided(Length play, int holes, List<Reach> reaches) {
    Length foot = built.part(built.bays().getFirst().left()).box().at(Face.BOTTOM);
    Length runs = in("3/8");
    List<GuideHole> bored = new ArrayList<>();
    for (Level level : grids.getFirst().levels().subList(0, holes)) {
      bored.add(
          new GuideHole(
              level.number(),
              level.height().minus(foot),
              in("2"),
              runs.plus(play),
              Guide.Use.BORED));
    }
    Guide guide =
        new Guide(
            "G1",
            new Guide.Make.Bored("MDF"),
            "MDF",
            in("84"),
            in("4"),
            in("1/4"),
            bored,
            in("3/4"));
    BitSetting bit =
        new BitSetting(
            "a bit in a nose", in("1/4"), runs, in("1/4"), in("3/8"), in("1/8"), in("3/16"));
    return new Method.Guided(Method.How.BY_HAND, guide, bit, clampings(foot, reaches));
  }

  private List<Clamping> clampings(Length foot, List<Reach> reaches) {
    List<Clamping> clampings = new ArrayList<>();
    for (BayGrid grid : grids) {
      BaySpace bay = built.bays().get(grid.bay() - 1);
      for (Face inside : List.of(Face.RIGHT, Face.LEFT)) {
        String mark = inside == Face.RIGHT ? bay.left() : bay.right();
        Length along = foot.minus(built.part(mark).box().at(Face.BOTTOM));
        for (Row row : grid.rows()) {
          Face edge = row.name() == Row.Name.FRONT ? Face.FRONT : Face.BACK;
          clampings.add(
              new Clamping(
                  grid.bay(),
                  mark,
                  inside,
                  row.name(),
                  edge,
                  Length.ZERO,
                  along,
                  new Bearing.End(),
                  reaches));
        }
      }
    }
    return clampings;
  }

  /** Two uprights whose ends are level, side by side. */
  static Gang pair(int bay, String left, String right) {
    return new Gang(
        bay,
        Length.ZERO,
        List.of(
            new Gang.Laid(left, Face.RIGHT, Length.ZERO),
            new Gang.Laid(right, Face.LEFT, Length.ZERO)));
  }
}
