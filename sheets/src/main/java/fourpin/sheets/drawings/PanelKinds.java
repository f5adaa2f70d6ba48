package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Parts with something cut or bored in them, those that are alike in everything together. */
public final class PanelKinds {

  private PanelKinds() {}

  /** Groups in the order of the case's parts; each has at least one part. */
  public static List<List<Part>> of(BuiltCase built) {
    Map<List<Object>, List<Part>> kinds = new LinkedHashMap<>();
    built.parts().stream()
        .filter(part -> !part.features().isEmpty())
        .forEach(part -> kinds.computeIfAbsent(shape(part), _ -> new ArrayList<>()).add(part));
    return List.copyOf(kinds.values());
  }

  /** The faces of a part that something is worked from, the broad ones. */
  public static List<Face> facesToDraw(Part part) {
    List<Face> broad = broadFaces(part);
    List<Face> worked = broad.stream().filter(face -> isWorked(part, face)).toList();
    return worked.isEmpty() ? List.of(broad.getFirst()) : worked;
  }

  private static List<Face> broadFaces(Part part) {
    return Stream.of(Face.RIGHT, Face.LEFT, Face.TOP, Face.BOTTOM, Face.FRONT, Face.BACK)
        .filter(face -> face.axis() == part.thicknessAxis())
        .toList();
  }

  private static boolean isWorked(Part part, Face face) {
    return part.features().stream().anyMatch(f -> f.face() == face && !isNotch(f));
  }

  private static boolean isNotch(Feature feature) {
    return feature instanceof Feature.Channel c && c.kind() == Feature.Channel.Kind.NOTCH;
  }

  /** All that makes a part different from another, wherever it stands and whatever it is for. */
  private static List<Object> shape(Part part) {
    Part moved = part;
    for (Axis axis : Axis.values()) {
      moved = moved.shifted(axis, part.box().low().along(axis).negated());
    }
    return List.of(
        moved.role(),
        moved.material(),
        moved.box(),
        moved.lengthAxis(),
        moved.edging(),
        moved.features().stream().map(PanelKinds::unnamed).toList());
  }

  private static Feature unnamed(Feature feature) {
    return switch (feature) {
      case Feature.Channel c -> new Feature.Channel(c.kind(), c.face(), c.volume(), "");
      case Feature.Hole h ->
          new Feature.Hole(h.use(), h.face(), h.centre(), h.diameter(), h.depth(), "");
    };
  }
}
