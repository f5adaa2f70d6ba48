package fourpin.shop.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Words in addresses. */
public final class Addresses {

  private Addresses() {}

  public static String encoded(String words) {
    return URLEncoder.encode(words, StandardCharsets.UTF_8);
  }
}
