package fourpin.casework;

import java.util.List;

/**
 * Every case of a job in space.
 *
 * @param cases those that can be built, in the order of the job
 * @param findings what is wrong or doubtful; a case with a finding of severity {@link
 *     Finding.Severity#REFUSED} is not among {@code cases}
 */
public record Casework(List<BuiltCase> cases, List<Finding> findings) {

  public Casework {
    cases = List.copyOf(cases);
    findings = List.copyOf(findings);
  }
}
