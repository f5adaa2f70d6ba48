package fourpin.shop.web;

import fourpin.casework.Finding;
import fourpin.job.CaseOrder;
import fourpin.sheets.packet.Words;
import fourpin.shop.yaml.Problem;
import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** What browsers can have changed in a job. */
final class ChangeRoutes {

  private final Desk desk;
  private final Pages pages;

  ChangeRoutes(Desk desk, Pages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    add(routes, "put", this::put);
    add(routes, "move", this::move);
    add(routes, "divide", this::divide);
    add(routes, "join", this::join);
    add(routes, "cure", this::cure);
    add(routes, "undo", asked -> step(asked, Step.UNDO));
    add(routes, "redo", asked -> step(asked, Step.REDO));
  }

  private void add(RoutesConfig routes, String what, Consumer<Asked> answer) {
    routes.post("/jobs/{id}/" + what, http -> answer.accept(new Asked(http, desk)));
  }

  private enum Step {
    UNDO,
    REDO
  }

  private void put(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    String typed = asked.form("value");
    CaseFields fields = new CaseFields(seen, order);
    Field field = fields.field(asked.form("field")).orElseThrow(NotFoundResponse::new);
    if (typed.strip().equals(field.shown().written())) {
      answer(asked, seen, new Answer.Same(asked.newest()), field, typed);
      return;
    }
    Answer answer =
        field
            .target()
            .apply(typed)
            .map(t -> desk.change(asked.id(), t.on(seen), asked.by(), why(field, typed)))
            .orElseGet(() -> new Answer.Same(asked.newest()));
    answer(asked, seen, answer, field, typed);
  }

  private static String why(Field field, String typed) {
    return field.shown().label() + (typed.isBlank() ? " left out" : " " + typed.strip());
  }

  private void answer(Asked asked, State seen, Answer answer, Field field, String typed) {
    String id = field.shown().id();
    switch (answer) {
      case Answer.Wrong(State now, List<Problem> problems) -> {
        Problem first = problems.getFirst();
        DesignPage.Trouble trouble = new DesignPage.Trouble(typed, first.rule(), first.remedy());
        said(
            asked,
            seen,
            now,
            HttpStatus.UNPROCESSABLE_CONTENT,
            field.shown().label() + " was not changed: " + first.rule() + ".",
            Map.of(id, trouble));
      }
      case Answer.Taken(State now, String by, String theirs) -> {
        DesignPage.Trouble trouble =
            new DesignPage.Trouble(
                typed,
                by + " has changed it to " + theirs + " since you looked",
                "enter yours again if it is to stand");
        said(
            asked,
            seen,
            now,
            HttpStatus.CONFLICT,
            field.shown().label() + " was not changed: somebody else was first.",
            Map.of(id, trouble));
      }
      case Answer other -> said(asked, seen, other, field.shown().label() + " is changed.");
    }
  }

  private void said(Asked asked, State seen, Answer answer, String done) {
    switch (answer) {
      case Answer.Saved(State now) -> said(asked, seen, now, HttpStatus.OK, done, Map.of());
      case Answer.Same(State now) -> said(asked, seen, now, HttpStatus.OK, "", Map.of());
      case Answer.Refused(State now, String reason) ->
          said(asked, seen, now, HttpStatus.CONFLICT, reason, Map.of());
      case Answer.Taken(State now, String by, _) ->
          said(
              asked,
              seen,
              now,
              HttpStatus.CONFLICT,
              by + " has changed this since you looked; nothing was changed.",
              Map.of());
      case Answer.Wrong(State now, List<Problem> problems) ->
          said(
              asked,
              seen,
              now,
              HttpStatus.UNPROCESSABLE_CONTENT,
              "Nothing was changed: " + problems.getFirst().rule() + ".",
              Map.of());
    }
  }

  /** The parts of the page that are other than they were; or, without scripts, the whole. */
  private void said(
      Asked asked,
      State seen,
      State now,
      HttpStatus status,
      String notice,
      Map<String, DesignPage.Trouble> troubles) {
    String name = asked.form("case");
    DesignPage page = new DesignPage(now, pages.token(asked.http()), name, notice, troubles);
    boolean scripted = asked.isScripted();
    if (!scripted && status == HttpStatus.OK) {
      asked
          .http()
          .redirect(
              page.base() + "?case=" + Addresses.encoded(page.caseName()), HttpStatus.SEE_OTHER);
      return;
    }
    asked.http().status(status);
    if (!scripted) {
      pages.show(asked.http(), "design", Map.of("page", page));
      return;
    }
    DesignPage before = new DesignPage(seen, page.token(), name, "", Map.of());
    pages.show(
        asked.http(),
        "update",
        Map.of("page", page, "parts", Parts.between(before, page, asked.form("field"))));
  }

  private void move(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    int shelf = asked.number("shelf");
    int level = asked.number("level");
    Target target = Wishes.moved(seen, order, bay, shelf, level).orElseThrow(NotFoundResponse::new);
    String unit = " " + new Words(seen.job()).unit();
    String to = Wishes.level(seen, order, bay, level).orElse("") + unit;
    change(
        asked, seen, Optional.of(target), "Shelf " + shelf + " of bay " + bay + " moved to " + to);
  }

  private void change(Asked asked, State seen, Optional<Target> target, String why) {
    Answer answer =
        target
            .map(t -> desk.change(asked.id(), t.on(seen), asked.by(), why))
            .orElseGet(() -> new Answer.Same(asked.newest()));
    said(asked, seen, answer, why + ".");
  }

  private void divide(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    change(asked, seen, Wishes.divided(seen, order, bay), "Bay " + bay + " divided");
  }

  private void join(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    String why = "Bays " + bay + " and " + (bay + 1) + " made one";
    change(asked, seen, Wishes.joined(seen, order, bay), why);
  }

  /** Does what a remedy says, if the finding is gone by it. */
  private void cure(Asked asked) {
    State seen = asked.seen();
    String[] which = asked.form("cure").split("-");
    Finding finding = at(seen.plan().findings(), which[0]);
    Finding.Remedy remedy = at(finding.remedies(), which[which.length - 1]);
    CaseOrder order = seen.order(finding.place().caseName());
    Optional<Target> target = remedy.stated().flatMap(s -> Wishes.cured(seen, order, finding, s));
    Answer answer =
        target
            .map(
                t ->
                    desk.change(
                        asked.id(),
                        t.on(seen),
                        asked.by(),
                        remedy.what(),
                        p -> Wishes.unproven(p, finding)))
            .orElseGet(() -> new Answer.Refused(asked.newest(), "This takes a maker's hand."));
    said(asked, seen, answer, "Done: " + remedy.what() + ".");
  }

  private static <T> T at(List<T> all, String index) {
    int number = index.matches("\\d{1,4}") ? Integer.parseInt(index) : all.size();
    if (number >= all.size()) {
      throw new NotFoundResponse();
    }
    return all.get(number);
  }

  private void step(Asked asked, Step step) {
    State seen = asked.seen();
    Answer answer =
        switch (step) {
          case UNDO -> desk.undo(asked.id(), seen.revision().id(), asked.by());
          case REDO -> desk.redo(asked.id(), seen.revision().id(), asked.by());
        };
    said(asked, seen, answer, step == Step.UNDO ? "Taken back." : "Brought back.");
  }
}
