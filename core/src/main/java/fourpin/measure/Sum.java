package fourpin.measure;

import java.util.ArrayList;
import java.util.List;

/**
 * A length with the sum that it comes from, as it stands in the cut list: {@code 35 1/4 bay - 2 x
 * 1/16 end play}.
 *
 * @param terms in the order they are printed; at least one
 */
public record Sum(List<Term> terms) {

  /**
   * One term.
   *
   * @param count how often, negative for what is taken off; not zero
   */
  public record Term(int count, String what, Length each) {
    public Term {
      if (count == 0) {
        throw new IllegalArgumentException("a term that counts nothing: " + what);
      }
    }

    Length total() {
      return each.times(count);
    }
  }

  public Sum {
    if (terms.isEmpty()) {
      throw new IllegalArgumentException("a sum has one term or more");
    }
    terms = List.copyOf(terms);
  }

  public static Sum of(String what, Length length) {
    return new Sum(List.of(new Term(1, what, length)));
  }

  public Sum plus(int count, String what, Length each) {
    return with(count, what, each);
  }

  public Sum plus(String what, Length each) {
    return plus(1, what, each);
  }

  public Sum minus(int count, String what, Length each) {
    return with(-count, what, each);
  }

  public Sum minus(String what, Length each) {
    return minus(1, what, each);
  }

  /** Terms of no length or no count say nothing and are left out. */
  private Sum with(int count, String what, Length each) {
    if (each.isZero() || count == 0) {
      return this;
    }
    List<Term> longer = new ArrayList<>(terms);
    longer.add(new Term(count, what, each));
    return new Sum(longer);
  }

  public Length total() {
    Length total = terms.getFirst().total();
    for (Term term : terms.subList(1, terms.size())) {
      total = total.plus(term.total());
    }
    return total;
  }

  /** As one line: {@code 35 1/4 bay width - 2 x 1/16 end play = 35 1/8}. */
  public String text(LengthStyle style) {
    StringBuilder out = new StringBuilder();
    for (Term term : terms) {
      String sign = term.count() < 0 ? "-" : "+";
      out.append(out.isEmpty() ? (term.count() < 0 ? "-" : "") : " " + sign + " ");
      out.append(Math.abs(term.count()) == 1 ? "" : Math.abs(term.count()) + " x ");
      out.append(style.number(term.each())).append(' ').append(term.what());
    }
    boolean plain = terms.size() == 1 && terms.getFirst().count() == 1;
    return plain ? out.toString() : out + " = " + style.number(total());
  }
}
