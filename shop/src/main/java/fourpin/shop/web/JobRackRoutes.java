package fourpin.shop.web;

import fourpin.job.Material;
import fourpin.shop.fields.Target;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Rack;
import fourpin.shop.store.Racked;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;

/** What a job takes from the rack, and what it leaves there. */
final class JobRackRoutes {

  private final Desk desk;
  private final Rack rack;
  private final Pages pages;

  JobRackRoutes(Desk desk, Rack rack, Pages pages) {
    this.desk = desk;
    this.rack = rack;
    this.pages = pages;
  }

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/rack", http -> show(http, ""));
    routes.post("/jobs/{id}/take", this::take);
    routes.post("/jobs/{id}/offcut", this::offcut);
  }

  private void show(Context http, String notice) {
    JobRackPage page =
        JobRackPage.of(new Asked(http, desk).newest(), rack.all(), pages.token(http), notice);
    pages.show(http, "jobrack", Map.of("page", page));
  }

  /** It stays on the rack until somebody takes it from there. */
  private void take(Context http) {
    Asked asked = new Asked(http, desk);
    State seen = asked.seen();
    Piece piece =
        rack.all().stream()
            .filter(r -> r.id().equals(asked.form("piece")))
            .map(Racked::piece)
            .findFirst()
            .orElseThrow(NotFoundResponse::new);
    Material material =
        seen.job().materials().stream()
            .filter(m -> m.name().equals(asked.form("material")) && JobRackPage.fits(piece, m))
            .findFirst()
            .orElseThrow(NotFoundResponse::new);
    Answer answer =
        desk.change(
            asked.id(),
            Target.edits(List.of(JobRackPage.taken(seen, piece, material)), seen.text()),
            asked.by(),
            "Taken from the rack: " + piece.material());
    if (answer instanceof Answer.Saved) {
      show(http, "The job cuts it first, as " + material.name() + ".");
    } else {
      http.status(HttpStatus.CONFLICT);
      show(http, "It was not taken: somebody has changed the job's stock since. Try again.");
    }
  }

  private void offcut(Context http) {
    Asked asked = new Asked(http, desk);
    List<Piece> offcuts = JobRackPage.offcuts(asked.seen());
    int number = asked.form("offcut").matches("\\d{1,4}") ? asked.number("offcut") : -1;
    if (number < 0 || number >= offcuts.size()) {
      throw new NotFoundResponse();
    }
    Piece piece = offcuts.get(number);
    if (rack.all().stream().noneMatch(r -> r.piece().equals(piece))) {
      rack.add(piece);
    }
    show(http, "It stands on the rack.");
  }
}
