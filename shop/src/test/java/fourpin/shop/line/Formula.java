package fourpin.shop.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.ojalgo.function.special.ErrorFunction;

/**
 * A formula as it is printed, worked out as a reader would: products by writing side by side, signs
 * for roots, powers, sums, whole numbers and amounts, and what stands after a comma as definitions.
 * Shares nothing with the code that the figures come from.
 */
final class Formula {

  /** What a reader can't follow. */
  static final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1;

    Unreadable(String what) {
      super(what);
    }
  }

  private static final Map<String, Double> KNOWN = Map.of("π", Math.PI, "9.80665 m/s²", 9.80665);

  /** What formulas that only hold in units of their own count in, in N, mm and kg. */
  private static final Map<String, Double> UNITS =
      Map.of(
          "lbf", 4.4482216152605,
          "lbf/in", 4.4482216152605 / 25.4,
          "N/mm", 1.0,
          "inches", 25.4,
          "mm", 1.0,
          "kg/m³", 1e-9);

  private static final Pattern IN_UNITS = Pattern.compile("(?<names>.+) in (?<unit>\\S+)");

  /** {@code V1 d1 + V2 d2 + ...}: the term of the first, for as many as there are. */
  private static final Pattern AND_SO_ON =
      Pattern.compile("(?<first>[^(+]+?) \\+ [^(+]+? \\+ \\.\\.\\.");

  private static final Pattern DEFINITION = Pattern.compile("(?<name>[^ =()]+) = (?<what>[^=]+)");

  private final Map<String, List<Double>> symbols;
  private final Map<String, String> definitions = new HashMap<>();

  /** Which of several values of a symbol a sum is at. */
  private int row = -1;

  private Formula(Map<String, List<Double>> symbols) {
    this.symbols = symbols;
  }

  /**
   * @param symbols each with its values in the order printed: several where a sum runs over them
   * @throws Unreadable if it is no formula in these
   */
  static double value(String text, Map<String, List<Double>> symbols) {
    Formula formula = new Formula(new HashMap<>(symbols));
    return formula.inItsUnit(formula.split(text));
  }

  /** Symbols that are both given and worked out, where the two differ. @param same share of it */
  static List<String> twice(String text, Map<String, List<Double>> symbols, double same) {
    Formula formula = new Formula(new HashMap<>(symbols));
    formula.split(text);
    return formula.definitions.keySet().stream()
        .filter(formula.symbols::containsKey)
        .filter(name -> !formula.agrees(name, same))
        .toList();
  }

  /** What is left when all definitions are taken from it. */
  private String split(String text) {
    List<String> parts = parts(wholeSums(inSigns(text)));
    parts.subList(1, parts.size()).forEach(this::take);
    return parts.getFirst();
  }

  /** Words for which there is no sign that makers read. */
  private static String inSigns(String text) {
    return text.replaceFirst("^the less of (.+) and (.+)$", "min($1, $2)")
        .replaceFirst("^(.+), if above 0$", "max(0, $1)")
        .replaceFirst("^(.+), at least (\\S+)$", "max($1, $2)")
        .replaceFirst("^(.+), rounded up$", "⌈$1⌉")
        .replaceFirst("^(.+), rounded up to a whole number of (\\S+)$", "$2 ⌈($1) / $2⌉");
  }

  private void take(String part) {
    Matcher units = IN_UNITS.matcher(part);
    Matcher definition = DEFINITION.matcher(part);
    if (units.matches() && UNITS.containsKey(units.group("unit"))) {
      double unit = UNITS.get(units.group("unit"));
      for (String name : units.group("names").split(" and ")) {
        symbols.computeIfPresent(name, (_, values) -> values.stream().map(v -> v / unit).toList());
      }
    } else if (definition.matches()) {
      definitions.put(definition.group("name"), definition.group("what"));
    } else {
      throw new Unreadable("'" + part + "'");
    }
  }

  private boolean agrees(String name, double same) {
    double worked = new Reader(Objects.requireNonNull(definitions.get(name))).all();
    return Math.abs(worked - named(name)) <= same * Math.abs(worked);
  }

  private double inItsUnit(String text) {
    int last = text.lastIndexOf(' ');
    Double unit = UNITS.get(text.substring(last + 1));
    return unit == null ? new Reader(text).all() : unit * new Reader(text.substring(0, last)).all();
  }

  /** What stands between commas outside brackets. */
  static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int open = 0;
    int from = 0;
    for (int at = 0; at < text.length(); at++) {
      open += "([".indexOf(text.charAt(at)) >= 0 ? 1 : ")]".indexOf(text.charAt(at)) >= 0 ? -1 : 0;
      if (open == 0 && text.startsWith(", ", at)) {
        parts.add(text.substring(from, at));
        from = at + 2;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }

  private String wholeSums(String text) {
    Matcher sum = AND_SO_ON.matcher(text);
    return sum.replaceAll(found -> Matcher.quoteReplacement(terms(found.group("first"))));
  }

  /** None is nothing. */
  private String terms(String first) {
    List<String> terms = new ArrayList<>();
    for (int i = 1; symbols.keySet().containsAll(numbered(first, i)); i++) {
      terms.add(first.replaceAll("(?<=\\p{L})1", Integer.toString(i)));
    }
    return terms.isEmpty() ? "0" : String.join(" + ", terms);
  }

  private static List<String> numbered(String first, int number) {
    Matcher symbol = Pattern.compile("\\p{L}1").matcher(first);
    return symbol.results().map(s -> s.group().replace("1", Integer.toString(number))).toList();
  }

  private double named(String name) {
    List<Double> values = symbols.get(name);
    if (values == null) {
      return Optional.ofNullable(definitions.get(name))
          .map(what -> new Reader(what).all())
          .orElseGet(() -> KNOWN.get(name));
    }
    if (values.size() > 1 && row < 0) {
      throw new Unreadable("which " + name + "?");
    }
    return values.size() > 1 ? values.get(row) : values.getFirst();
  }

  /** One line of signs, read from left to right. */
  private final class Reader {

    private final String text;
    private int at;

    Reader(String text) {
      this.text = text;
    }

    double all() {
      double value = sum();
      if (at < text.length()) {
        throw new Unreadable("'" + text.substring(at) + "' of " + text);
      }
      return value;
    }

    private boolean takes(String sign) {
      if (!text.startsWith(sign, at)) {
        return false;
      }
      at += sign.length();
      return true;
    }

    private void wants(String sign) {
      if (!takes(sign)) {
        throw new Unreadable("no '" + sign + "' at '" + text.substring(at) + "' of " + text);
      }
    }

    private double sum() {
      double value = takes("-") ? -product() : product();
      while (true) {
        if (takes(" + ")) {
          value += product();
        } else if (takes(" - ")) {
          value -= product();
        } else {
          return value;
        }
      }
    }

    /** What is divided by is one sign or bracket: {@code a / b c} could be read in two ways. */
    private double product() {
      if (symbol().isEmpty() && takes("Σ ")) {
        return overRows();
      }
      double value = power();
      boolean divided = false;
      while (true) {
        int before = at;
        if (takes(" / ")) {
          value /= symbol().isEmpty() && text.startsWith("Σ ", at) ? product() : power();
          divided = true;
        } else if (takes(" × ")) {
          value *= power();
          divided = false;
        } else if (takes("/")) {
          value /= power();
        } else if (text.startsWith(" Σ ", at)) {
          at++;
          return value * product();
        } else if (takes(" ") && startsFactor()) {
          if (divided) {
            throw new Unreadable("divided by one or by both: " + text);
          }
          value *= power();
        } else {
          at = before;
          return value;
        }
      }
    }

    private double overRows() {
      int from = at;
      int outer = row;
      double value = 0;
      for (row = 0; row < rows(); row++) {
        at = from;
        value += product();
      }
      row = outer;
      return value;
    }

    private int rows() {
      return symbols.values().stream().mapToInt(List::size).max().orElse(1);
    }

    private boolean startsFactor() {
      return at < text.length() && "+-/=≤×)⌉⌋|,".indexOf(text.charAt(at)) < 0;
    }

    private double power() {
      double base = factor();
      if (takes("²")) {
        return base * base;
      }
      if (takes("³")) {
        return base * base * base;
      }
      return takes("^") ? Math.pow(base, number()) : base;
    }

    private double factor() {
      Optional<String> symbol = symbol();
      if (symbol.isPresent()) {
        at += symbol.get().length();
        return named(symbol.get());
      }
      if (takes("√")) {
        return Math.sqrt(factor());
      }
      return bracket("(", ")")
          .or(() -> bracket("|", "|").map(Math::abs))
          .or(() -> bracket("⌈", "⌉").map(Math::ceil))
          .or(() -> bracket("⌊", "⌋").map(Math::floor))
          .or(this::function)
          .orElseGet(this::number);
    }

    private Optional<Double> bracket(String opens, String closes) {
      if (!takes(opens)) {
        return Optional.empty();
      }
      double value = sum();
      wants(closes);
      return Optional.of(value);
    }

    private Optional<Double> function() {
      if (takes("max(") || takes("max (")) {
        return Optional.of(arguments().stream().max(Comparator.naturalOrder()).orElseThrow());
      }
      if (takes("min(")) {
        return Optional.of(arguments().stream().min(Comparator.naturalOrder()).orElseThrow());
      }
      if (takes("erfc(")) {
        return Optional.of(1 - ErrorFunction.erf(arguments().getFirst()));
      }
      return takes("max ") ? most() : Optional.empty();
    }

    /** Of all values of one symbol. */
    private Optional<Double> most() {
      String name = symbol().orElseThrow(() -> new Unreadable("most of what? " + text));
      at += name.length();
      List<Double> values = symbols.getOrDefault(name, List.of());
      return values.stream().max(Comparator.naturalOrder());
    }

    private List<Double> arguments() {
      List<Double> arguments = new ArrayList<>(List.of(sum()));
      while (takes(", ")) {
        arguments.add(sum());
      }
      wants(")");
      return arguments;
    }

    private double number() {
      Matcher number =
          Pattern.compile("[0-9]+(\\.[0-9]+)?").matcher(text).region(at, text.length());
      if (!number.lookingAt()) {
        throw new Unreadable("'" + text.substring(at) + "' of " + text);
      }
      at = number.end();
      return Double.parseDouble(number.group());
    }

    /** The longest that stands here, and no part of a longer word. */
    private Optional<String> symbol() {
      return Stream.of(
              symbols.keySet().stream(), definitions.keySet().stream(), KNOWN.keySet().stream())
          .flatMap(names -> names)
          .filter(name -> text.startsWith(name, at) && endsAt(at + name.length()))
          .max(Comparator.comparingInt(String::length));
    }

    private boolean endsAt(int end) {
      return end == text.length()
          || !(Character.isLetterOrDigit(text.charAt(end)) || "₀₁₂₃".indexOf(text.charAt(end)) >= 0)
          || "²³".indexOf(text.charAt(end)) >= 0;
    }
  }
}
