package fourpin.sheets.solid;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Face;
import fourpin.casework.Point;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * A block with blocks taken out of it: parted by all their planes into cells, each of which is
 * whole or gone. Its surface is what lies between the two, and is closed.
 *
 * @param zones blocks of it that look otherwise; where they share a cell, the later holds
 * @param gone what was taken out, surfaces on the surface of the block or inside
 */
record Carved(Box block, Look look, List<Zone> zones, List<Box> gone) {

  /** A block of another look. */
  record Zone(Box box, Look look) {}

  void addTo(Skins skins) {
    Cells cells = new Cells();
    for (int x = 0; x < cells.count(Axis.X); x++) {
      for (int y = 0; y < cells.count(Axis.Y); y++) {
        for (int z = 0; z < cells.count(Axis.Z); z++) {
          cells.add(skins, new Cell(x, y, z));
        }
      }
    }
  }

  /** A cell by its numbers along the axes, from 0. */
  private record Cell(int x, int y, int z) {

    int along(Axis axis) {
      return switch (axis) {
        case X -> x;
        case Y -> y;
        case Z -> z;
      };
    }

    Cell beyond(Face face) {
      int by = face.direction();
      return switch (face.axis()) {
        case X -> new Cell(x + by, y, z);
        case Y -> new Cell(x, y + by, z);
        case Z -> new Cell(x, y, z + by);
      };
    }
  }

  private final class Cells {

    private final List<List<Length>> planes =
        Stream.of(Axis.values()).map(Carved.this::planes).toList();

    int count(Axis axis) {
      return planes.get(axis.ordinal()).size() - 1;
    }

    private Length plane(Axis axis, int number) {
      return planes.get(axis.ordinal()).get(number);
    }

    void add(Skins skins, Cell cell) {
      Optional<Look> seen = look(cell);
      for (Face face : Face.values()) {
        if (seen.isPresent() && look(cell.beyond(face)).isEmpty()) {
          add(skins, cell, face, seen.get());
        }
      }
    }

    private void add(Skins skins, Cell cell, Face face, Look seen) {
      Axis first = Skins.first(face.axis());
      Axis second = Skins.second(face.axis());
      double left = plane(first, cell.along(first)).mm();
      double right = plane(first, cell.along(first) + 1).mm();
      double low = plane(second, cell.along(second)).mm();
      double high = plane(second, cell.along(second) + 1).mm();
      skins.add(
          seen,
          face,
          box(cell).at(face).mm(),
          List.of(
              new double[] {left, low},
              new double[] {right, low},
              new double[] {right, high},
              new double[] {left, high}));
    }

    /** Nothing where there is no wood. */
    private Optional<Look> look(Cell cell) {
      boolean outside =
          Stream.of(Axis.values()).anyMatch(a -> cell.along(a) < 0 || cell.along(a) >= count(a));
      return outside ? Optional.empty() : Carved.this.look(box(cell));
    }

    private Box box(Cell cell) {
      return new Box(
          new Point(plane(Axis.X, cell.x), plane(Axis.Y, cell.y), plane(Axis.Z, cell.z)),
          new Point(
              plane(Axis.X, cell.x + 1), plane(Axis.Y, cell.y + 1), plane(Axis.Z, cell.z + 1)));
    }
  }

  private Optional<Look> look(Box cell) {
    if (gone.stream().anyMatch(taken -> taken.contains(cell))) {
      return Optional.empty();
    }
    return zones.reversed().stream()
        .filter(zone -> zone.box().contains(cell))
        .map(Zone::look)
        .findFirst()
        .or(() -> Optional.of(look));
  }

  private List<Length> planes(Axis axis) {
    TreeSet<Length> planes = new TreeSet<>();
    Stream.of(Stream.of(block), zones.stream().map(Zone::box), gone.stream())
        .flatMap(boxes -> boxes)
        .flatMap(box -> Stream.of(box.low().along(axis), box.high().along(axis)))
        .filter(at -> !at.isLessThan(block.low().along(axis)))
        .filter(at -> !at.isMoreThan(block.high().along(axis)))
        .forEach(planes::add);
    return new ArrayList<>(planes);
  }
}
