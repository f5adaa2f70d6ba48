package fourpin.strength;

import fourpin.job.CaseDraft;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Joint;
import fourpin.job.Material;
import fourpin.job.SampleJobs;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A case called Upper on one called Base. */
final class Stacks {

  private Stacks() {}

  /** Their job also knows particleboard, as "chips". */
  static Strength stacked(CaseDraft upper, CaseDraft base) {
    Job job = SampleJobs.job(upper.order().standingOn(Optional.of("Base")), base.order());
    List<Material> materials = new ArrayList<>(job.materials());
    materials.add(SampleJobs.board("chips", "particleboard, M-2", "3/4"));
    return Shelving.check(JobDraft.changed(job, d -> d.materials = materials));
  }

  /** Its bottom lies on what is below. */
  static CaseDraft flat(CaseDraft draft) {
    draft.kick = Optional.empty();
    draft.bottomJoint = CaseDraft.joint(Joint.Kind.RABBET, "3/8");
    return draft;
  }

  /** Nothing is taken to stand on its top. */
  static CaseDraft bare(CaseDraft draft) {
    draft.settings = draft.settings.with(Setting.TOP_REACH, new SettingValue.OfLength(Length.ZERO));
    return draft;
  }

  /** A figure of the upper case. */
  static Figure find(Strength strength, String id) {
    return Shelving.find(strength, "upper/" + id).orElseThrow();
  }

  static double value(Strength strength, String id) {
    return find(strength, id).value().value();
  }
}
