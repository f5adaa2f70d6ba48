package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import java.util.List;

/** What a way comes to with one choice of tools, before it is reckoned. */
sealed interface Proposal {

  /**
   * It can be done.
   *
   * @param notes what to know before taking it
   */
  record Can(Method method, Work work, List<Reason> notes) implements Proposal {
    public Can {
      notes = List.copyOf(notes);
    }
  }

  /** It can't be done so. @param reasons at least one */
  record Cannot(Verdict verdict, List<Reason> reasons) implements Proposal {
    public Cannot {
      reasons = List.copyOf(reasons);
    }
  }

  static Proposal cannot(String what, String remedy) {
    return new Cannot(Verdict.NOT_POSSIBLE, List.of(new Reason(what, remedy)));
  }

  static Proposal cannot(List<Reason> reasons) {
    return new Cannot(Verdict.NOT_POSSIBLE, reasons);
  }

  /** The case would have to give way. */
  static Proposal changed(String what, String remedy) {
    return new Cannot(Verdict.IF_CHANGED, List.of(new Reason(what, remedy)));
  }
}
