package fourpin.shop.web;

import fourpin.job.CaseOrder;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Sizes;
import fourpin.sheets.packet.Words;
import fourpin.shop.edit.Change;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.SequencedMap;

/** What of a case can be written in or chosen on its page; the rest is for the job file. */
final class CaseFields {

  /** Settings that makers reach for first, in the order of the work. */
  private static final List<Setting> SETTINGS =
      List.of(
          Setting.PITCH,
          Setting.CLEAR_BELOW,
          Setting.CLEAR_ABOVE,
          Setting.FIRST_HOLE,
          Setting.FRONT_ROW,
          Setting.BACK_ROW,
          Setting.HOLE_DEPTH,
          Setting.ROWS,
          Setting.BALANCE,
          Setting.END_PLAY,
          Setting.SAG_LIMIT,
          Setting.SAG_LIMIT_YEARS,
          Setting.WAY,
          Setting.KERF);

  /** A heading with its fields. */
  record Group(String title, List<Field> fields) {}

  private final State state;
  private final JobText text;
  private final CaseOrder order;
  private final Route aCase;
  private final Words words;
  private final StatedBays bays;

  CaseFields(State state, CaseOrder order) {
    this.state = state;
    this.text = state.text();
    this.order = order;
    this.aCase = Route.of("cases", order.name());
    this.words = new Words(state.job());
    this.bays = StatedBays.of(state, order);
  }

  /** By its id, among all. */
  Optional<Field> field(String id) {
    List<Field> all = new ArrayList<>();
    groups().forEach(g -> all.addAll(g.fields()));
    new BayFields(state, order).columns().forEach(all::addAll);
    return all.stream().filter(f -> f.shown().id().equals(id)).findFirst();
  }

  List<Group> groups() {
    return List.of(
        new Group("The case", sizes()),
        new Group("Wood", wood()),
        new Group("Back and foot", backAndFoot()),
        new Group("What shelves lie on", supports()),
        new Group("Room", room()),
        new Group("Habits of the shop", settings()),
        new Group("The job", job()));
  }

  // The case

  private List<Field> sizes() {
    boolean outside = order.sizes().measured() == Sizes.Measured.OUTSIDE;
    Route sizes = aCase.to(outside ? "outside" : "inside");
    String over = outside ? "over all" : "clear inside";
    return List.of(
        word("width", "Width", sizes.to("width"), "", over),
        word("height", "Height", sizes.to("height"), "", over),
        word("depth", "Depth", sizes.to("depth"), "", over),
        new Field(
            shown("bays", "Bays", List.of(), Integer.toString(order.bays().size()), "", ""),
            this::bayCount),
        word("quantity", "How many of it", aCase.to("quantity"), "1", ""));
  }

  /** What is no number goes into the file's words, so that its reader says what is wrong. */
  private Optional<Target> bayCount(String typed) {
    boolean number = typed.strip().matches("[1-9]\\d?");
    return number && Integer.parseInt(typed.strip()) <= CaseOrder.MOST_BAYS
        ? Optional.of(bays.resized(Integer.parseInt(typed.strip())))
        : Optional.of(new Target(aCase.to("bays"), new Change.Put(Value.of(typed.strip()))));
  }

  private List<Field> wood() {
    List<Field> fields = new ArrayList<>();
    fields.add(
        chosen(
            "material",
            "Case",
            aCase.to("material"),
            materials(Material.Kind.SHEET, Material.Kind.BOARD)));
    for (Material material : state.job().materials()) {
      Route route = Route.of("materials", material.name());
      String name = material.name();
      fields.add(
          word(
              "measured-" + slug(name),
              name + ", by calliper",
              route.to("measured"),
              words.number(material.thickness()),
              words.unit()));
    }
    return fields;
  }

  private List<Field.Choice> materials(Material.Kind... kinds) {
    List<Material.Kind> wanted = List.of(kinds);
    return state.job().materials().stream()
        .filter(m -> wanted.contains(m.kind()))
        .map(m -> new Field.Choice(m.name(), m.name() + ", " + m.of()))
        .toList();
  }

