package fourpin.shop.packet;

import fourpin.plan.MaterialPlan;
import fourpin.plan.Plan;
import fourpin.sheets.packet.Codes;
import fourpin.sheets.packet.Packet;
import fourpin.sheets.packet.PdfPacket;
import fourpin.sheets.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/** Every file of the packet of a plan. */
public final class PlanFiles {

  private PlanFiles() {}

  /** The same plan gives the same files, byte for byte. */
  public static List<PacketFile> of(Plan plan) {
    return of(plan, Codes.NONE);
  }

  /** The same with codes that open steps and parts on a phone. */
  public static List<PacketFile> of(Plan plan, Codes codes) {
    Packet packet = Packet.compose(plan, codes);
    Tables tables = new Tables(plan);
    CutTables cutting =
        new CutTables(
            plan.materials().stream().map(MaterialPlan::cut).toList(), plan.job().style());
    List<PacketFile> files = new ArrayList<>();
    files.add(PacketFile.of("packet.pdf", PdfPacket.write(packet)));
    files.add(PacketFile.of("plan.json", PlanJson.text(plan)));
    files.add(PacketFile.of("cut-list.csv", tables.cutList().text()));
    files.add(PacketFile.of("buying.csv", tables.buying().text()));
    files.add(PacketFile.of("layouts.csv", cutting.layouts().text()));
    files.add(PacketFile.of("progress.csv", cutting.progress(1).text()));
    Solid.byName(plan)
        .forEach((name, solid) -> files.add(PacketFile.of(name + ".glb", Glb.write(solid))));
    packet
        .svgs()
        .forEach((name, svg) -> files.add(PacketFile.of("drawings/" + name + ".svg", svg)));
    return files;
  }
}
