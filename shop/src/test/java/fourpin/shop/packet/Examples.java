package fourpin.shop.packet;

import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.shop.file.JobReader;
import fourpin.shop.file.Opened;
import fourpin.shop.file.ShopFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Examples as the tests of packets plan them. */
final class Examples {

  private Examples() {}

  /** With the shop that lies beside it, so that ways of boring have their guides. */
  static Plan plan(Path example) throws IOException {
    return switch (JobReader.read(Files.readAllBytes(example), new Beside(example))) {
      case JobReader.Outcome.Good(var job) -> Planner.plan(job);
      case JobReader.Outcome.Refused(var problems, var shop) ->
          throw new AssertionError(problems + " " + shop);
    };
  }

  /** Shop files as they lie beside a job. */
  private record Beside(Path job) implements ShopFiles {
    @Override
    public Optional<Opened> standard() {
      return Optional.of(STANDARD)
          .filter(name -> Files.exists(job.resolveSibling(name)))
          .map(this::named);
    }

    @Override
    public Opened named(String name) {
      return Opened.open(job.resolveSibling(name), "", "");
    }
  }
}
