package fourpin.shop.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an edit does to the text, sign by sign. */
class JobTextTest {

  private static final String JOB =
      """
      # A shelf.
      title: "Shelf by the stove"   # its name
      unit: inch
      cases:
        low:
          outside: {width: 36, height: 30, depth: 11 3/4}
          bays:
            # the books
            - width: 20
              shelves: 2
            - shelves: {at: [10, 20]} # the rest
          settings:
            pitch: 1
          # end of low
        tall:
          bays: 3 # three of them
      """;

  private static final Route LOW = Route.of("cases", "low");

  private static Edited edited(String text, Route route, Change change) {
    JobText job = JobText.of(text);
    return job.with(Edit.on(job, route, change));
  }

  private static String after(String text, Route route, Change change) {
    return edited(text, route, change) instanceof Edited.Done(JobText made, _)
        ? made.text()
        : edited(text, route, change).toString();
  }

  private static String put(String text, Route route, Value value) {
    return after(text, route, new Change.Put(value));
  }

  @Test
  void aValueIsReplacedInItsQuotesAndBesideItsComment() {
    assertThat(put(JOB, Route.of("title"), Value.of("Shelf, \"low\"")))
        .isEqualTo(JOB.replace("\"Shelf by the stove\"", "'Shelf, \"low\"'"));
    assertThat(put(JOB, Route.of("title"), Value.of("Bench")))
        .isEqualTo(JOB.replace("Shelf by the stove", "Bench"));
    assertThat(put(JOB, LOW.to("bays").item(1, 2).to("width"), Value.of("21 1/2\"")))
        .isEqualTo(JOB.replace("width: 20", "width: 21 1/2\""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "plywood, veneer core | 'plywood, veneer core'",
        "7' 2 1/4\"           | 7' 2 1/4\"",
        "'half' in            | '''half'' in'",
        "a: b                 | 'a: b'",
        "null                 | 'null'",
        "# 4                  | '# 4'",
        "{                    | '{'",
        "*                    | '*'",
        "``                   | ''",
      })
  void aValueBetweenBracesIsQuotedWhereItMust(String value, String written) {
    assertThat(put(JOB, LOW.to("outside").to("width"), Value.of(value)))
        .isEqualTo(JOB.replace("width: 36", "width: " + written));
  }

  @Test
  void aKeyThatWasNotThereComesLastInItsGroup() {
    assertThat(put(JOB, LOW.to("settings").to("kerf"), Value.of("3 mm")))
        .isEqualTo(JOB.replace("pitch: 1\n", "pitch: 1\n      kerf: 3 mm\n"));
    assertThat(put(JOB, LOW.to("bays").item(2, 2).to("shelves").to("material"), Value.of("ply")))
        .isEqualTo(JOB.replace("20]}", "20], material: ply}"));
    assertThat(put(JOB, Route.of("cases", "tall", "settings", "pitch"), Value.of("1")))
        .isEqualTo(JOB + "    settings: {pitch: 1}\n");
  }

  @Test
  void oneValueBecomesManyAndKeepsItsComment() {
    Value bay = Value.group(Map.of("shelves", Value.of(4)));
    assertThat(put(JOB, Route.of("cases", "tall", "bays"), Value.list(List.of(bay, bay))))
        .isEqualTo(
            JOB.replace(
                "bays: 3 # three of them",
                "bays: # three of them\n      - {shelves: 4}\n      - {shelves: 4}"));
    assertThat(put(JOB, LOW.to("bays"), Value.of(2)))
        .isEqualTo(JOB.replaceAll("(?s)bays:\n +# the books.*?# the rest", "bays: 2"));
  }

  @Test
  void keysAndItemsAreTakenAway() {
    assertThat(after(JOB, LOW.to("outside").to("height"), new Change.Remove()))
        .isEqualTo(JOB.replace("height: 30, ", ""));
    assertThat(after(JOB, LOW.to("bays").item(1, 2).to("width"), new Change.Remove()))
        .isEqualTo(JOB.replace("width: 20\n        shelves", "shelves"));
    assertThat(after(JOB, LOW.to("bays").item(2, 2), new Change.Remove()))
        .isEqualTo(JOB.replace("      - shelves: {at: [10, 20]} # the rest\n", ""));
    assertThat(after(JOB, LOW.to("settings").to("pitch"), new Change.Remove()))
        .isEqualTo(JOB.replace("pitch: 1", "{}"));
    assertThat(after(JOB, Route.of("unit"), new Change.Remove()))
        .isEqualTo(JOB.replace("unit: inch\n", ""));
  }

  @Test
  void aKeyIsCalledSomethingElseAndKeepsItsPlaceAndComments() {
    assertThat(after(JOB, LOW, new Change.Rename("under the stair")))
        .isEqualTo(JOB.replace("  low:\n", "  under the stair:\n"));
    assertThat(after(JOB, LOW.to("outside").to("width"), new Change.Rename("a: b")))
        .isEqualTo(JOB.replace("{width: 36", "{'a: b': 36"));
    assertThat(edited(JOB, LOW, new Change.Rename("tall")))
        .isInstanceOfSatisfying(
            Edited.Refused.class,
            refused -> assertThat(refused.reason()).contains("one of this name"));
  }

  /** What is in it may change meanwhile; once it is called something else, there is nothing. */
  @Test
  void aNewNameHoldsWhateverElseIsChangedInTheThing() {
    JobText job = JobText.of(JOB);
    Edit name = Edit.on(job, LOW, new Change.Rename("short"));
    JobText wider = JobText.of(put(JOB, LOW.to("outside").to("width"), Value.of("40")));
    assertThat(wider.with(name))
        .isInstanceOfSatisfying(
            Edited.Done.class,
            done -> {
              assertThat(done.text().text())
                  .isEqualTo(JOB.replace("width: 36", "width: 40").replace("  low:", "  short:"));
              assertThat(done.text().with(name)).isInstanceOf(Edited.Conflict.class);
              assertThat(done.text().with(done.inverse()))
                  .isInstanceOfSatisfying(
                      Edited.Done.class,
                      back -> assertThat(back.text().text()).isEqualTo(wider.text()));
            });
  }

  @Test
  void anItemComesBetweenOthersWhoseCommentsStay() {
    Value bay = Value.group(Map.of("shelves", Value.of(1)));
    assertThat(after(JOB, LOW.to("bays").item(2, 2), new Change.Insert(bay)))
        .isEqualTo(JOB.replace("shelves: 2\n", "shelves: 2\n      - {shelves: 1}\n"));
    assertThat(after(JOB, LOW.to("bays").item(1, 2), new Change.Insert(bay)))
        .isEqualTo(JOB.replace("- width: 20", "- {shelves: 1}\n      - width: 20"));
    assertThat(
            after(
                JOB,
                LOW.to("bays").item(2, 2).to("shelves").to("at").item(2, 2),
                new Change.Insert(Value.of("15 1/2"))))
        .isEqualTo(JOB.replace("[10, 20]", "[10, 15 1/2, 20]"));
  }

  @Test
  void windowsLinesAndMarksStayWhatTheyAre() {
    String windows = "\uFEFF" + JOB.replace("\n", "\r\n");
    assertThat(put(windows, LOW.to("settings").to("kerf"), Value.of("3 mm")))
        .isEqualTo(windows.replace("pitch: 1\r\n", "pitch: 1\r\n      kerf: 3 mm\r\n"));
    String smile = JOB.replace("# its name", "# \uD83D\uDE00");
    assertThat(put(smile, Route.of("unit"), Value.of("mm"))).isEqualTo(smile.replace("inch", "mm"));
  }

  @Test
  void twoPeopleOnDifferentThingsBothHaveTheirWay() {
    JobText job = JobText.of(JOB);
    Edit one = Edit.on(job, LOW.to("outside").to("width"), new Change.Put(Value.of("40")));
    Edit two = Edit.on(job, LOW.to("settings").to("pitch"), new Change.Put(Value.of("2")));
    assertThat(both(job, one, two).text()).isEqualTo(both(job, two, one).text());
    assertThat(both(job, one, two).word(one.route())).contains("40");
  }

  @Test
  void twoPeopleOnOneThingAreTold() {
    JobText job = JobText.of(JOB);
    Route width = LOW.to("outside").to("width");
    Edit one = Edit.on(job, width, new Change.Put(Value.of("40")));
    Edit two = Edit.on(job, width, new Change.Put(Value.of("41")));
    assertThat(done(job.with(one)).with(two))
        .isEqualTo(new Edited.Conflict(two, Optional.of(Value.of("40"))));
  }

  @Test
  void anItemIsNotTakenForAnotherOfAListThatHasGrown() {
    JobText job = JobText.of(JOB);
    Value bay = Value.group(Map.of("width", Value.of("20")));
    Edit width = Edit.on(job, LOW.to("bays").item(1, 2).to("width"), new Change.Put(Value.of("9")));
    Edit more = Edit.on(job, LOW.to("bays").item(1, 2), new Change.Insert(bay));
    assertThat(done(job.with(more)).with(width)).isInstanceOf(Edited.Conflict.class);
  }

  @Test
  void whatDoesNotLeadAnywhereIsRefused() {
    JobText job = JobText.of(JOB);
    Edit edit = Edit.on(job, Route.of("unit", "inch", "x"), new Change.Put(Value.of("1")));
    assertThat(job.with(edit)).isInstanceOf(Edited.Refused.class);
  }

  private static JobText both(JobText job, Edit one, Edit two) {
    return done(done(job.with(one)).with(two));
  }

  private static JobText done(Edited edited) {
    assertThat(edited).isInstanceOf(Edited.Done.class);
    return ((Edited.Done) edited).text();
  }
}
