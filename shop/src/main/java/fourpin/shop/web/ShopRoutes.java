package fourpin.shop.web;

import fourpin.measure.Reading;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Value;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.Part;
import fourpin.shop.fields.Target;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Rack;
import fourpin.shop.store.Racked;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.yaml.Problem;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.GoneResponse;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** What browsers can see and change of what the shop keeps for all its jobs. */
final class ShopRoutes {

  private final ShopDesk desk;
  private final Rack rack;
  private final Pages pages;

  ShopRoutes(ShopDesk desk, Rack rack, Pages pages) {
    this.desk = desk;
    this.rack = rack;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/shop", http -> show(http, "", Typing.NOTHING));
    routes.post("/shop/first", this::first);
    routes.post("/shop/put", this::put);
    routes.post("/shop/begin", this::begin);
    routes.post("/shop/leave", this::leave);
    routes.post("/shop/undo", this::undo);
    routes.post("/shop/redo", this::redo);
    routes.post("/shop/rack", this::add);
    routes.post("/shop/rack/{piece}", this::change);
    routes.post("/shop/rack/{piece}/out", this::takeOut);
  }

  private static String form(Context http, String name) {
    return Objects.requireNonNullElse(http.formParam(name), "");
  }

  private static String by(Context http) {
    return GuardHandler.visitor(http).name();
  }

  private static ShopPage.Shelf open(Context http) {
    String asked = Objects.requireNonNullElse(http.queryParam("open"), "");
    return ShopPage.Shelf.named(asked.isEmpty() ? form(http, "open") : asked);
  }

  private void show(Context http, String notice, Typing typing) {
    show(http, notice, typing, page -> other(http, page));
  }

  /** Those parts of the page; or, without scripts, the whole. */
  private void show(Context http, String notice, Typing typing, Function<ShopPage, Parts> parts) {
    ShopPage page = page(http, desk.newest(), notice, typing);
    if (Asked.isScripted(http)) {
      pages.show(http, "shopupdate", Map.of("page", page, "parts", parts.apply(page)));
    } else {
      pages.show(http, "shop", Map.of("page", page));
    }
  }

  private ShopPage page(Context http, Optional<ShopDesk.Kept> kept, String notice, Typing typing) {
    return new ShopPage(kept, rack.all(), open(http), pages.token(http), notice, typing);
  }

  /** What is other than the page showed it; the rack comes anew with each answer. */
  private Parts other(Context http, ShopPage page) {
    return page.open() == ShopPage.Shelf.RACK
        ? Parts.NONE
        : Parts.between(
            page(http, Optional.of(seen(http)), "", Typing.NOTHING), page, form(http, "field"));
  }

  // The file

  private void first(Context http) {
    Map<String, Value> shop = new LinkedHashMap<>();
    shop.put("shop", Value.of(form(http, "name").strip()));
    shop.put("unit", Value.of(form(http, "unit")));
    String text = JobText.written("What the shop keeps for all its jobs.", Value.group(shop));
    answer(http, desk.put(text, "", by(http), "begun"), "The shop is begun.");
  }

  /** As the maker looked at it; see {@link Asked#seen}. */
  private ShopDesk.Kept seen(Context http) {
    if (desk.newest().isEmpty()) {
      throw new NotFoundResponse();
    }
    return desk.at(form(http, "seen")).orElseThrow(() -> new GoneResponse(Asked.UNKNOWN));
  }

  private void put(Context http) {
    ShopDesk.Kept seen = seen(http);
    String typed = form(http, "value");
    Field field =
        ShopPage.part(seen.text(), open(http))
            .field(form(http, "field"))
            .orElseThrow(NotFoundResponse::new);
    List<Target> targets =
        typed.strip().equals(field.shown().written()) ? List.of() : field.targets().apply(typed);
    String label = field.shown().label();
    switch (change(http, seen, targets, label + " " + typed)) {
      case ShopDesk.Outcome.Wrong(List<Problem> problems) ->
          wrong(
              http,
              "Nothing was changed; see there.",
              Complaint.of(problems, field, typed).at(field));
      case ShopDesk.Outcome.Refused(String reason) ->
          conflict(http, reason, Typing.refused(field.shown().id(), typed, reason));
      case ShopDesk.Outcome.Taken(String by, String theirs) ->
          conflict(
              http,
              Typing.notFirst(label, typed),
              Typing.taken(field.shown().id(), typed, by, theirs));
      case ShopDesk.Outcome other -> answer(http, other, label + " is changed.");
    }
  }

  private void conflict(Context http, String notice, Typing typing) {
    http.status(HttpStatus.CONFLICT);
    show(http, notice, typing);
  }

  private ShopDesk.Outcome change(
      Context http, ShopDesk.Kept seen, List<Target> targets, String why) {
    return targets.isEmpty()
        ? new ShopDesk.Outcome.Done()
        : desk.change(Target.edits(targets, seen.text()), by(http), why);
  }

