package fourpin.shop.web;

import fourpin.shop.edit.Route;
import fourpin.shop.fields.FileFields;
import fourpin.shop.fields.Part;
import fourpin.shop.file.Forms;
import java.util.List;
import java.util.stream.Stream;

/** What is laid together of the keys of a case and of its job; one is open at a time. */
public enum Drawer {
  SIZES("Sizes", List.of("quantity", "outside", "inside", "stands-on"), List.of("room")),
  SHELVES("Shelves", List.of("fixed-shelves", "shelves", "supports", "holds", "load"), List.of()),
  BAYS("Single bays", List.of("bays"), List.of()),
  PANELS("Panels", List.of("material", "edging", "joints", "back", "kick"), List.of()),
  FRONT("Front", List.of("face-frame", "doors", "drawers"), List.of()),
  WOOD("Wood and prices", List.of(), List.of("currency", "materials", "stock")),
  HABITS("Settings", List.of("settings"), List.of()),
  CASES("Cases", List.of(), List.of("cases")),
  JOB("Job", List.of(), List.of("title", "revision", "unit", "paper", "print", "shop")),
  ALL_CASES("Settings of the whole job", List.of(), List.of("settings"));

  /** Before the ids of fields of the job, since a case has some keys of the same names. */
  private static final String OF_JOB = "job";

  private final String title;
  private final List<String> ofCase;
  private final List<String> ofJob;

  Drawer(String title, List<String> ofCase, List<String> ofJob) {
    this.title = title;
    this.ofCase = ofCase;
    this.ofJob = ofJob;
  }

  /** The one of that name, else the first. */
  static Drawer named(String name) {
    return Stream.of(values()).filter(d -> d.name().equals(name)).findFirst().orElse(SIZES);
  }

  public String title() {
    return title;
  }

  List<String> ofCase() {
    return ofCase;
  }

  List<String> ofJob() {
    return ofJob;
  }

  /** Its fields for one case. */
  List<Part> parts(AtCase at) {
    return switch (this) {
      case BAYS -> List.of(new SingleBays(at).part());
      case CASES ->
          List.of(fields(at).names(OF_JOB + "_cases", title, Route.of("cases"), Forms.CASE));
      default -> stated(at);
    };
  }

  private static FileFields fields(AtCase at) {
    return new FileFields(at.text(), Forms.JOB, new JobKnown(at.state()));
  }

  private List<Part> stated(AtCase at) {
    FileFields fields = fields(at);
    return Stream.of(
            fields.part("", title, at.route(), Forms.CASE, ofCase),
            fields.part(OF_JOB, title, Route.TOP, Forms.JOB, ofJob))
        .filter(p -> !(p.fields().isEmpty() && p.parts().isEmpty() && p.begins().isEmpty()))
        .toList();
  }
}
