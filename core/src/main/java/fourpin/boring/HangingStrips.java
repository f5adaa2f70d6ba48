package fourpin.boring;

import fourpin.boring.BayGrid.Row;
import fourpin.casework.Face;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Edging;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether edging that hangs below a shelf leaves the supports their place under it. */
final class HangingStrips {

  private static final String KIND = "strip-on-supports";

  private final Part shelf;
  private final BayGrid grid;
  private final Settings settings;
  private final Reporter reporter;

  HangingStrips(Part shelf, BayGrid grid, Settings settings, Reporter reporter) {
    this.shelf = shelf;
    this.grid = grid;
    this.settings = settings;
    this.reporter = reporter;
  }

  /** The first strip that lies on the supports in place of the shelf. */
  Optional<Finding> finding() {
    return shelf.edging().stream()
        .filter(b -> hangs(b) && isInTheWay(b))
        .map(this::finding)
        .findFirst();
  }

  private boolean hangs(EdgeBand band) {
    return band.edging().kind() == Edging.Kind.STRIP
        && band.edging().height().isMoreThan(shelf.thickness());
  }

  /** On the ends a strip lies over every support. */
  private boolean isInTheWay(EdgeBand band) {
    return switch (band.face()) {
      case FRONT, BACK -> band.edging().thickness().isMoreThan(room(band.face()));
      default -> true;
    };
  }

  /** From the shelf's edge to the nearest support. */
  private Length room(Face edge) {
    Row front = grid.rows().getFirst();
    Row back = grid.rows().getLast();
    return edge == Face.FRONT
        ? front.front(grid).minus(shelf.box().at(edge))
        : shelf.box().at(edge).minus(back.back(grid));
  }

  private Finding finding(EdgeBand band) {
    String edge = band.face().name().toLowerCase(Locale.ROOT);
    String words =
        "The %s strip of the shelves of bay %d hangs %s below them, onto the supports: the shelves"
            + " would lie on it, and higher than planned.";
    Length hangs = band.edging().height().minus(shelf.thickness());
    return reporter.finding(
        Severity.ERROR,
        KIND,
        Reporter.say(words, edge, grid.bay(), reporter.text(hangs)),
        List.of(),
        Optional.of(shelf.mark()),
        shelf.box(),
        remedies(band));
  }

  private List<Finding.Remedy> remedies(EdgeBand band) {
    Cures cures = new Cures(reporter, KIND, Optional.of(shelf.mark()));
    switch (band.face()) {
      case FRONT -> behind(cures, band, ShelfRows.frontSetback(grid.support()));
      case BACK -> behind(cures, band, ShelfRows.backSetback(grid.support()));
      default -> cures.byHand("state edges: front for it, only", "ends that show");
    }
    return cures.byHand("leave the strip's height out: as high as the shelf", "stiffness").list();
  }

  /** The row so much further in that the strip has room before it. */
  private void behind(Cures cures, EdgeBand band, Setting setback) {
    Length further = band.edging().thickness().minus(room(band.face()));
    cures.setting(
        setback,
        reporter.roundedUp(settings.length(setback).plus(further)),
        "the row stands " + reporter.atLeast(further) + " further in; the shelf tips sooner");
  }
}
