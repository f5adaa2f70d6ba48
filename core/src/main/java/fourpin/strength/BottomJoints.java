package fourpin.strength;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the ends of a bottom that stands off the floor do to their joints, however its load lies.
 * The kick, which carries much in front, is not counted on, so that these carry no more.
 */
final class BottomJoints {

  private final Job job;
  private final BuiltCase built;
  private final ShelfReader reader;

  BottomJoints(Job job, BuiltCase built, ShelfReader reader) {
    this.job = job;
    this.built = built;
    this.reader = reader;
  }

  /** One end after the other; nothing where the bottom lies on what it stands on. */
  List<Figure> all() {
    return ends().flatMap(end -> end.all().stream()).toList();
  }

  List<Finding> findings() {
    return ends()
        .map(end -> new JointFindings(job, built.order().name(), List.of(bottom()), end))
        .flatMap(end -> end.all().stream())
        .limit(1)
        .toList();
  }

  private Part bottom() {
    return built.part("B");
  }

  private Stream<JointFigures> ends() {
    BaySpace first = built.bays().getFirst();
    BaySpace last = built.bays().getLast();
    boolean off = built.order().kick().filter(kick -> kick.height().isPositive()).isPresent();
    return Stream.of(end(first, first.left()), end(last, last.right()))
        .filter(_ -> off)
        .limit(first.equals(last) ? 1 : 2);
  }

  private JointFigures end(BaySpace bay, String side) {
    return new JointFigures(
        job,
        reader.settings(),
        bottom(),
        built.part(side),
        JointLoad.of(bottom(), reader.bottom(bottom(), bay)),
        built.order().bottomJoint());
  }
}
