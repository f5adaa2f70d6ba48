package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.sheets.packet.Words;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;

/** A case of a job as one revision has it: what all that is shown of it begins with. */
record AtCase(State state, CaseOrder order) {

  JobText text() {
    return state.text();
  }

  /** Where the case stands in the job's text. */
  Route route() {
    return Route.of("cases", order.name());
  }

  Words words() {
    return new Words(state.job());
  }

  StatedBays bays() {
    return StatedBays.of(state, order);
  }
}
