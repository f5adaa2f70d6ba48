package fourpin.shop.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PacketFolderTest {

  private static final List<PacketFile> FORMER =
      List.of(PacketFile.of("plan.json", "{}"), PacketFile.of("drawings/front.svg", "<svg/>"));

  @TempDir private Path shop;
  private Path folder;

  @BeforeEach
  void packetOfAFormerRun() throws Exception {
    folder = shop.resolve("a.packet");
    new PacketFolder(folder).replace(FORMER);
  }

  @Test
  void takesThePlaceOfTheFormerPacketWhole() throws Exception {
    new PacketFolder(folder).replace(List.of(PacketFile.of("plan.json", "{1}")));

    assertThat(files(folder)).containsOnlyKeys("plan.json", "manifest.txt");
    assertThat(files(folder)).containsEntry("plan.json", "{1}");
    assertThat(files(shop)).as("nothing is left beside it").hasSize(2);
  }

  @Test
  void theSamePacketIsTheSameBytes() throws Exception {
    Map<String, String> before = files(folder);

    new PacketFolder(folder).replace(FORMER);

    assertThat(files(folder)).isEqualTo(before);
  }

  @Test
  void aFullDiskLeavesTheFormerPacket() throws Exception {
    Map<String, String> before = files(shop);
    PacketFile full =
        new PacketFile(
            "packet.pdf",
            out -> {
              out.write(new byte[100_000]);
              throw new IOException("No space left on device");
            });

    assertThatThrownBy(
            () ->
                new PacketFolder(folder).replace(List.of(PacketFile.of("plan.json", "{1}"), full)))
        .isInstanceOf(IOException.class)
        .hasMessage("No space left on device");

    assertThat(files(shop)).containsAllEntriesOf(before);
    assertThat(shop.resolve(".a.packet.new")).doesNotExist();
  }

  @Test
  void aFailureOfOursLeavesTheFormerPacket() throws Exception {
    Map<String, String> before = files(folder);
    PacketFile broken =
        new PacketFile(
            "packet.pdf",
            out -> {
              throw new IllegalStateException("a page does not fit");
            });

    assertThatThrownBy(() -> new PacketFolder(folder).replace(List.of(broken)))
        .isInstanceOf(IllegalStateException.class);

    assertThat(files(folder)).isEqualTo(before);
    assertThat(shop.resolve(".a.packet.new")).doesNotExist();
  }

  @Test
  void anUnwritablePlaceIsTold() throws Exception {
    Path file = Files.writeString(shop.resolve("file"), "x");

    assertThatThrownBy(() -> new PacketFolder(file.resolve("a.packet")).replace(FORMER))
        .isInstanceOf(IOException.class);
  }

  @Test
  void refusesAFolderThatIsNoPacket() throws Exception {
    Path photos = Files.createDirectory(shop.resolve("photos"));
    Files.writeString(photos.resolve("stove.jpg"), "x");

    assertThatThrownBy(() -> new PacketFolder(photos).replace(FORMER))
        .isInstanceOf(PacketFolder.RefusedException.class)
        .hasMessage(photos + " holds files and is no packet. Name another folder with --out.");
    assertThat(files(photos)).containsOnlyKeys("stove.jpg");
  }

  @Test
  void takesAnEmptyFolder() throws Exception {
    Path empty = Files.createDirectory(shop.resolve("empty"));

    new PacketFolder(empty).replace(FORMER);

    assertThat(files(empty)).hasSize(3);
  }

  @Test
  void refusesToDeleteANoteOfTheMakers() throws Exception {
    Files.writeString(folder.resolve("notes.txt"), "shelf 3 rocks");

    assertThatThrownBy(() -> new PacketFolder(folder).replace(FORMER))
        .isInstanceOf(PacketFolder.RefusedException.class)
        .hasMessage(
            folder
                + " holds 'notes.txt', which Fourpin did not write like that. Move it elsewhere, or name another folder with --out.");
    assertThat(files(folder)).containsEntry("notes.txt", "shelf 3 rocks");
  }

  /** Notes at the saw are there to be gone on from. */
  @Test
  void namesWhatGoesOnFromNotes() throws Exception {
    Files.writeString(folder.resolve("progress.csv"), "S1,cut");

    assertThatThrownBy(() -> new PacketFolder(folder).replace(FORMER))
        .isInstanceOf(PacketFolder.RefusedException.class)
        .hasMessage(
            folder
                + " holds 'progress.csv', which Fourpin did not write like that. If these are your"
                + " notes at the saw, go on from them with: fourpin cut ... --after "
                + folder
                + "; else name another folder with --out.");
    assertThat(files(folder)).containsEntry("progress.csv", "S1,cut");
  }

  @Test
  void replacesAPacketOfAFormerVersion() throws Exception {
    Path manifest = folder.resolve("manifest.txt");
    List<String> lines = new ArrayList<>(Files.readAllLines(manifest));
    assertThat(lines.getFirst()).contains("notes go into progress.csv");
    lines.set(0, "Fourpin packet; made anew by each run, so keep notes elsewhere");
    Files.write(manifest, lines);

    new PacketFolder(folder).replace(FORMER);

    assertThat(Files.readAllLines(manifest).getFirst()).contains("notes go into progress.csv");
  }

  @Test
  void refusesToDeleteAFileThatTheMakerChanged() throws Exception {
    Files.writeString(folder.resolve("plan.json"), "{my own}");

    assertThatThrownBy(() -> new PacketFolder(folder).replace(FORMER))
        .isInstanceOf(PacketFolder.RefusedException.class)
        .hasMessageContaining("plan.json");
    assertThat(files(folder)).containsEntry("plan.json", "{my own}");
  }

  /** Killed while it wrote: half a packet lies beside the former one. */
  @Test
  void clearsHalfAPacketOfAKilledRun() throws Exception {
    Files.createDirectory(shop.resolve(".a.packet.new"));
    Files.writeString(shop.resolve(".a.packet.new/plan.json"), "{");

    new PacketFolder(folder).replace(FORMER);

    assertThat(shop.resolve(".a.packet.new")).doesNotExist();
    assertThat(files(folder)).hasSize(3);
  }

  /** Killed between the two renames: the former packet lies aside and nothing is in its place. */
  @Test
  void bringsBackTheFormerPacketOfAKilledRun() throws Exception {
    Map<String, String> before = files(folder);
    Files.move(folder, shop.resolve(".a.packet.old"));

    assertThatThrownBy(
            () ->
                new PacketFolder(folder)
                    .replace(
                        List.of(
                            new PacketFile(
                                "x",
                                out -> {
                                  throw new IOException("full");
                                }))))
        .isInstanceOf(IOException.class);

    assertThat(files(folder)).isEqualTo(before);
    assertThat(shop.resolve(".a.packet.old")).doesNotExist();
  }

  @Test
  void waitsForNoOtherRun() throws Exception {
    try (FileChannel channel =
            FileChannel.open(
                shop.resolve(".a.packet.lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assertThat(held.isValid()).isTrue();
      assertThatThrownBy(() -> new PacketFolder(folder).replace(FORMER))
          .isInstanceOf(PacketFolder.RefusedException.class)
          .hasMessage("another run is writing " + folder + ". Wait until it is done.");
    }
  }

  @Test
  void noFileGoesOutsideThePacket() {
    assertThatThrownBy(() -> PacketFile.of("../plan.json", ""))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PacketFile.of("/plan.json", ""))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Map<String, String> files(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }
}
