package fourpin.shop.web;

import fourpin.shop.file.Opened;
import fourpin.shop.file.ShopFiles;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The one shop file that is kept with the jobs. */
record KeptShop(Documents documents) implements ShopFiles {

  @Override
  public Optional<Opened> standard() {
    return documents
        .newest(DocumentId.SHOP)
        .map(w -> new Opened.Bytes(STANDARD, w.text().getBytes(StandardCharsets.UTF_8)));
  }

  /** All jobs here are made in one shop, whatever its file was called elsewhere. */
  @Override
  public Opened named(String name) {
    return standard()
        .orElseGet(
            () ->
                new Opened.Refused(
                    name,
                    "no shop file is kept here yet",
                    "bring the shop file in on the page Shop first, or leave the key out for now"));
  }
}
