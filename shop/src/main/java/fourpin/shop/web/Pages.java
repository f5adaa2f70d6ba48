package fourpin.shop.web;

import fourpin.shop.web.guard.Guard;
import fourpin.shop.web.guard.GuardHandler;
import fourpin.shop.yaml.Problem;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
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
    Map<String, Object> all = new HashMap<>(values);
    all.put("nav", Link.of(GuardHandler.visitor(http)));
    StringOutput out = new StringOutput();
    engine.render(template + ".jte", all, out);
    http.contentType("text/html; charset=utf-8").result(out.toString());
  }

  /** A page of its own for what came of a form that has no page to show it on. */
  void trouble(Context http, HttpStatus status, String title, List<String> lines) {
    http.status(status);
    show(http, "trouble", Map.of("title", title, "lines", lines));
  }

  /** Each problem of a file that cannot be taken. @param name what the file is called */
  void wrongFile(Context http, String name, List<Problem> problems) {
    trouble(
        http,
        HttpStatus.UNPROCESSABLE_CONTENT,
        "The file cannot be taken; nothing was changed",
        problems.stream().map(p -> p.text(name)).toList());
  }

  void noFile(Context http) {
    trouble(
        http,
        HttpStatus.UNPROCESSABLE_CONTENT,
        "No file came along",
        List.of("Choose a file first. Nothing was changed."));
  }
}
