package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.LazyList;
import java.util.ArrayList;
import java.util.List;

/**
 * What a whole case does.
 *
 * @param climate moisture of wood in the place's driest and dampest month, and how far solid parts
 *     move between them
 * @param sides how far the sides bow under their shelves
 * @param feet what partitions bring down to the bottom, and how far that sags behind its kick
 * @param top how its top carries what is taken to stand on it; nothing where nothing is
 * @param racking how far its top sways sideways, with the back and without
 * @param standing centre of gravity, pushes that tip it, anchors, load on the floor
 * @param stacked what a case that stands on another one does there; nothing for one on the floor
 * @param spans how far shelves span in it, by material
 */
public record CaseAnswer(
    String caseName,
    List<Figure> climate,
    List<Figure> sides,
    List<Figure> feet,
    List<Figure> top,
    List<Figure> racking,
    List<Figure> standing,
    List<Figure> stacked,
    List<SpanTable> spans) {

  public CaseAnswer {
    climate = List.copyOf(climate);
    sides = List.copyOf(sides);
    feet = List.copyOf(feet);
    top = List.copyOf(top);
    racking = List.copyOf(racking);
    standing = List.copyOf(standing);
    stacked = List.copyOf(stacked);
    spans = LazyList.copyOf(spans);
  }

  /** All of them, in the order they are read. */
  public List<Figure> figures() {
    List<Figure> all = new ArrayList<>(climate);
    all.addAll(sides);
    all.addAll(feet);
    all.addAll(top);
    all.addAll(racking);
    all.addAll(standing);
    all.addAll(stacked);
    spans.forEach(table -> all.addAll(table.figures()));
    return all;
  }
}
