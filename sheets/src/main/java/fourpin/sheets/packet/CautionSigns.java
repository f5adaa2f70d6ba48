package fourpin.sheets.packet;

import fourpin.bench.Caution;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Prose;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Cautions as they stand at the work, for steps that are done one after the other: the whole text
 * where a hazard first comes up, its essence wherever it comes up again, so that a new one is not
 * drowned by those already read. None is ever left out.
 *
 * <p>Remembers what it has told; not for several threads.
 */
final class CautionSigns {

  private final Set<Caution> told;

  CautionSigns() {
    this(Set.of());
  }

  private CautionSigns(Set<Caution> told) {
    this.told = new HashSet<>(told);
  }

  /** The same memory apart, to try how a page would come out. */
  CautionSigns copy() {
    return new CautionSigns(told);
  }

  /** Remembers what a copy has told, since its page is taken. */
  void take(CautionSigns copy) {
    told.addAll(copy.told);
  }

  /** Empty for no cautions. */
  List<Block> at(List<Caution> cautions) {
    if (cautions.isEmpty()) {
      return List.of();
    }
    boolean known = told.containsAll(cautions);
    List<Prose> texts = cautions.stream().map(this::text).toList();
    return List.of(
        new Block.Callout(Block.Sign.CAUTION, "Caution", known ? List.of(run(texts)) : texts));
  }

  /** Tells the whole of it when it next comes up: hands come too near for its essence. */
  void again(Caution caution) {
    told.remove(caution);
  }

  /** One after the other in a line: what was read before needs little room. */
  private static Prose run(List<Prose> texts) {
    return texts.stream().reduce((a, b) -> a.then(Prose.plain(" ")).then(b)).orElseThrow();
  }

  private Prose text(Caution caution) {
    boolean first = told.add(caution);
    return Prose.bold(caution.hazard() + ": ")
        .then(Prose.plain(first ? caution.text() : caution.essence()));
  }
}
