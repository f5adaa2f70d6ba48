package fourpin.shop.web;

import fourpin.shop.edit.Change;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.Route;

/** What a maker's wish comes to in the text of the job. */
record Target(Route route, Change change) {

  Edit on(State seen) {
    return Edit.on(seen.text(), route, change);
  }
}
