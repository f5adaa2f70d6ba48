package fourpin.shop.packet;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A folder that holds the packet of a job. A new packet takes the place of the former one whole or
 * not at all, also when the run is killed or the disk is full; what Fourpin did not write is never
 * deleted.
 *
 * <p>The new packet is written beside the folder, flushed to the disk, and swapped in by renaming;
 * the next run puts right whatever a killed one left between two renames.
 */
public final class PacketFolder {

  /** The folder is not one that a packet may take the place of. */
  public static final class RefusedException extends Exception {
    private static final long serialVersionUID = 1;

    RefusedException(String message) {
      super(message);
    }
  }

  /** Where makers note what has become of each sheet. */
  private static final String NOTES = "progress.csv";

  private final Path folder;
  private final Path fresh;
  private final Path former;
  private final Path lock;

  public PacketFolder(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
    String name = Optional.ofNullable(this.folder.getFileName()).map(Path::toString).orElse("");
    this.fresh = this.folder.resolveSibling("." + name + ".new");
    this.former = this.folder.resolveSibling("." + name + ".old");
    this.lock = this.folder.resolveSibling("." + name + ".lock");
  }

  /**
   * Puts a packet there.
   *
   * @throws RefusedException if something stands there that is not a packet as Fourpin left it
   * @throws IOException if it could not be written; the folder is then as it was
   */
  public void replace(List<PacketFile> files) throws IOException, RefusedException {
    Path parent = folder.getParent();
    if (parent == null) {
      throw new RefusedException("the packet needs a folder of its own");
    }
    Files.createDirectories(parent);
    try (FileChannel channel =
            FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock held = held(channel)) {
      try {
        putRight();
        check();
        write(files);
        swap();
      } finally {
        Files.deleteIfExists(lock);
      }
    }
  }

  private FileLock held(FileChannel channel) throws IOException, RefusedException {
    try {
      FileLock held = channel.tryLock();
      if (held != null) {
        return held;
      }
    } catch (OverlappingFileLockException e) {
      // Another thread of this program holds it, which is told like another program.
    }
    throw new RefusedException("another run is writing " + folder + ". Wait until it is done.");
  }

  /** What a killed run left: the former packet without a successor goes back, the rest goes. */
  private void putRight() throws IOException {
    if (Files.exists(former) && !Files.exists(folder)) {
      Files.move(former, folder, StandardCopyOption.ATOMIC_MOVE);
    }
    delete(former);
    delete(fresh);
  }

  /**
   * Asks whether a packet could be put there, as far as that is known before.
   *
   * @throws RefusedException if something stands there that is not a packet as Fourpin left it, or
   *     nothing may be written there
   * @throws IOException if what stands there could not be read
   */
  public void check() throws IOException, RefusedException {
    checkPlace();
    if (!Files.exists(folder)) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new RefusedException(folder + " is a file. Name a folder with --out.");
    }
    Manifest now = Manifest.of(folder);
    Optional<Manifest> written = Manifest.in(folder);
    if (written.isEmpty()
        && !(now.digests().isEmpty() && !Files.exists(folder.resolve(Manifest.NAME)))) {
      throw new RefusedException(
          folder + " holds files and is no packet. Name another folder with --out.");
    }
    Optional<String> stranger = written.flatMap(now::strangerTo);
    if (stranger.isPresent()) {
      throw new RefusedException(
          folder
              + " holds '"
              + stranger.get()
              + "', which Fourpin did not write like that. "
              + remedy(stranger.get()));
    }
  }

  /** Notes are there to be gone on from. */
  private String remedy(String stranger) {
    return stranger.equals(NOTES)
        ? "If these are your notes at the saw, go on from them with: fourpin cut ... --after "
            + folder
            + "; else name another folder with --out."
        : "Move it elsewhere, or name another folder with --out.";
  }

  private void checkPlace() throws RefusedException {
    Path above = folder;
    while (above != null && !Files.exists(above)) {
      above = above.getParent();
    }
    if (above != null && !above.equals(folder) && !Files.isDirectory(above)) {
      throw new RefusedException(above + " is a file. Name another folder with --out.");
    }
    Path written = folder.equals(above) ? folder.getParent() : above;
    if (written != null && !Files.isWritable(written)) {
      throw new RefusedException(
          written + " may not be written to. Name another folder with --out.");
    }
  }

  private void write(List<PacketFile> files) throws IOException {
    try {
      Files.createDirectory(fresh);
      for (PacketFile file : files) {
        write(file);
      }
      write(PacketFile.of(Manifest.NAME, Manifest.of(fresh).text()));
    } catch (IOException | RuntimeException failure) {
      delete(fresh);
      throw failure;
    }
  }

  private void write(PacketFile file) throws IOException {
    Path path = fresh.resolve(file.name());
    Files.createDirectories(Optional.ofNullable(path.getParent()).orElse(fresh));
    try (FileChannel channel =
            FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
      file.content().writeTo(out);
      out.flush();
      channel.force(true);
    }
  }

  private void swap() throws IOException {
    boolean replaces = Files.exists(folder);
    if (replaces) {
      Files.move(folder, former, StandardCopyOption.ATOMIC_MOVE);
    }
    try {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException failure) {
      if (replaces) {
        Files.move(former, folder, StandardCopyOption.ATOMIC_MOVE);
      }
      delete(fresh);
      throw failure;
    }
    delete(former);
  }

  private static void delete(Path path) throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    try (Stream<Path> all = Files.walk(path)) {
      for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(each);
      }
    }
  }
}
