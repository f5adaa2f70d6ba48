package fourpin.shop.cut;

import fourpin.shop.yaml.Place;

/** What stands in a column of a row, without spaces round it, and where. */
record Cell(String text, Place place) {

  boolean isEmpty() {
    return text.isEmpty();
  }
}
