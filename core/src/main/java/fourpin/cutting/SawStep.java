package fourpin.cutting;

import java.util.Optional;

/**
 * One pass at the saw.
 *
 * @param from the piece that is cut
 * @param near what comes off between fence and blade, as wide as the setting; for a trimming cut,
 *     the waste
 * @param far what is beyond the blade; empty when the blade took it all; for a trimming cut, the
 *     sheet as trimmed
 */
public record SawStep(Piece from, Piece near, Optional<Piece> far) {}