  private List<Field> backAndFoot() {
    List<Field> fields = new ArrayList<>();
    Route back = aCase.to("back");
    fields.add(
        new Field(
            shown(
                "back",
                "Back",
                List.of(
                    new Field.Choice("", "none"),
                    new Field.Choice("groove", "let into grooves"),
                    new Field.Choice("rabbet", "in a rabbet"),
                    new Field.Choice("applied", "on the back edges")),
                text.word(back.to("kind")).orElse(""),
                "",
                ""),
            typed -> withGroup(back, "kind", typed, "material", thinSheet())));
    if (order.back().isPresent()) {
      fields.add(
          chosen("back-material", "Back of", back.to("material"), materials(Material.Kind.SHEET)));
    }
    Route kick = aCase.to("kick");
    fields.add(
        new Field(
            shown(
                "kick", "Kick", List.of(), text.word(kick.to("height")).orElse(""), "none", "high"),
            typed -> withGroup(kick, "height", typed, "material", order.material())));
    if (order.kick().isPresent()) {
      fields.add(word("kick-recess", "Kick set back", kick.to("recess"), "0", ""));
    }
    return fields;
  }

  private String thinSheet() {
    return state.job().materials().stream()
        .filter(m -> m.kind() == Material.Kind.SHEET)
        .min(java.util.Comparator.comparing(Material::thickness))
        .map(Material::name)
        .orElse(order.material());
  }

  /** One key of a group that comes and goes with it. */
  private Optional<Target> withGroup(
      Route group, String key, String typed, String other, String standard) {
    boolean there = text.value(group).isPresent();
    if (typed.isBlank()) {
      return there ? Optional.of(new Target(group, new Change.Remove())) : Optional.empty();
    }
    if (there) {
      return Field.word(text, group.to(key), typed);
    }
    SequencedMap<String, Value> made = new LinkedHashMap<>();
    made.put(key, Value.of(typed.strip()));
    made.put(other, Value.of(standard));
    return Optional.of(new Target(group, new Change.Put(Value.group(made))));
  }

  private List<Field> supports() {
    Route pins = aCase.to("supports").to("pins");
    return text.value(pins).isEmpty()
        ? List.of()
        : List.of(
            word("pin-diameter", "Pin, diameter", pins.to("diameter"), "", "by calliper"),
            word("pin-stem", "Pin, stem", pins.to("stem"), "", "in the hole"),
            word("pin-reach", "Pin, reach", pins.to("reach"), "", "out of the side"),
            word("pin-rise", "Pin, rise", pins.to("rise"), "half the diameter", "hole to shelf"));
  }

  private List<Field> room() {
    Route room = Route.of("room");
    return List.of(
        word("room-width", "Wall or alcove", room.to("width"), "not checked", "wide, least"),
        word("room-ceiling", "Ceiling", room.to("ceiling"), "not checked", "high, least"),
        word("room-depth", "Out from the wall", room.to("depth"), "not checked", "at most"));
  }

  private List<Field> settings() {
    return SETTINGS.stream().map(this::setting).toList();
  }

  private Field setting(Setting setting) {
    Route route = aCase.to("settings").to(setting.key());
    String label = setting.key().replace('-', ' ');
    String standing = standing(setting);
    return setting.kind() == Setting.Kind.CHOICE
        ? choice("set-" + setting.key(), label, route, standing, setting.choices())
        : word("set-" + setting.key(), label, route, standing, setting.meaning());
  }

  private Field choice(
      String id, String label, Route route, String standing, List<String> choices) {
    List<Field.Choice> all = new ArrayList<>();
    all.add(new Field.Choice("", "as usual: " + standing));
    choices.forEach(c -> all.add(Field.Choice.of(c)));
    return new Field(
        shown(id, label, all, text.word(route).orElse(""), standing, ""),
        typed -> Field.word(text, route, typed));
  }

  /** What holds for the whole job. */
  private String standing(Setting setting) {
    return words.value(state.job().settings(), setting);
  }

  private List<Field> job() {
    return List.of(
        word("title", "Title", Route.of("title"), "", ""),
        word(
            "print",
            "Lengths printed to",
            Route.of("print"),
            "",
            "1/32 in or 0.5 mm; its unit is that of all pages"),
        word("currency", "Currency", Route.of("currency"), "none", ""));
  }

  /** A printed length as it may be typed: the nearest hole is taken, so that is near enough. */
  static String plain(String printed) {
    return printed.replace("≈ ", "");
  }

  // Making fields

  private Field.Shown shown(
      String id,
      String label,
      List<Field.Choice> choices,
      String written,
      String standing,
      String note) {
    return new Field.Shown(slug(id), label, choices, written, standing, note);
  }

  private Field word(String id, String label, Route route, String standing, String note) {
    return new Field(
        shown(id, label, List.of(), text.word(route).orElse(""), standing, note),
        typed -> Field.word(text, route, typed));
  }

  private Field chosen(String id, String label, Route route, List<Field.Choice> choices) {
    return new Field(
        shown(id, label, choices, text.word(route).orElse(""), "", ""),
        typed -> Field.word(text, route, typed));
  }

  private static String slug(String words) {
    return words.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
