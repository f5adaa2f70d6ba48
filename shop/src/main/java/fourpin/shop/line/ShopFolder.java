package fourpin.shop.line;

import fourpin.shop.file.Opened;
import fourpin.shop.file.ShopFiles;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Shop files as seen from the folder of a job.
 *
 * @param job the job file
 */
record ShopFolder(Path job) implements ShopFiles {

  @Override
  public Optional<Opened> standard() {
    Path file = job.resolveSibling(STANDARD);
    // A link that leads nowhere is there, and is complained about.
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(
            Opened.open(
                file, "mend the link, or delete it", "keep this name for a shop file beside jobs"))
        : Optional.empty();
  }

  @Override
  public Opened named(String name) {
    try {
      return Opened.open(
          job.resolveSibling(name),
          "name it as seen from the job file's folder",
          "name the shop file itself");
    } catch (InvalidPathException e) {
      return new Opened.Refused(name, "no file can have this name", "check the name");
    }
  }
}
