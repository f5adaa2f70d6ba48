package fourpin.shop.web;

/** What pages are looked at on; sizes in CSS pixels. */
enum Screen {
  DESK(1280, 900, Pointing.MOUSE),
  TABLET(820, 1180, Pointing.FINGER),
  SMALL_TABLET(768, 1024, Pointing.FINGER),
  TABLET_ACROSS(1024, 768, Pointing.FINGER),
  PHONE(390, 844, Pointing.FINGER),
  PHONE_ACROSS(844, 390, Pointing.FINGER),
  /** A desk's page at 400 %: WCAG 2.2, 1.4.10. */
  REFLOW(320, 640, Pointing.FINGER);

  enum Pointing {
    MOUSE,
    FINGER
  }

  private final int width;
  private final int height;
  private final Pointing pointing;

  Screen(int width, int height, Pointing pointing) {
    this.width = width;
    this.height = height;
    this.pointing = pointing;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  Pointing pointing() {
    return pointing;
  }

  /** What the browser says its user prefers. */
  enum Scheme {
    LIGHT,
    DARK
  }
}
