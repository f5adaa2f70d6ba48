package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.measure.Reading;
import fourpin.sheets.packet.Words;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.Part;
import fourpin.shop.fields.Target;
import fourpin.shop.yaml.Problem;
import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** What browsers can have changed in a job. */
final class ChangeRoutes {

  private final Desk desk;
  private final Pages pages;
  private final Works works = new Works();

  ChangeRoutes(Desk desk, Pages pages) {
    this.desk = desk;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    add(routes, "put", this::put);
    add(routes, "leave", this::leave);
    add(routes, "earlier", this::earlier);
    add(routes, "begin", this::begin);
    add(routes, "move", this::move);
    add(routes, "divide", this::divide);
    add(routes, "join", this::join);
    add(routes, "swap", this::swap);
    add(routes, "cure", this::cure);
    works.add(routes);
    routes.post("/jobs/{id}/undo", http -> step(new Asked(http, desk), Step.UNDO));
    routes.post("/jobs/{id}/redo", http -> step(new Asked(http, desk), Step.REDO));
  }

  /** Until it is kept, a change can be stopped. A step back is kept before it is planned. */
  private void add(RoutesConfig routes, String what, Consumer<Asked> answer) {
    routes.post(
        "/jobs/{id}/" + what,
        http -> {
          Asked asked = new Asked(http, desk);
          try {
            works.run(http, () -> answer.accept(asked));
          } catch (Work.StoppedException e) {
            stopped(asked, asked.seen());
          }
        });
  }

  /** What was typed stays where it was, to be sent again or mended. */
  private void stopped(Asked asked, State seen) {
    String notice = "Stopped; nothing was changed.";
    said(asked, seen, asked.newest(), HttpStatus.CONFLICT, notice, typed(asked, seen));
  }

  private static Typing typed(Asked asked, State seen) {
    String rule = "stopped before it was kept";
    String field = asked.form("field");
    return field.isEmpty()
        ? parts(asked, seen)
            .flatMap(p -> p.begin(asked.form("part")).stream())
            .map(b -> Begun.of(b, asked::form).wrong(rule, "press again to have it after all"))
            .findFirst()
            .orElse(Typing.NOTHING)
        : new Typing(
            Map.of(
                field,
                Typing.Typed.wrong(
                    asked.form("value"), rule, "press Enter here to have it after all")));
  }

  private enum Step {
    UNDO,
    REDO
  }

  private void put(Asked asked) {
    State seen = asked.seen();
    AtCase at = new AtCase(seen, seen.order(asked.form("case")));
    String typed = asked.form("value");
    Field field =
        DesignPage.field(at, View.of(asked).open(), asked.form("field"))
            .orElseThrow(NotFoundResponse::new);
    List<Target> targets =
        typed.strip().equals(field.shown().written()) ? List.of() : field.targets().apply(typed);
    Answer answer = change(asked, seen, targets, why(field, typed));
    answer(asked, seen, answer, field, typed);
  }

  private Answer change(Asked asked, State seen, List<Target> targets, String why) {
    return targets.isEmpty()
        ? new Answer.Same(asked.newest())
        : desk.change(asked.id(), Target.edits(targets, seen.text()), asked.by(), why);
  }

  private static String why(Field field, String typed) {
    return field.shown().label() + (typed.isBlank() ? " left out" : " " + typed.strip());
  }

  private void answer(Asked asked, State seen, Answer answer, Field field, String typed) {
    String id = field.shown().id();
    switch (answer) {
      case Answer.Wrong(State now, List<Problem> problems) -> {
        Complaint complaint = Complaint.of(problems, field, typed);
        said(
            asked,
            seen,
            now,
            HttpStatus.UNPROCESSABLE_CONTENT,
            field.shown().label() + " was not changed: " + complaint.rule() + ".",
            complaint.at(field));
      }
      case Answer.Refused(State now, String reason) ->
          said(asked, seen, now, HttpStatus.CONFLICT, reason, Typing.refused(id, typed, reason));
      case Answer.Taken(State now, String by, String theirs) ->
          said(
              asked,
              seen,
              now,
              HttpStatus.CONFLICT,
              Typing.notFirst(field.shown().label(), typed),
              Typing.taken(id, typed, by, theirs));
      case Answer other -> said(asked, seen, other, field.shown().label() + " is changed.");
    }
  }

  private static Part part(Asked asked, State seen) {
    return parts(asked, seen)
        .flatMap(p -> p.part(asked.form("part")).stream())
        .findFirst()
        .orElseThrow(NotFoundResponse::new);
  }

  private void earlier(Asked asked) {
    State seen = asked.seen();
    Part part = part(asked, seen);
    String why = part.title() + " moved up";
    said(asked, seen, change(asked, seen, part.earlier(), why), why + ".");
  }

  private void leave(Asked asked) {
    State seen = asked.seen();
    Part part = part(asked, seen);
    String why = part.title() + " left out";
    said(asked, seen, change(asked, seen, part.leave().stream().toList(), why), why + ".");
  }

  private static Stream<Part> parts(Asked asked, State seen) {
    AtCase at = new AtCase(seen, seen.order(asked.form("case")));
    return View.of(asked).open().parts(at).stream();
  }