  private void begin(Context http) {
    ShopDesk.Kept seen = seen(http);
    Part.Begin begin =
        ShopPage.part(seen.text(), open(http))
            .begin(form(http, "part"))
            .orElseThrow(NotFoundResponse::new);
    Begun begun = Begun.of(begin, key -> form(http, key));
    if (!begun.missing().all().isEmpty()) {
      wrong(http, begin.title() + ": not yet; see there.", begun.missing());
      return;
    }
    switch (begin.targets().apply(begun.words())) {
      case Reading.Bad<List<Target>>(String rule, String remedy) ->
          wrong(http, begin.title() + ": not yet; see there.", begun.wrong(rule, remedy));
      case Reading.Good<List<Target>>(List<Target> targets) -> {
        String notYet = begin.title() + ": not yet; see there.";
        switch (change(http, seen, targets, begin.title())) {
          case ShopDesk.Outcome.Wrong(List<Problem> problems) ->
              wrong(http, notYet, begun.wrong(problems));
          case ShopDesk.Outcome.Taken(String by, _) -> conflict(http, notYet, begun.taken(by));
          case ShopDesk.Outcome other -> answer(http, other, begin.title() + ": done.");
        }
      }
    }
  }

  private void leave(Context http) {
    ShopDesk.Kept seen = seen(http);
    Part part =
        ShopPage.part(seen.text(), open(http))
            .part(form(http, "part"))
            .orElseThrow(NotFoundResponse::new);
    String why = part.title() + " left out";
    answer(http, change(http, seen, part.leave().stream().toList(), why), why + ".");
  }

  private void undo(Context http) {
    String seen = seen(http).revision().id().value();
    answer(http, desk.undo(seen, by(http)), "Taken back.");
  }

  private void redo(Context http) {
    String seen = seen(http).revision().id().value();
    answer(http, desk.redo(seen, by(http)), "Brought back.");
  }

  private void answer(Context http, ShopDesk.Outcome outcome, String done) {
    switch (outcome) {
      case ShopDesk.Outcome.Done() -> show(http, done, Typing.NOTHING);
      case ShopDesk.Outcome.Refused(String reason) -> conflict(http, reason, Typing.NOTHING);
      case ShopDesk.Outcome.Taken(String by, _) ->
          conflict(http, by + " has changed this since you looked; look anew.", Typing.NOTHING);
      case ShopDesk.Outcome.Wrong(List<Problem> problems) ->
          wrong(
              http,
              "Nothing was changed: "
                  + problems.getFirst().thing()
                  + ": "
                  + problems.getFirst().rule()
                  + ".",
              Typing.NOTHING);
    }
  }

  private void wrong(Context http, String notice, Typing typing) {
    http.status(HttpStatus.UNPROCESSABLE_CONTENT);
    show(http, notice, typing);
  }

  // The rack

  private void add(Context http) {
    switch (RackFields.read(ShopPage.unit(desk.newest()), key -> form(http, "rack_" + key))) {
      case RackFields.Outcome.Good(Piece piece) -> {
        rack.add(piece);
        show(http, piece.material() + " is on the rack.", Typing.NOTHING, _ -> Parts.ALL);
      }
      case RackFields.Outcome.Wrong(Typing typing) -> {
        http.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(http, "It is not on the rack yet; see there.", typing, _ -> Parts.ALL);
      }
    }
  }

  /** The piece as the page showed it; nothing where it is another by now. */
  private Optional<Racked> seenPiece(Context http) {
    return rack.all().stream()
        .filter(r -> r.id().equals(http.pathParam("piece")))
        .filter(r -> Long.toString(r.version()).equals(form(http, "version")))
        .findFirst();
  }

  private void change(Context http) {
    String typed = form(http, "count").strip();
    Optional<Racked> seen = seenPiece(http);
    if (seen.isEmpty()) {
      overtaken(http, typed);
      return;
    }
    switch (RackFields.count(typed)) {
      case Reading.Bad<Integer>(String rule, String remedy) ->
          wrong(http, "Nothing was changed; see there.", counted(http, typed, rule, remedy));
      case Reading.Good<Integer>(Integer count) ->
          made(
              http,
              rack.change(seen.get(), seen.get().piece().counted(count)),
              "It is counted.",
              typed);
    }
  }

  private static Typing counted(Context http, String typed, String rule, String remedy) {
    String piece = ShopPage.Line.id(http.pathParam("piece"));
    return new Typing(Map.of(piece, Typing.Typed.wrong(typed, rule, remedy)));
  }

  private void takeOut(Context http) {
    seenPiece(http)
        .ifPresentOrElse(
            seen -> made(http, rack.remove(seen), seen.piece().material() + " is taken out.", ""),
            () -> overtaken(http, ""));
  }

  /**
   * @param typed how many there are, as somebody counted them; may be empty
   */
  private void made(Context http, Rack.Change change, String done, String typed) {
    if (change instanceof Rack.Change.Made) {
      show(http, done, Typing.NOTHING);
    } else {
      overtaken(http, typed);
    }
  }

  private void overtaken(Context http, String typed) {
    Typing typing =
        typed.isEmpty()
            ? Typing.NOTHING
            : counted(
                http,
                typed,
                "somebody has changed it to " + standing(http) + " since you looked",
                "set yours again if it is to stand");
    conflict(http, "Somebody has changed that piece since you looked; look anew.", typing);
  }

  private String standing(Context http) {
    return rack.all().stream()
        .filter(r -> r.id().equals(http.pathParam("piece")))
        .map(r -> Integer.toString(r.piece().count()))
        .findFirst()
        .orElse("none");
  }
}
