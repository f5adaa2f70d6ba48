package fourpin.shop.web.guard;

import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Answers what the web server refuses before the guard sees it, in few words and without details.
 */
final class PlainErrors extends ErrorHandler {

  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int code,
      @Nullable String message,
      @Nullable Throwable cause,
      Callback callback) {
    GuardHandler.HEADERS.forEach(h -> response.getHeaders().put(h.getKey(), h.getValue()));
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, GuardHandler.PLAIN);
    response.write(
        true,
        StandardCharsets.UTF_8.encode("Fourpin does not take that (" + code + ").\n"),
        callback);
  }
}
