package fourpin.sheets.solid;

import java.util.List;

/**
 * A surface of triangles that look alike.
 *
 * @param corners three numbers of {@code vertices}, from 0, for each triangle: against the clock
 *     for whoever sees it from outside
 */
public record Skin(Look look, List<Vertex> vertices, List<Integer> corners) {

  public Skin {
    vertices = List.copyOf(vertices);
    corners = List.copyOf(corners);
  }
}
