package fourpin.sheets.solid;

/**
 * A corner of triangles: a place in millimetres, in the directions of the case (right, back, up),
 * from the origin of its body; and the direction that the surface looks to there, of length 1.
 */
public record Vertex(double x, double y, double z, double toX, double toY, double toZ) {}
