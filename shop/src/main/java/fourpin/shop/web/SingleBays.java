package fourpin.shop.web;

import fourpin.measure.Reading;
import fourpin.shop.fields.Field;
import fourpin.shop.fields.FileFields;
import fourpin.shop.fields.Part;
import fourpin.shop.file.Forms;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What single bays state otherwise than their case. A case that only says how many bays it has is
 * shown as if it listed them; the list is written when the first of them states something.
 */
record SingleBays(AtCase at) {

  /** The other keys of a bay stand under the drawing. */
  private static final List<String> KEYS = List.of("shelves", "supports");

  private static final String ID = "single";

  private static final String NOTE = "What is not stated here is as it is for the whole case.";

  Part part() {
    FileFields fields = new FileFields(at.bays().spelledOut(), Forms.JOB, new JobKnown(at.state()));
    List<Part> bays =
        IntStream.rangeClosed(1, at.bays().count()).mapToObj(bay -> bay(fields, bay)).toList();
    return new Part(ID, "", "", List.of(), bays, List.of(), Optional.empty());
  }

  private Part bay(FileFields fields, int bay) {
    String title = "Bay " + bay;
    Part stated = fields.part(ID + "-" + bay, title, at.bays().item(bay), Forms.BAY, KEYS);
    Part written = asWritten(stated);
    return new Part(
        stated.id(),
        title,
        NOTE,
        written.fields(),
        written.parts(),
        written.begins(),
        Optional.empty());
  }

  private Part asWritten(Part part) {
    return new Part(
        part.id(),
        part.title(),
        part.note(),
        part.fields().stream().map(this::asWritten).toList(),
        part.parts().stream().map(this::asWritten).toList(),
        part.begins().stream().map(this::asWritten).toList(),
        part.leave().flatMap(t -> at.bays().asWritten(List.of(t)).stream().findFirst()),
        at.bays().asWritten(part.earlier()));
  }

  private Field asWritten(Field field) {
    return new Field(
        field.shown(), field.at(), typed -> at.bays().asWritten(field.targets().apply(typed)));
  }

  private Part.Begin asWritten(Part.Begin begin) {
    return new Part.Begin(
        begin.id(),
        begin.title(),
        begin.note(),
        begin.blanks(),
        begin.at(),
        words -> begin.targets().apply(words).then(t -> Reading.good(at.bays().asWritten(t))));
  }
}
