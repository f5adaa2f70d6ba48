package fourpin.casework;

import fourpin.casework.Finding.Remedy;
import fourpin.job.Back;
import fourpin.job.Bay;
import fourpin.job.Drawers;
import fourpin.job.Edging;
import fourpin.job.FaceFrame;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.Optional;

/** What has to hold before a case can be drawn at all. */
final class StatedChecks {

  private static final String NO_COST = "nothing";

  private final Carcass carcass;
  private final Findings findings;

  StatedChecks(Carcass carcass, Findings findings) {
    this.carcass = carcass;
    this.findings = findings;
  }

  void run() {
    room("width", carcass.clearWidth(), "between the sides");
    room("height", carcass.clearHeight(), "between bottom and top");
    room("depth", carcass.backFace(), "in front of the back");
    joints();
    back();
    carcass.order().kick().ifPresent(this::kick);
    carcass.order().edging().forEach(this::edging);
    carcass.faceFrame().ifPresent(this::faceFrame);
    carcass.order().edging().forEach(this::strip);
    carcass.order().drawers().ifPresent(this::drawers);
    for (Bay bay : carcass.order().bays()) {
      bay.shelves().ifPresent(this::glassEdging);
      bay.shelves().ifPresent(shelves -> shelves.edging().forEach(this::strip));
      bay.supports().ifPresent(this::cleats);
    }
  }

  private void room(String size, Length left, String where) {
    if (!left.isPositive()) {
      findings.refuse(
          "no-room",
          "no room is left " + where + " (" + text(left) + ")",
          new Remedy("make the case's " + size + " larger, or its panels thinner", "room"));
    }
  }

  private void joints() {
    Joint.Kind atEnd = Joint.Kind.RABBET;
    end("top", carcass.order().topJoint(), atEnd);
    boolean raised = carcass.foot().isPositive();
    end("bottom", carcass.order().bottomJoint(), raised ? Joint.Kind.DADO : atEnd);
    end("partition", carcass.order().partitionJoint(), Joint.Kind.DADO);
    end("fixed shelf", carcass.order().fixedShelfJoint(), Joint.Kind.DADO);
  }

  private void end(String panel, Joint joint, Joint.Kind possible) {
    if (joint.kind() != possible && joint.kind() != Joint.Kind.BUTT) {
      findings.refuse(
          "joint-misplaced",
          "a "
              + lower(joint.kind())
              + " can't hold the "
              + panel
              + (possible == Joint.Kind.RABBET
                  ? ", which lies at the end of the sides: there is no wood beyond it"
                  : ", which does not lie at the end of what it joins"),
          new Remedy("make it a " + lower(possible), NO_COST),
          new Remedy("make it a butt joint with screws", "screws that show, unless plugged"));
    }
    depth(panel + " joint", carcass.depthOf(joint));
  }

  private void depth(String what, Length depth) {
    if (depth.isAtLeast(carcass.thickness())) {
      findings.refuse(
          "joint-too-deep",
          "the "
              + what
              + " is "
              + text(depth)
              + " deep, in a panel of "
              + text(carcass.thickness()),
          new Remedy(
              "make it at most half the panel: " + text(carcass.thickness().over(2)), NO_COST));
    }
  }

  private void back() {
    carcass
        .order()
        .back()
        .map(Back::kind)
        .ifPresent(kind -> depth("back's " + lower(kind), carcass.backDepth()));
  }

  private void drawers(Drawers drawers) {
    if (drawers.length().isMoreThan(carcass.backFace())
        || drawers.height().isMoreThan(carcass.foot().plus(carcass.clearHeight()))) {
      findings.refuse(
          "drawers-outside",
          "drawers of "
              + text(drawers.length())
              + ", "
              + text(drawers.height())
              + " above the foot, do not fit inside the case, which is "
              + text(carcass.backFace())
              + " deep",
          new Remedy("state how long and how high up they are inside the case", NO_COST));
    }
  }

  private void kick(Kick kick) {
    Length thickness = carcass.job().material(kick.material()).thickness();
    if (kick.recess().plus(thickness).isMoreThan(carcass.backFace())) {
      findings.refuse(
          "kick-too-deep",
          "the kick is recessed by "
              + text(kick.recess())
              + ", in a case that is "
              + text(carcass.backFace())
              + " deep inside",
          new Remedy("recess it less", NO_COST));
      return;
    }
    Length left = carcass.bottomDepthSum().total().minus(kick.recess()).minus(thickness);
    if (left.isLessThan(leastBehind(thickness))) {
      findings.refuse(
          "kick-too-deep",
          "behind the kick "
              + text(left)
              + " are left under the bottom, no room for what behind-kick says stands there",
          new Remedy("recess the kick less", NO_COST),
          new Remedy(
              "set behind-kick to nothing",
              "the bottom bends under its load",
              Optional.of(new Finding.Stated.OfSetting(Setting.BEHIND_KICK, "nothing"))));
    }
  }

