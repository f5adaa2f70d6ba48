package fourpin.shop.file;

import java.util.Optional;

/** Where the shop file of a job is looked for. */
public interface ShopFiles {

  /** The shop file that holds for every job beside it. */
  String STANDARD = "shop.yaml";

  /** For a job that lies in no folder: there is no shop file. */
  ShopFiles NONE =
      new ShopFiles() {
        @Override
        public Optional<Opened> standard() {
          return Optional.empty();
        }

        @Override
        public Opened named(String name) {
          return new Opened.Refused(
              name, "a job that lies in no folder has no shop file", "leave the key out");
        }
      };

  /** The shop file of the standard name; nothing if there is none. */
  Optional<Opened> standard();

  /** The shop file that a job names, as seen from the job's folder. */
  Opened named(String name);
}
