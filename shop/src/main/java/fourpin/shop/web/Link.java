package fourpin.shop.web;

import fourpin.shop.web.guard.Visitor;
import java.util.List;
import java.util.stream.Stream;

/** Where every page leads. */
public record Link(String to, String words) {

  private static final List<Link> PAIRED =
      List.of(new Link("/", "Jobs"), new Link("/new", "New case"), new Link("/shop", "Shop"));

  private static final List<Link> HOST =
      Stream.concat(
              PAIRED.stream(),
              Stream.of(new Link("/devices", "Devices"), new Link("/backup", "Backup")))
          .toList();

  /** Only what a visitor may use: the rest refuses them. */
  static List<Link> of(Visitor visitor) {
    return switch (visitor) {
      case Visitor.Host _ -> HOST;
      case Visitor.Paired _ -> PAIRED;
      case Visitor.Stranger _ -> List.of();
    };
  }
}
