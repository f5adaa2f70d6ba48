package fourpin.strength;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.casework.Part.Role;
import fourpin.casework.Place;
import fourpin.job.Edging;
import fourpin.job.Edging.Edge;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Strips glued over the ends of solid parts. A strip hardly moves along its grain, and the part
 * that it is glued across moves over the year.
 */
final class EndStrips {

  private final Job job;
  private final String caseName;
  private final Climate climate;

  EndStrips(Job job, String caseName, Climate climate) {
    this.job = job;
    this.caseName = caseName;
    this.climate = climate;
  }

  /** One for all parts of a role that are as wide, of a material and edged alike. */
  List<Finding> of(List<Part> parts) {
    Collection<List<Part>> alike =
        parts.stream()
            .filter(Part::hasEndStrips)
            .filter(part -> moves(part) > 0)
            .collect(
                Collectors.groupingBy(
                    part -> List.of(part.role(), part.material(), part.width(), edging(part)),
                    LinkedHashMap::new,
                    Collectors.toList()))
            .values();
    return alike.stream().map(this::finding).toList();
  }

  private static List<Edging> edging(Part part) {
    return part.edging().stream().map(EdgeBand::edging).distinct().toList();
  }

  /** From the driest month to the dampest, mm; 0 for what is not solid. */
  private double moves(Part part) {
    return climate.moving(part).stream().mapToDouble(f -> f.value().value()).sum();
  }

  private Finding finding(List<Part> parts) {
    Part first = parts.getFirst();
    List<Figure> figures = climate.moving(first);
    String moves = Quantity.of(moves(first), QuantityUnit.LENGTH).text(job.unit());
    return new Finding(
        Severity.DOUBT,
        "end-strips",
        "%s of solid '%s': strips are glued across the grain of their ends, and hardly move along"
                .formatted(
                    parts.stream().map(Part::mark).collect(Collectors.joining(", ")),
                    first.material())
            + " their own; the wood moves by %s over its width from the driest month to the dampest: the"
                .formatted(moves)
            + " joint opens or the wood splits",
        figures,
        Place.of(caseName, first.mark(), first.box()),
        List.of(
            without(first),
            new Remedy(
                "glue the strips over the front third of the ends only, and hold the rest by screws in"
                    + " slots that let the wood move by "
                    + moves,
                "slots, and care with the glue"),
            new Remedy("make it of plywood, or edge the ends with banding", "other looks")));
  }

  /** A key where all edges that are left have one strip, of shelves that the job file edges. */
  private Remedy without(Part part) {
    List<Edging> all = edging(part);
    List<Edge> left =
        all.getFirst().edges().stream().filter(e -> e == Edge.FRONT || e == Edge.BACK).toList();
    Optional<Stated> stated =
        Optional.of(all.getFirst())
            .filter(_ -> part.role() == Role.SHELF && all.size() == 1 && !left.isEmpty())
            .map(of -> new Edging(of.kind(), of.material(), of.thickness(), of.height(), left))
            .map(strip -> new Stated.ShelvesOf(Optional.empty(), Optional.of(strip)));
    return new Remedy("leave the strips on the ends out", "ends that show", stated);
  }
}
