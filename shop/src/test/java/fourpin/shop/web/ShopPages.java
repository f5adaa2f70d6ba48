package fourpin.shop.web;

import java.nio.file.Path;

/** The pages of the shop, as somebody comes to them. @param folder for files that are brought */
record ShopPages(Caller caller, Path folder) {

  void rack(Browser browser) {
    browser.open(caller.origin() + "/shop");
    browser.type("#v-rack_material", "oak ply");
    browser.type("#v-rack_thickness", "3/4");
    browser.type("#v-rack_length", "31 1/2");
    browser.type("#v-rack_width", "20");
    browser.press("Put it on the rack");
    browser.awaitText("#notice", "on the rack");
    browser.type("#v-rack_length", "9,5");
    browser.press("Put it on the rack");
    browser.awaitText("#n-rack_length", "comma");
  }

  void shelf(Browser browser, String shelf) {
    browser.open(caller.origin() + "/shop?open=" + shelf);
    if (browser.has("#shop-name")) {
      browser.type("#shop-name", "Harrow Mill workshop");
      browser.press("Begin");
      browser.await("the shop", () -> !browser.has("#shop-name"));
    }
  }

  private void pitch(String pitch) {
    String seen = Caller.first(caller.get("/shop").body(), "data-seen=\"([^\"]*)\"");
    String[] change = {"open", "HABITS", "field", "settings_pitch", "value", pitch, "seen", seen};
    caller.submit("/shop/put", change);
  }

  void lacks(Browser browser) {
    shelf(browser, "HABITS");
    pitch("1 1/4");
    browser.open(caller.origin() + "/shop?open=HABITS");
    browser.bring(folder, "#shop-file", "shop: Harrow Mill workshop\nunit: inch\n");
    browser.awaitText("h1", "The file lacks something");
  }

  void history(Browser browser) {
    lacks(browser);
    browser.press("Put it in place, without these");
    browser.await("the shop", () -> browser.has("#head .presses"));
    browser.click("#head .quiet a");
    browser.awaitText("h1", "History of");
  }

  void beside(Browser browser) {
    history(browser);
    browser.press("What it did");
    browser.awaitText("h1", "Side by side");
  }

  /** Somebody else is faster at a field. */
  void late(Browser browser) {
    shelf(browser, "HABITS");
    pitch("2");
    browser.type("#v-settings_pitch", "1 3/4");
    browser.awaitText("#n-settings_pitch", "has changed it to 2 since you looked");
  }
}
