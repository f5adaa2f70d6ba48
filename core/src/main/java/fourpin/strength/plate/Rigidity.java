package fourpin.strength.plate;

/**
 * How a plate resists bending and twist, for each mm of its width, in N·mm: {@code Mx = Dx κx + D1
 * κy}, {@code My = D1 κx + Dy κy}, {@code Mxy = 2 Dxy w,xy} with {@code κ = -w,xx} (Timoshenko and
 * Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, art. 85).
 *
 * @param alongX Dx
 * @param alongY Dy
 * @param coupling D1, by which bending one way bends the other way
 * @param twist Dxy
 */
public record Rigidity(double alongX, double alongY, double coupling, double twist) {

  public Rigidity {
    if (!(alongX > 0 && alongY > 0 && twist > 0 && coupling * coupling < alongX * alongY)) {
      throw new IllegalArgumentException(
          "no plate is this stiff: " + alongX + ", " + alongY + ", " + coupling + ", " + twist);
    }
  }

  /**
   * Of one layer.
   *
   * @param alongX modulus of elasticity along x, MPa
   * @param alongY likewise along y
   * @param poisson how much it narrows along y for each part that it is stretched along x
   * @param shear modulus in its own plane, MPa
   * @param thickness mm
   */
  public static Rigidity of(
      double alongX, double alongY, double poisson, double shear, double thickness) {
    double cubed = thickness * thickness * thickness / 12;
    double free = 1 - poisson * poisson * alongY / alongX;
    return new Rigidity(
        alongX * cubed / free,
        alongY * cubed / free,
        poisson * alongY * cubed / free,
        shear * cubed);
  }

  /** Of one layer that is alike in all directions. */
  public static Rigidity isotropic(double modulus, double poisson, double thickness) {
    return of(modulus, modulus, poisson, modulus / (2 * (1 + poisson)), thickness);
  }

  /** Of a bar whose sides are free: the bending of one way does not bend it the other way. */
  public static Rigidity bar(double alongX, double alongY, double twist) {
    return new Rigidity(alongX, alongY, 0, twist);
  }
}
