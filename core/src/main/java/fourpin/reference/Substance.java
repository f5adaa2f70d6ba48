package fourpin.reference;

import java.util.Optional;

/** What a part is made of, as far as it bends and weighs. */
public sealed interface Substance extends Listed permits Wood, PanelProduct {

  /** Substances that creep and shear alike. */
  enum Family {
    SOLID_WOOD,
    LAMINATED_WOOD,
    PLYWOOD,
    STRAND_BOARD,
    PARTICLEBOARD,
    FIBREBOARD,
    GLASS
  }

  Family family();

  /** Modulus of elasticity in bending along the grain, face grain or length of the sheet. */
  Band modulus();

  /** Likewise across, where it is known. */
  Optional<Band> modulusAcross();

  Band density();
}
