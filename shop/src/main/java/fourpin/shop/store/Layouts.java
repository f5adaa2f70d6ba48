package fourpin.shop.store;

import java.util.Collection;
import java.util.List;

/** Layouts that longer searches have found for jobs, one for each problem. */
public interface Layouts {

  /** Of all problems that the job has ever had, by problem. */
  List<KeptLayout> of(DocumentId job);

  /**
   * Keeps layouts, each in place of an earlier one for the same problem; all or none.
   *
   * @throws java.util.NoSuchElementException if there is no such job
   */
  void keep(DocumentId job, Collection<KeptLayout> layouts);
}
