package fourpin.shop.edit;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.shop.yaml.FileKind;
import fourpin.shop.yaml.TreeReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Edits anywhere in any of the examples. */
class EditPropertiesTest {

  private static final int EDITS = 300;
  private static final int PILE = 30;
  private static final int PILES = 10;
  private static final List<String> WORDS =
      List.of(
          "31 1/2",
          "7' 2 1/4\"",
          "800 mm",
          "a: b",
          "it's",
          "no",
          "null",
          "",
          "x, y",
          "ü \uD83D\uDE00",
          "- 4");

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("..", "examples"))) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void eachSingleValueIsReplacedAloneAndPutBack(Path example) {
    JobText job = read(example);
    for (Route route : routes(job.value(), Route.TOP)) {
      if (job.value(route).orElseThrow() instanceof Value.Text) {
        Edited.Done done = done(job, route, new Change.Put(Value.of("12 3/8")));
        assertThat(changed(job.text(), done.text().text())).as(route.text()).hasSizeLessThan(2);
        assertThat(done(done.text(), done.inverse()).text().text()).isEqualTo(job.text());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void eachKeyAndItemIsTakenAwayWithoutTouchingOthers(Path example) {
    JobText job = read(example);
    for (Route route : routes(job.value(), Route.TOP)) {
      Edited.Done done = done(job, route, new Change.Remove());
      assertThat(done.text().value()).isEqualTo(job.value().with(route, new Change.Remove()));
      assertThat(lost(job.text(), done.text().text())).as(route.text()).isEmpty();
      assertThat(done(done.text(), done.inverse()).text().value()).isEqualTo(job.value());
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void eachKeyIsCalledSomethingElseAloneAndBackAgain(Path example) {
    JobText job = read(example);
    for (Route route : routes(job.value(), Route.TOP)) {
      if (route.last() instanceof Route.Key) {
        Edited.Done done = done(job, route, new Change.Rename("it's, another"));
        assertThat(changed(job.text(), done.text().text())).as(route.text()).hasSize(1);
        assertThat(done(done.text(), done.inverse()).text().value()).isEqualTo(job.value());
      }
    }
  }

  /** Edits pile up: each must leave a text that the next can change. */
  @ParameterizedTest
  @MethodSource("examples")
  void anyEditsOneAfterAnotherMeanWhatTheySayAndCanBeUndone(Path example) {
    Random random = new Random(example.getFileName().toString().hashCode());
    for (int i = 0; i < PILES; i++) {
      pile(read(example), random);
    }
  }

  private static void pile(JobText first, Random random) {
    JobText job = first;
    List<Edit> back = new ArrayList<>();
    for (int i = 0; i < PILE; i++) {
      Edit edit = edit(job, random);
      Edited.Done done = done(job, edit);
      assertThat(done.text().value()).isEqualTo(job.value().with(edit.route(), edit.change()));
      assertThat(readable(done.text())).as("%s", edit).isTrue();
      back.add(done.inverse());
      job = done.text();
    }
    for (Edit edit : back.reversed()) {
      job = done(job, edit).text();
    }
    assertThat(job.value()).isEqualTo(first.value());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void editsOfDifferentValuesMayComeInEitherOrder(Path example) {
    Random random = new Random(example.getFileName().toString().hashCode());
    JobText job = read(example);
    List<Route> words =
        routes(job.value(), Route.TOP).stream()
            .filter(r -> job.value(r).orElseThrow() instanceof Value.Text)
            .toList();
    for (int i = 0; i < EDITS; i++) {
      Edit one = Edit.on(job, any(words, random), new Change.Put(word(random)));
      Edit two = Edit.on(job, any(words, random), new Change.Put(word(random)));
      if (!one.route().equals(two.route())) {
        assertThat(done(done(job, one).text(), two).text().text())
            .isEqualTo(done(done(job, two).text(), one).text().text());
      }
    }
  }

  private static Edit edit(JobText job, Random random) {
    // Large parts stay, so that there is always something to change.
    List<Route> all =
        routes(job.value(), Route.TOP).stream().filter(r -> r.steps().size() > 2).toList();
    if (all.isEmpty()) {
      return Edit.on(job, Route.of("key", "key"), new Change.Put(value(random)));
    }
    Route route = any(all, random);
    Value there = job.value(route).orElseThrow();
    int kind = random.nextInt(4);
    if (kind == 1 && there instanceof Value.Group) {
      Route key = route.to("key" + random.nextInt(3));
      return Edit.on(job, key, new Change.Put(value(random)));
    }
    if (kind == 2 && there instanceof Value.Items(var items)) {
      Route item = route.item(1 + random.nextInt(items.size() + 1), items.size());
      return Edit.on(job, item, new Change.Insert(value(random)));
    }
    return switch (kind) {
      case 0 -> Edit.on(job, route, new Change.Put(value(random)));
      case 3 -> Edit.on(job, route, new Change.Remove());
      default -> Edit.on(job, route, new Change.Put(word(random)));
    };
  }

  private static Value word(Random random) {
    return Value.of(any(WORDS, random));
  }

  private static Value value(Random random) {
    return switch (random.nextInt(5)) {
      case 0 -> Value.list(List.of(word(random), word(random)));
      case 1 -> Value.group(Map.of("a", word(random), "b c", value(random)));
      case 2 -> Value.list(List.of(Value.group(Map.of("width", value(random))), word(random)));
      default -> word(random);
    };
  }

  private static <T> T any(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  private static List<Route> routes(Value value, Route here) {
    List<Route> all = new ArrayList<>();
    switch (value) {
      case Value.Group(var entries) -> entries.forEach((key, v) -> with(all, here.to(key), v));
      case Value.Items(var items) -> {
        for (int i = 1; i <= items.size(); i++) {
          with(all, here.item(i, items.size()), items.get(i - 1));
        }
      }
      default -> {
        // a leaf
      }
    }
    return all;
  }

  private static void with(List<Route> all, Route route, Value value) {
    all.add(route);
    all.addAll(routes(value, route));
  }

  private static Edited.Done done(JobText job, Route route, Change change) {
    return done(job, Edit.on(job, route, change));
  }

  private static Edited.Done done(JobText job, Edit edit) {
    Edited edited = job.with(edit);
    assertThat(edited)
        .as("%s in%n%s", edit.route().text(), job.text())
        .isInstanceOf(Edited.Done.class);
    return (Edited.Done) edited;
  }

  /** Lines that are not in both, where the number of lines is the same. */
  private static List<String> changed(String before, String after) {
    List<String> old = before.lines().toList();
    List<String> now = after.lines().toList();
    assertThat(now).hasSameSizeAs(old);
    return IntStream.range(0, old.size())
        .filter(i -> !old.get(i).equals(now.get(i)))
        .mapToObj(old::get)
        .toList();
  }

  /** Comments on lines of their own that are gone, outside of what was taken away. */
  private static List<String> lost(String before, String after) {
    Set<String> now = new HashSet<>(Arrays.asList(after.split("\n")));
    return before.lines().filter(l -> l.startsWith("#")).filter(l -> !now.contains(l)).toList();
  }

  private static boolean readable(JobText job) {
    byte[] bytes = job.text().getBytes(StandardCharsets.UTF_8);
    return TreeReader.read(bytes, FileKind.JOB).root().isPresent();
  }

  private static JobText read(Path example) {
    try {
      return JobText.of(Files.readString(example));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