  /** Blocks, which stand under partitions, are no shorter than they are thick. */
  private Length leastBehind(Length thickness) {
    boolean stands =
        switch (carcass.order().settings().choice(Setting.BEHIND_KICK)) {
          case "board" -> true;
          case "blocks" -> carcass.order().bays().size() > 1;
          default -> false;
        };
    return stands ? thickness : Length.ZERO;
  }

  private void edging(Edging edging) {
    if (edging.edges().stream().anyMatch(e -> e != Edging.Edge.FRONT)) {
      findings.refuse(
          "edging-in-joint",
          "edging of the case lies on edges that go into joints or against the back",
          new Remedy("put it on the front edges only", NO_COST));
    }
    if (edging.kind() == Edging.Kind.STRIP && edging.height().isMoreThan(carcass.thickness())) {
      findings.refuse(
          "edging-too-high",
          "edging of the case is "
              + text(edging.height())
              + " high, on panels of "
              + text(carcass.thickness())
              + ": on sides and partitions it would stand out into the bays",
          new Remedy("leave its height out: it is then as high as the panels are thick", NO_COST),
          new Remedy("stiffen the fixed shelves otherwise", "thicker shelves or narrower bays"));
    }
    if (edging.thickness().isAtLeast(carcass.backFace())) {
      findings.refuse(
          "edging-too-thick",
          "edging of " + text(edging.thickness()) + " leaves nothing of the panels",
          new Remedy("check its unit", NO_COST));
    }
  }

  /** Glue does not hold a strip to glass so that the two bend as one. */
  private void glassEdging(Shelves shelves) {
    boolean glass = carcass.job().material(shelves.material()).kind() == Material.Kind.GLASS;
    if (glass && !shelves.edging().isEmpty()) {
      findings.refuse(
          "edging-on-glass",
          "shelves of '" + shelves.material() + "' are glass, which takes no edging",
          new Remedy("state edging only for bays with shelves of wood", "ground edges instead"),
          new Remedy("make the shelves of wood", "shelves that can't be seen through"));
    }
  }

  /** A strip lies in its board one way or the other. */
  private void strip(Edging edging) {
    if (edging.kind() == Edging.Kind.STRIP) {
      Length least = Length.min(edging.thickness(), edging.height());
      String size = carcass.style().number(edging.thickness()) + " x " + text(edging.height());
      ripped("an edge strip of " + size, edging.material(), least);
    }
  }

  private void cleats(Support support) {
    if (support instanceof Support.Cleats cleats) {
      ripped("a cleat strip", cleats.material(), cleats.thickness());
      ripped("a loose cleat", cleats.material(), cleats.cleatThickness());
    }
  }

  private void ripped(String what, String material, Length thickness) {
    Length board = carcass.job().material(material).thickness();
    if (thickness.isMoreThan(board)) {
      findings.refuse(
          "board-too-thin",
          what + " is " + text(thickness) + " thick, '" + material + "' only " + text(board),
          new Remedy("choose a board of " + text(thickness) + " or more", "its price"),
          new Remedy("make it at most " + text(board) + " thick", "stiffness"));
    }
  }

  private void faceFrame(FaceFrame frame) {
    Front front = new Front(carcass, frame);
    boolean upright = front.rightEdge().isMoreThan(front.leftEdge());
    boolean level = front.upperEdge().isMoreThan(carcass.bottomFace());
    if (!upright || !level) {
      findings.refuse(
          "frame-closes-case",
          "the stiles or rails of the face frame leave no opening",
          new Remedy("make them narrower", "looks"));
    }
    if (frame.bottomRail().isMoreThan(carcass.bottomFace())) {
      findings.refuse(
          "frame-below-floor",
          "the bottom rail is "
              + text(frame.bottomRail())
              + " wide and ends below the floor: the bottom's upper face is at "
              + text(carcass.bottomFace()),
          new Remedy("make the rail at most " + text(carcass.bottomFace()), "looks"),
          new Remedy("make the kick higher", "room"));
    }
  }

  private String text(Length length) {
    return carcass.style().text(length);
  }

  private static String lower(Enum<?> kind) {
    return kind.name().toLowerCase(java.util.Locale.ROOT);
  }
}
