package fourpin.plan;

import static fourpin.job.SampleJobs.in;

import fourpin.boring.BayGrid.Row;
import fourpin.boring.Boring;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Method;
import fourpin.boring.way.WayAnswer;
import fourpin.casework.Face;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The bookcase of one bay on pins, bored through a guide that was laid out by hand. */
final class GuidedBookcase {

  private GuidedBookcase() {}

  /**
   * A guide of hardboard 1/4 in thick and 3 1/2 in wide with holes 3/8 in, 1 in apart, from 10 7/32
   * in above the foot on, 1 1/2 in from its index edge: as the rows of the bookcase lie, front rows
   * flush. The back rows are 9 27/32 in from the front edge of sides 12 in deep: 2 5/32 in from the
   * back edge. The holes are 2 in from the guide's far edge, so a strip of 5/32 in keeps it off.
   */
  static CaseBoring boring(Boring boring) {
    return boring(boring, in("80"));
  }

  /** The same with a guide of another length. */
  static CaseBoring boring(Boring boring, Length length) {
    List<Guide.GuideHole> holes = new ArrayList<>();
    for (int n = 1; n <= 69; n++) {
      holes.add(
          new Guide.GuideHole(
              n,
              in("9 7/32").plus(in("1").times(n - 1)),
              in("1 1/2"),
              in("3/8"),
              n == 1 ? Guide.Use.MASKED : Guide.Use.BORED));
    }
    Guide guide =
        new Guide(
            "G",
            new Guide.Make.Bored("hardboard offcut"),
            "hardboard",
            length,
            in("3 1/2"),
            in("1/4"),
            holes,
            in("3/4"));
    BitSetting bit =
        new BitSetting(
            "bushing 3/8 in", in("1/4"), in("3/8"), in("1/4"), in("3/8"), in("1/16"), in("9/32"));
    List<Clamping> clampings = new ArrayList<>();
    for (String part : List.of("L", "R")) {
      Face face = part.equals("L") ? Face.RIGHT : Face.LEFT;
      clampings.add(clamping(part, face, Row.Name.FRONT, Face.FRONT, in("0")));
      clampings.add(clamping(part, face, Row.Name.BACK, Face.BACK, in("5/32")));
    }
    Method method = new Method.Guided(Method.How.BY_HAND, guide, bit, clampings);
    return boring(boring, Way.ROUTER_GUIDE, method);
  }

  /** The same bay bored in another way. */
  static CaseBoring boring(Boring boring, Way way, Method method) {
    return new CaseBoring(
        "North",
        boring.grids(),
        Stream.of(Way.values())
            .map(
                w ->
                    new WayAnswer(
                        w,
                        WayAnswer.Verdict.POSSIBLE,
                        List.of(),
                        List.of(),
                        Optional.of(method),
                        List.of(),
                        List.of()))
            .toList(),
        way,
        "stated",
        List.of());
  }

  /**
   * A guide of 40 such holes, the first at level 1, that is moved along by the pin in its hole 1.
   */
  static CaseBoring stepped(Boring boring) {
    List<Guide.GuideHole> holes =
        IntStream.rangeClosed(1, 40)
            .mapToObj(
                n ->
                    new Guide.GuideHole(
                        n,
                        in("9 7/32").plus(in("1").times(n)),
                        in("1 1/2"),
                        in("3/8"),
                        Guide.Use.BORED))
            .toList();
    Method.Guided whole = (Method.Guided) boring(boring).method();
    Guide guide = whole.guide();
    Guide shorter =
        new Guide(
            guide.mark(),
            guide.make(),
            guide.material(),
            in("52"),
            guide.width(),
            guide.thickness(),
            holes,
            guide.block());
    List<Clamping.Reach> reaches =
        List.of(
            new Clamping.Reach(Optional.empty(), IntStream.rangeClosed(1, 40).boxed().toList()),
            new Clamping.Reach(
                Optional.of(new Clamping.Step(1, 40)),
                IntStream.rangeClosed(2, 29).boxed().toList()));
    List<Clamping> clampings =
        whole.clampings().stream()
            .map(
                c ->
                    new Clamping(
                        c.bay(),
                        c.part(),
                        c.face(),
                        c.row(),
                        c.edge(),
                        c.across(),
                        c.along(),
                        c.bearing(),
                        reaches))
            .toList();
    return boring(
        boring, Way.ROUTER_GUIDE, new Method.Guided(whole.how(), shorter, whole.bit(), clampings));
  }

  private static Clamping clamping(String part, Face face, Row.Name row, Face edge, Length across) {
    List<Integer> holes = IntStream.rangeClosed(2, 69).boxed().toList();
    return new Clamping(
        1,
        part,
        face,
        row,
        edge,
        across,
        in("0"),
        new Clamping.Bearing.End(),
        List.of(new Clamping.Reach(Optional.empty(), holes)));
  }
}
