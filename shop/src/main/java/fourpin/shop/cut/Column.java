package fourpin.shop.cut;

/**
 * A column that a table may have.
 *
 * @param name in the first line, in any case
 * @param need whether the table must have it
 */
record Column(String name, Need need) {

  enum Need {
    REQUIRED,
    OPTIONAL
  }

  static Column required(String name) {
    return new Column(name, Need.REQUIRED);
  }

  static Column optional(String name) {
    return new Column(name, Need.OPTIONAL);
  }
}
