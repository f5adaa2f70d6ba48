package fourpin.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding.Severity;
import fourpin.job.CaseOrder;
import fourpin.job.Job;
import fourpin.measure.LengthReader;
import fourpin.measure.Unit;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.file.JobReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From a few answers to a whole job. */
class SurveyTest {

  private static final int SURVEYS = 400;
  private static final int PLANNED = 20;

  /** The drafts of a survey that has nothing wrong, the plainest first. */
  private static List<Job> jobs(Survey survey) {
    Survey.Outcome outcome = survey.job();
    assertThat(outcome).as("%s", survey).isInstanceOf(Survey.Outcome.Drafts.class);
    return ((Survey.Outcome.Drafts) outcome)
        .texts().stream().map(text -> job(survey, text)).toList();
  }

  private static Job job(Survey survey, String text) {
    JobReader.Outcome read = JobReader.read(text.getBytes(StandardCharsets.UTF_8));
    assertThat(read).as("%s: %s", survey, text).isInstanceOf(JobReader.Outcome.Good.class);
    return ((JobReader.Outcome.Good) read).job();
  }

  /** Tall and shallow, it has to be fastened to the wall, as its doubt says; nothing else is. */
  @Test
  void noAnswersAtAllGiveACaseThatOnlyHasToBeFastened() {
    for (String unit : List.of("inch", "mm")) {
      Plan plan = Planner.plan(jobs(new Survey(Map.of("unit", unit))).getFirst());
      assertThat(Judgement.of(plan)).as("%s", plan.findings()).isEqualTo(new Judgement(0, 1));
      assertThat(plan.findings())
          .filteredOn(finding -> finding.kind().equals("case-tips"))
          .singleElement()
          .satisfies(
              finding ->
                  assertThat(finding.remedies().getFirst().what())
                      .startsWith("fasten it to the wall"));
      assertThat(plan.cases()).hasSize(1);
    }
  }

  @Test
  void anyAnswersThatPassGiveJobsThatCanBeReadAndBuilt() {
    Random random = new Random(4);
    for (int i = 0; i < SURVEYS; i++) {
      Survey survey = any(random);
      if (survey.job() instanceof Survey.Outcome.Drafts) {
        List<Job> jobs = jobs(survey);
        if (i < PLANNED) {
          assertThat(Planner.plan(jobs.getFirst()).findings())
              .as("%s", survey)
              .noneMatch(f -> f.severity() == Severity.REFUSED);
        }
      }
    }
  }

  /**
   * Rooms as they are, with what stands in cases, and what is sold to make them of. Not for the
   * heaviest things in the softest boards, as reams of paper in MDF: there findings say so.
   */
  @Test
  void inRoomsAsTheyAreSomeDraftMayGoToTheBench() {
    Random random = new Random(7);
    List<HeldThing> things = Reference.things().rows();
    for (int i = 0; i < PLANNED; i++) {
      boolean inch = random.nextBoolean();
      Survey survey =
          new Survey(
              Map.of(
                  "unit", inch ? "inch" : "mm",
                  "width", roomSize(random, inch, 24, 150),
                  "ceiling", roomSize(random, inch, 75, 120),
                  "depth", roomSize(random, inch, 10, 20),
                  "back", any(random, "groove", "applied"),
                  "wood", any(random, Survey.WOODS.toArray(String[]::new)),
                  "holds", things.get(random.nextInt(things.size())).name()));
      assertThat(jobs(survey).stream().map(Planner::plan).anyMatch(Plan::readyForTheBench))
          .as("%s", survey)
          .isTrue();
    }
  }

  private static String roomSize(Random random, boolean inch, int least, int most) {
    int inches = least + random.nextInt(most - least);
    return Integer.toString(inch ? inches : inches * 25);
  }

  @ParameterizedTest
  @CsvSource({
    "36, 1, 35",
    "96, 1, 95",
    "97, 2, 48",
    "150, 2, 74 1/2",
    "240, 3, 79 5/8",
    "1968, 21, 93 5/8",
  })
  void aWideWallGetsSeveralCases(String room, int cases, String width) {
    Job job = jobs(new Survey(Map.of("unit", "inch", "width", room))).getFirst();
    CaseOrder order = job.cases().getFirst();
    assertThat(order.quantity()).isEqualTo(cases);
    assertThat(order.sizes().width()).isEqualTo(new LengthReader(Unit.INCH).read(width).orThrow());
  }

  @Test
  void statedBaysStayAndAreStiffenedByStripsOnTheirShelves() {
    List<Job> jobs = jobs(new Survey(Map.of("unit", "mm", "width", "1450", "bays", "1")));
    assertThat(jobs).allMatch(j -> j.cases().getFirst().bays().size() == 1);
    assertThat(jobs).extracting(j -> j.materials().size()).containsExactly(2, 3, 3);
  }

  private static Survey any(Random random) {
    boolean inch = random.nextBoolean();
    Map<String, String> answers = new HashMap<>();
    answers.put("unit", inch ? "inch" : "mm");
    answers.put("title", any(random, "", "Stove: left", "'tis", "# 1", "ü"));
    answers.put("width", length(random, inch, 12, 200));
    answers.put("ceiling", length(random, inch, 24, 140));
    answers.put("depth", length(random, inch, 5, 40));
    answers.put("bays", any(random, "", "1", "2", "7", "12"));
    answers.put("back", any(random, "groove", "applied", ""));
    answers.put("wood", any(random, Survey.WOODS.toArray(String[]::new)));
    List<HeldThing> things = Reference.things().rows();
    answers.put("holds", things.get(random.nextInt(things.size())).name());
    return new Survey(answers);
  }

  private static String length(Random random, boolean inch, int least, int most) {
    int inches = least + random.nextInt(most - least);
    return any(
        random,
        "",
        inch ? inches + " 3/8" : Integer.toString(inches * 25),
        inch ? inches / 12 + "' " + inches % 12 + "\"" : inches * 25 + " mm",
        inches * 2.5 + " cm");
  }

  private static String any(Random random, String... all) {
    return all[random.nextInt(all.length)];
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "none",
      value = {
        "none, inch",
        "'', inch",
        "en, inch",
        "'en-US,en;q=0.9', inch",
        "'en-GB,en-US;q=0.8', mm",
        "'de-AT;q=1, en', mm",
        "no tag at all, inch",
        "*, inch",
      })
  void numbersAreInTheUnitThatIsUsualWhereSomebodyReads(String languages, String unit) {
    assertThat(Survey.blank(languages).answer(Survey.UNIT)).isEqualTo(unit);
  }

  @ParameterizedTest
  @CsvSource({
    "width, '9,5', a comma in a length",
    "width, 3, it is from 12 in to 1968 in here",
    "ceiling, -2, ",
    "depth, 9 kg, ",
    "bays, 13, it is a whole number from 1 to 12 here",
    "bays, two, it is a whole number from 1 to 12 here",
  })
  void whatCannotBeIsSaidOfItsQuestionOnly(String question, String typed, String rule) {
    Survey.Outcome outcome = new Survey(Map.of("unit", "inch", question, typed)).job();
    assertThat(outcome).isInstanceOf(Survey.Outcome.Wrong.class);
    Map<String, ?> troubles = ((Survey.Outcome.Wrong) outcome).troubles();
    assertThat(troubles).containsOnlyKeys(question);
    if (rule != null) {
      assertThat(troubles.toString()).contains(rule);
    }
  }
}
