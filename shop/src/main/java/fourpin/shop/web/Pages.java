package fourpin.shop.web;

import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.GuardHandler;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.nio.file.Path;
import java.util.Map;

/** Renders the templates. */
final class Pages {

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(
          Path.of("."), ContentType.Html, Pages.class.getClassLoader(), "fourpin.shop.web.pages");

  private final Guard guard;

  Pages(Guard guard) {
    this.guard = guard;
  }

  /** What the forms of a page show, so that its changes are taken. */
  String token(Context http) {
    return guard.formToken(GuardHandler.visitor(http));
  }

  void show(Context http, String template, Map<String, Object> values) {
    StringOutput out = new StringOutput();
    engine.render(template + ".jte", values, out);
    http.contentType("text/html; charset=utf-8").result(out.toString());
  }
}
