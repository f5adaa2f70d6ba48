package fourpin.shop.web;

import java.util.List;
import java.util.Optional;

/**
 * Two states of the shop file, and what they state differently.
 *
 * @param newest the revision that holds now
 */
public record ShopBesidePage(
    String title,
    String token,
    String newest,
    List<HistoryPage.Entry> states,
    List<BesidePage.Row> stated) {

  public ShopBesidePage {
    states = List.copyOf(states);
    stated = List.copyOf(stated);
  }

  static ShopBesidePage of(ShopDesk.Kept newest, List<ShopDesk.Kept> states, String token) {
    return new ShopBesidePage(
        newest.revision().name(),
        token,
        newest.revision().id().value(),
        states.stream().map(s -> HistoryPage.Entry.of(s.revision(), Optional.empty())).toList(),
        BesidePage.stated(states.stream().map(s -> s.text().value()).toList()));
  }

  /** What stands over the columns. */
  public List<String> heads() {
    return states.stream().map(s -> "change " + s.number() + ": " + s.kind() + s.what()).toList();
  }
}
