package fourpin.sheets.packet;

import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.measure.Length;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.sheets.drawings.PairView;
import fourpin.sheets.pages.Block.SetUp;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Picture and settings of the sheet of two uprights that are marked side by side. */
record PairPicture(Words words, DrillingSheet sheet) {

  DrillingPicture drawn() {
    Step.SquareAcross across = across();
    return new DrillingPicture(
        sheet.worked(),
        new SetUp(
            List.of(
                new SetUp.Line("Stick", across.marks().stick() + ", " + datum(across)),
                new SetUp.Line("Lines", Integer.toString(across.marks().numbers().size())))),
        drafter ->
            new PairView(drafter, sheet.built(), panels(across), across.marks().numbers()).draw(),
        List.of(),
        List.of());
  }

  private Step.SquareAcross across() {
    return sheet.worked().stream()
        .flatMap(s -> s.typed().stream())
        .flatMap(s -> s instanceof Step.SquareAcross a ? Stream.of(a) : Stream.empty())
        .findFirst()
        .orElseThrow();
  }

  private String datum(Step.SquareAcross across) {
    Length datum = across.marks().datum();
    return datum.isZero() ? "zero at the stop" : "end mark " + words.length(datum) + " at the stop";
  }

  private List<PairView.Laid> panels(Step.SquareAcross across) {
    return IntStream.range(0, sheet.faces().size())
        .mapToObj(i -> laid(sheet.faces().get(i), across.panels().get(i)))
        .toList();
  }

  private PairView.Laid laid(FaceUp up, Step.Laid laid) {
    if (laid.edge() != Surface.INDEX_EDGE || laid.end() != Surface.INDEX_END) {
      throw new IllegalArgumentException("Uprights meet with index edges, index ends at the stop");
    }
    return new PairView.Laid(sheet.built().part(up.part()), up.face(), laid.gap());
  }
}
