package fourpin.shop.web;

import fourpin.shop.fields.Field;
import fourpin.shop.fields.Part;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A page with fields of a file that is kept. */
public interface FieldPage {

  /** A field as it stands on the page. @param trouble what is wrong with it, in sentences */
  record Box(Field.Shown shown, String value, Optional<String> trouble) {}

  /** Address of what the fields are of. */
  String base();

  /** That its forms show. */
  String token();

  /** The revision that it shows. */
  String seen();

  /** What its forms send along besides. */
  Map<String, String> along();

  Box box(Field.Shown shown);

  /** Every field of the page. */
  List<Box> allBoxes();

  /** What else there is of parts: where that differs, fields come or go, or are filled in anew. */
  List<String> outline();

  /** What is wrong with a group that was to be begun; nothing that its blanks do not say. */
  Optional<String> trouble(Part.Begin begin);

  /** Whether somebody is about to begin it. */
  boolean isBegun(Part.Begin begin);
}
