package fourpin.shop.packet;

import fourpin.plan.CutPlan;
import fourpin.sheets.packet.CutPacket;
import fourpin.sheets.packet.Packet;
import fourpin.sheets.packet.PdfPacket;
import java.util.ArrayList;
import java.util.List;

/** Every file of a cutting without a job. */
public final class CutFiles {

  private CutFiles() {}

  /** Of the first cutting of its parts. */
  public static List<PacketFile> of(CutPlan plan) {
    return of(plan, 1);
  }

  /**
   * The same plan gives the same files, byte for byte.
   *
   * @param cutting its place among the cuttings of the same parts, from 1
   */
  public static List<PacketFile> of(CutPlan plan, int cutting) {
    Packet packet = CutPacket.compose(plan);
    CutTables tables = new CutTables(plan.materials(), plan.job().style());
    List<PacketFile> files = new ArrayList<>();
    files.add(PacketFile.of("cutting.pdf", PdfPacket.write(packet)));
    files.add(PacketFile.of("layouts.csv", tables.layouts().text()));
    files.add(PacketFile.of("cutting-order.csv", tables.order().text()));
    files.add(PacketFile.of("progress.csv", tables.progress(cutting).text()));
    files.add(PacketFile.of("stock.csv", tables.stock().text()));
    if (plan.wanted().stream().anyMatch(each -> !each.finished().isEmpty())) {
      files.add(PacketFile.of("finished.csv", tables.finished(plan.wanted()).text()));
    }
    if (!plan.yields().isEmpty()) {
      files.add(PacketFile.of("yield.csv", CutTables.yields(plan.yields()).text()));
    }
    packet
        .svgs()
        .forEach((name, svg) -> files.add(PacketFile.of("drawings/" + name + ".svg", svg)));
    return files;
  }
}
