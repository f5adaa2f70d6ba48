package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.measure.LazyList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What a way comes to with one choice of tools, before it is reckoned. */
sealed interface Proposal {

  /**
   * It can be done.
   *
   * @param notes what to know before taking it
   * @param together whether panels are worked on together
   */
  record Can(Method method, Work work, List<Reason> notes, Together together) implements Proposal {
    public Can {
      notes = List.copyOf(notes);
    }
  }

  /**
   * Whether several panels are worked on together.
   *
   * @param words how they are, or why they are not and what would allow it
   * @param single the same work panel by panel, to compare with; none where it is done so
   */
  record Together(List<Reason> words, Optional<Can> single) {
    public Together {
      words = List.copyOf(words);
    }

    static final Together NOTHING_TO_DO = new Together(List.of(), Optional.empty());

    /** Panel by panel, because of what holds for a way whatever the shop has. */
    static Together no(String why) {
      return no(new Reason("panel by panel: " + why, ""));
    }

    static Together no(Reason why) {
      return new Together(List.of(why), Optional.empty());
    }
  }

  /** It can't be done so. @param reasons at least one */
  record Cannot(Verdict verdict, List<Reason> reasons) implements Proposal {
    public Cannot {
      reasons = LazyList.copyOf(reasons);
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
    return changed(new Reason(what, remedy));
  }

  static Proposal changed(Reason reason) {
    return new Cannot(Verdict.IF_CHANGED, List.of(reason));
  }

  /** The same where it takes a while to say what would be lost. */
  static Proposal changed(Supplier<List<Reason>> reasons) {
    return new Cannot(Verdict.IF_CHANGED, LazyList.of(reasons));
  }
}