  /** A group that was not there. */
  private void begin(Asked asked) {
    State seen = asked.seen();
    Part.Begin begin =
        parts(asked, seen)
            .flatMap(p -> p.begin(asked.form("part")).stream())
            .findFirst()
            .orElseThrow(NotFoundResponse::new);
    Begun begun = Begun.of(begin, asked::form);
    if (!begun.missing().all().isEmpty()) {
      begunWrong(asked, seen, asked.newest(), begun.missing(), begin);
      return;
    }
    switch (begin.targets().apply(begun.words())) {
      case Reading.Bad<List<Target>>(String rule, String remedy) ->
          begunWrong(asked, seen, asked.newest(), begun.wrong(rule, remedy), begin);
      case Reading.Good<List<Target>>(List<Target> targets) -> {
        switch (change(asked, seen, targets, begin.title())) {
          case Answer.Wrong(State now, List<Problem> problems) ->
              begunWrong(asked, seen, now, begun.wrong(problems), begin);
          case Answer.Taken(State now, String by, _) ->
              said(asked, seen, now, HttpStatus.CONFLICT, notYet(begin), begun.taken(by));
          case Answer other -> said(asked, seen, other, begin.title() + ": done.");
        }
      }
    }
  }

  private void begunWrong(Asked asked, State seen, State now, Typing typing, Part.Begin begin) {
    said(asked, seen, now, HttpStatus.UNPROCESSABLE_CONTENT, notYet(begin), typing);
  }

  private static String notYet(Part.Begin begin) {
    return begin.title() + ": not yet; see there.";
  }

  private void said(Asked asked, State seen, Answer answer, String done) {
    said(asked, seen, answer, done, "");
  }

  /**
   * @param same what is said where nothing has changed; may be empty
   */
  private void said(Asked asked, State seen, Answer answer, String done, String same) {
    switch (answer) {
      case Answer.Saved(State now) -> said(asked, seen, now, HttpStatus.OK, done, Typing.NOTHING);
      case Answer.Same(State now) -> said(asked, seen, now, HttpStatus.OK, same, Typing.NOTHING);
      case Answer.Refused(State now, String reason) ->
          said(asked, seen, now, HttpStatus.CONFLICT, reason, Typing.NOTHING);
      case Answer.Taken(State now, String by, _) ->
          said(
              asked,
              seen,
              now,
              HttpStatus.CONFLICT,
              by + " has changed this since you looked; nothing was changed.",
              Typing.NOTHING);
      case Answer.Wrong(State now, List<Problem> problems) ->
          said(
              asked,
              seen,
              now,
              HttpStatus.UNPROCESSABLE_CONTENT,
              "Nothing was changed: " + problems.getFirst().rule() + ".",
              Typing.NOTHING);
    }
  }

  /** The parts of the page that are other than they were; or, without scripts, the whole. */
  private void said(
      Asked asked, State seen, State now, HttpStatus status, String notice, Typing typing) {
    View view = View.of(asked).in(seen, now);
    String outgrown = now.outgrown().equals(seen.outgrown()) ? "" : " " + now.outgrown();
    DesignPage page =
        new DesignPage(now, pages.token(asked.http()), view, notice + outgrown, typing);
    boolean scripted = Asked.isScripted(asked.http());
    if (!scripted && status == HttpStatus.OK) {
      asked.http().redirect(page.fresh(), HttpStatus.SEE_OTHER);
      return;
    }
    asked.http().status(status);
    if (!scripted) {
      pages.show(asked.http(), "design", Map.of("page", page));
      return;
    }
    DesignPage before = new DesignPage(seen, page.token(), view, "", Typing.NOTHING);
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
    List<Target> targets = Wishes.moved(seen, order, bay, shelf, level);
    if (targets.isEmpty()) {
      throw new NotFoundResponse();
    }
    String unit = " " + new Words(seen.job()).unit();
    String to = Wishes.level(seen, order, bay, level).orElse("") + unit;
    wish(asked, seen, targets, "Shelf " + shelf + " of bay " + bay + " moved to " + to);
  }

  private void wish(Asked asked, State seen, List<Target> targets, String why) {
    said(asked, seen, change(asked, seen, targets, why), why + ".");
  }

  private void divide(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    wish(asked, seen, Wishes.divided(seen, order, bay), "Bay " + bay + " divided");
  }

  private void join(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    String why = "Bays " + bay + " and " + (bay + 1) + " made one";
    wish(asked, seen, Wishes.joined(seen, order, bay), why);
  }

  private void swap(Asked asked) {
    State seen = asked.seen();
    CaseOrder order = seen.order(asked.form("case"));
    int bay = asked.number("bay");
    String why = "Bays " + bay + " and " + (bay + 1) + " changed places";
    said(
        asked,
        seen,
        change(asked, seen, Wishes.swapped(seen, order, bay), why),
        why + ".",
        "Bays " + bay + " and " + (bay + 1) + " are alike.");
  }

  /** Does what a remedy says, if its finding is gone by it; asks first where it spoils more. */
  private void cure(Asked asked) {
    State seen = asked.seen();
    Press press = Press.of(asked.form("cure"), seen.plan()).orElseThrow(NotFoundResponse::new);
    switch (new Curing(desk, seen, press.finding()).tried(press.remedy())) {
      case Curing.Trial.Not(Answer answer) -> said(asked, seen, answer, "");
      case Curing.Trial.Would would when press.mustAsk(would) ->
          said(
              asked,
              seen,
              asked.newest(),
              HttpStatus.CONFLICT,
              press.notYet(),
              press.question(would));
      case Curing.Trial.Would would ->
          said(
              asked,
              seen,
              desk.change(
                  asked.id(), would.edits(), asked.by(), press.why(would), press.objection(would)),
              press.done(would));
    }
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
