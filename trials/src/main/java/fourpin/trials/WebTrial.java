package fourpin.trials;

import fourpin.shop.store.DataPlace;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Edit;
import fourpin.shop.store.sql.SqlStore;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** How soon pages follow changes. */
@Command(
    name = "web",
    mixinStandardHelpOptions = true,
    description =
        "Changes the example on its page over and over: moves shelves, changes width and wood.")
final class WebTrial implements Callable<Integer> {

  /** No faster than the server's limit of requests lets one visitor go on. */
  private static final double APART_MS = 105;

  private static final double NANOS_PER_MS = 1e6;
  private static final double NANOS_PER_SECOND = 1e9;
  private static final long KIB_PER_MIB = 1024;
  private static final int LOOKS = 30;
  private static final double ALMOST_ALL = 0.95;
  private static final double CHANGE_MS = 100;
  private static final double FIRST_PAGE_S = 2;

  @Option(
      names = "--changes",
      defaultValue = "300",
      description = "Changes that count (default: ${DEFAULT-VALUE}).")
  private int changes;

  @Option(
      names = "--warm",
      defaultValue = "200",
      description = "Changes before, till the server is warm (default: ${DEFAULT-VALUE}).")
  private int warm;

  private static final String HEAD =
      """
      # The pages, in time

      Written by `trials/run web`, a full run each time: the launcher starts a server on a new file with the example and its
      shop, twice, each time till the first page is there; then fields of the example are changed over and over, one request
      after the other, over loopback. The page of the example is asked for at once, without the list of jobs, while which a
      server would plan it. The aims are for two processors that nothing else keeps busy: the load stands in the first line.

      """;

  /** What is printed is what the page tells. */
  private final StringBuilder told = new StringBuilder();

  @Override
  public Integer call() throws IOException, InterruptedException {
    tell("%s%n", Machine.inWords());
    DataPlace.InFile data = StoreTrial.newFile();
    String job = "/jobs/" + kept(data).value();
    Path launcher = Trials.root().resolve("fourpin");
    served(launcher, data.file(), "/").close();
    try (ServerProcess server = served(launcher, data.file(), job)) {
      memory("after the first page", server);
      changes(new Changer(server.at(job)), server);
      memory("after the changes", server);
    }
    Files.writeString(
        Trials.root().resolve("docs/page-trials.md"), HEAD + "```text\n" + told + "```\n");
    return 0;
  }

  private void tell(String format, Object... values) {
    String text = String.format(Locale.ROOT, format, values);
    System.out.print(text);
    told.append(text);
  }

  /** The example with its shop, as a shop keeps it. */
  private static DocumentId kept(DataPlace data) throws IOException {
    try (SqlStore store = SqlStore.open(data, InstantSource.system())) {
      store.documents().createShop(edit("shop.yaml"));
      return store.documents().create(edit("reading-room.yaml")).document();
    }
  }

  private static Edit edit(String example) throws IOException {
    String text = Files.readString(Trials.root().resolve("examples").resolve(example));
    return new Edit("Example", text, "trial", "begun");
  }

  private ServerProcess served(Path launcher, Path data, String page)
      throws IOException, InterruptedException {
    long begun = System.nanoTime();
    ServerProcess server = new ServerProcess(launcher, data);
    double up = (System.nanoTime() - begun) / NANOS_PER_SECOND;
    HttpClient.newHttpClient().send(get(server.at(page)), HttpResponse.BodyHandlers.discarding());
    double shown = (System.nanoTime() - begun) / NANOS_PER_SECOND;
    String what = page.equals("/") ? "the list of jobs" : "the page of the example";
    tell("From the start: up after %.2f s, %s after %.2f s%n", up, what, shown);
    aim(what + " under %.0f s", FIRST_PAGE_S, shown);
    return server;
  }

  private static HttpRequest get(URI page) {
    return HttpRequest.newBuilder(page).build();
  }

  private void memory(String when, ServerProcess server) throws IOException {
    OptionalLong resident = server.residentKibibytes();
    tell(
        "Memory %s: %s MiB resident%n",
        when, resident.isPresent() ? Long.toString(resident.getAsLong() / KIB_PER_MIB) : "?");
  }

  private void changes(Changer changer, ServerProcess server)
      throws IOException, InterruptedException {
    for (int i = 0; i < warm; i++) {
      paced(changer, i);
    }
    List<Changer.Took> looked = new ArrayList<>();
    for (int i = 0; i < LOOKS; i++) {
      looked.add(changer.look());
    }
    Optional<Duration> before = server.processorTime();
    List<Changer.Took> changed = new ArrayList<>();
    for (int i = 0; i < changes; i++) {
      changed.add(paced(changer, warm + i));
    }
    Optional<Duration> after = server.processorTime();
    tell(looked, changed);
    before.ifPresent(b -> after.ifPresent(a -> processor(a.minus(b))));
  }

  /** On a busy machine this is what to read: it hardly depends on what else runs. */
  private void processor(Duration taken) {
    tell(
        "Processor time of the server, compiler and collector included: %.1f ms a change%n",
        (double) taken.toMillis() / changes);
  }

  private void tell(List<Changer.Took> looked, List<Changer.Took> changed) {
    tell(
        "%nMilliseconds, %d changes after %d that count for nothing; unchanged page: %d times%n"
            + "  %-30s %8s %8s %8s%n",
        changes, warm, looked.size(), "", "median", "95 %", "most");
    Sample page =
        line("unchanged page, at the server", looked.stream().map(Changer.Took::atServer));
    line("unchanged page, here", looked.stream().map(Changer.Took::here));
    Sample change = line("change, at the server", changed.stream().map(Changer.Took::atServer));
    line("change, here", changed.stream().map(Changer.Took::here));
    tell(
        "A change takes %.1f times as long as the unchanged page (medians at the server).%n",
        change.median() / page.median());
    aim("95 %% of changes under %.0f ms at the server", CHANGE_MS, change.within(ALMOST_ALL));
  }

  /**
   * @param words with a place for the most that is aimed at
   */
  private void aim(String words, double most, double measured) {
    String met = measured < most ? "met" : "missed";
    tell("Aim " + words + ": " + met + "%n", most);
  }

  private static Changer.Took paced(Changer changer, int number)
      throws IOException, InterruptedException {
    long begun = System.nanoTime();
    Changer.Took took = changer.change(number);
    double left = APART_MS - (System.nanoTime() - begun) / NANOS_PER_MS;
    Thread.sleep((long) Math.max(0, left));
    return took;
  }

  private Sample line(String what, Stream<Double> values) {
    Sample sample = new Sample(values.toList());
    tell(
        "  %-30s %8.1f %8.1f %8.1f%n",
        what, sample.median(), sample.within(ALMOST_ALL), sample.most());
    return sample;
  }
}
