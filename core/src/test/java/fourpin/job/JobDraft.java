package fourpin.job;

import fourpin.measure.LengthStyle;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A job to be changed field by field. */
public final class JobDraft {

  public Unit unit;
  public LengthStyle style;
  public Optional<Room> room;
  public List<Material> materials;
  public List<SheetStock> sheets;
  public List<BoardStock> boards;
  public Settings settings;

  private JobDraft(Job job) {
    this.unit = job.unit();
    this.style = job.style();
    this.room = job.room();
    this.materials = job.materials();
    this.sheets = job.sheets();
    this.boards = job.boards();
    this.settings = job.settings();
  }

  /** The same job with other fields. */
  public static Job changed(Job job, Consumer<JobDraft> change) {
    JobDraft draft = new JobDraft(job);
    change.accept(draft);
    return draft.of(job);
  }

  private Job of(Job job) {
    return new Job(
        job.title(),
        job.revision(),
        unit,
        style,
        job.paper(),
        job.currency(),
        room,
        materials,
        sheets,
        boards,
        job.cases(),
        settings,
        job.shop());
  }
}
