package fourpin.sheets.pages;

import java.util.IdentityHashMap;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDListAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/** The structure tree of one document, and the way back from marks to it (ISO 32000-1, 14.7). */
final class PdfTags {

  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final Map<Tag, PDStructureElement> elements = new IdentityHashMap<>();
  private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
  private int nextKey;

  PdfTags(Tag tree) {
    grow(tree, root);
  }

  private void grow(Tag tag, PDStructureNode parent) {
    PDStructureElement element = new PDStructureElement(tag.role().type(), parent);
    tag.alternative().ifPresent(element::setAlternateDescription);
    addAttributes(tag, element);
    parent.appendKid(element);
    elements.put(tag, element);
    tag.children().forEach(child -> grow(child, element));
  }

  private static void addAttributes(Tag tag, PDStructureElement element) {
    if (tag.role() == Tag.Role.HEADER_CELL) {
      PDTableAttributeObject scope = new PDTableAttributeObject();
      scope.setScope(PDTableAttributeObject.SCOPE_COLUMN);
      element.addAttribute(scope);
    } else if (tag.role() == Tag.Role.LIST) {
      PDListAttributeObject numbering = new PDListAttributeObject();
      numbering.setListNumbering(PDListAttributeObject.LIST_NUMBERING_NONE);
      element.addAttribute(numbering);
    }
  }

  PDStructureTreeRoot root() {
    return root;
  }

  /** The marks of one page, numbered from 0 in the order of painting. */
  final class OfPage {

    private final PDPage page;
    private final COSArray owners = new COSArray();

    private OfPage(PDPage page) {
      this.page = page;
      page.getCOSObject().setInt(COSName.STRUCT_PARENTS, nextKey);
      parents.put(nextKey++, new PDParentTreeValue(owners));
    }

    /** The number that the next marks carry on this page. */
    int next(Tag tag) {
      int number = owners.size();
      PDStructureElement element = element(tag);
      if (element.getPage() == null) {
        element.setPage(page);
      }
      element.appendKid(reference(number));
      owners.add(element.getCOSObject());
      return number;
    }

    private PDMarkedContentReference reference(int number) {
      PDMarkedContentReference reference = new PDMarkedContentReference();
      reference.setPage(page);
      reference.setMCID(number);
      return reference;
    }

    /** Ties a link to its tag. */
    void link(Tag tag, PDAnnotation annotation) {
      PDStructureElement element = element(tag);
      PDObjectReference reference = new PDObjectReference();
      reference.setReferencedObject(annotation);
      reference.getCOSObject().setItem(COSName.PG, page);
      element.appendKid(reference);
      annotation.setStructParent(nextKey);
      parents.put(nextKey++, new PDParentTreeValue(element.getCOSObject()));
    }
  }

  OfPage page(PDPage page) {
    return new OfPage(page);
  }

  /** Tells where a figure lies, in points. */
  void place(Tag figure, PDRectangle box) {
    PDLayoutAttributeObject attributes = new PDLayoutAttributeObject();
    attributes.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
    attributes.setBBox(box);
    element(figure).addAttribute(attributes);
  }

  private PDStructureElement element(Tag tag) {
    PDStructureElement element = elements.get(tag);
    if (element == null) {
      throw new IllegalStateException("A mark belongs to a tag outside the tree: " + tag.role());
    }
    return element;
  }

  /** To be called when all pages are painted. */
  void close() {
    PDNumberTreeNode tree = new PDNumberTreeNode(PDParentTreeValue.class);
    tree.setNumbers(parents);
    root.setParentTree(tree);
    root.setParentTreeNextKey(nextKey);
  }
}
