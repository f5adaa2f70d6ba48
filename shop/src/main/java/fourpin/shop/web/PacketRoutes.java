package fourpin.shop.web;

import fourpin.sheets.packet.Codes;
import fourpin.sheets.packet.Packet;
import fourpin.sheets.packet.PdfPacket;
import fourpin.shop.fields.Target;
import fourpin.shop.packet.PlanFiles;
import fourpin.shop.web.guard.Reach;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** The packet of a job, as paper and as files. */
final class PacketRoutes {

  private final Desk desk;
  private final Pages pages;
  private final Supplier<Reach> reach;

  PacketRoutes(Desk desk, Pages pages, Supplier<Reach> reach) {
    this.desk = desk;
    this.pages = pages;
    this.reach = reach;
  }

  void add(RoutesConfig routes) {
    routes.get("/jobs/{id}/packet", http -> show(http, newest(http)));
    routes.get("/jobs/{id}/packet.pdf", this::pdf);
    routes.get("/jobs/{id}/packet.zip", this::zip);
    routes.post("/jobs/{id}/print", this::print);
  }

  private State newest(Context http) {
    return new Asked(http, desk).newest();
  }

  private void show(Context http, State state) {
    pages.show(http, "packet", Map.of("page", PacketPage.of(state, pages.token(http))));
  }

  private void pdf(Context http) {
    http.contentType("application/pdf")
        .header("Content-Disposition", "inline; filename=\"packet.pdf\"")
        .result(PdfPacket.write(Packet.compose(newest(http).plan(), codes(http))));
  }

  /** They lead to where the packet was asked for, or to nothing if no phone could follow them. */
  private Codes codes(Context http) {
    String host = Objects.requireNonNullElse(http.header("Host"), "");
    return reach
        .get()
        .origin(host)
        .map(at -> Codes.to(at + "/jobs/" + new Asked(http, desk).id().value() + "/bench"))
        .orElse(Codes.NONE);
  }

  private void zip(Context http) {
    http.contentType("application/zip")
        .header("Content-Disposition", "attachment; filename=\"packet.zip\"")
        .result(Zip.of(PlanFiles.of(newest(http).plan(), codes(http))));
  }

  private void print(Context http) {
    Asked asked = new Asked(http, desk);
    State seen = asked.seen();
    PacketPage.Switch wanted =
        PacketPage.switches(seen.job())
            .filter(s -> s.key().equals(asked.form("key")) && s.value().equals(asked.form("value")))
            .findFirst()
            .orElseThrow(NotFoundResponse::new);
    Answer answer =
        desk.change(
            asked.id(),
            Target.edits(List.of(wanted.target()), seen.text()),
            asked.by(),
            "Printed: " + wanted.words());
    if (answer instanceof Answer.Saved || answer instanceof Answer.Same) {
      http.redirect("/jobs/" + asked.id().value() + "/packet", HttpStatus.SEE_OTHER);
    } else {
      http.status(HttpStatus.CONFLICT);
      pages.show(
          http,
          "trouble",
          Map.of(
              "title",
              "Nothing was changed",
              "lines",
              List.of("Somebody has changed how this job is printed since you looked.")));
    }
  }
}
