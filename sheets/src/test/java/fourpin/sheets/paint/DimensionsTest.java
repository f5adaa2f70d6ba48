package fourpin.sheets.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DimensionsTest {

  private static final double HALF_LINE = 0.2;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void numbersNeverMeetEachOtherOrAnothersLine(long seed) {
    Random random = new Random(seed);
    Side side = Side.values()[random.nextInt(4)];
    List<Dimensions.Span> spans =
        IntStream.range(0, 1 + random.nextInt(14)).mapToObj(i -> span(random)).toList();
    List<Mark> marks = Dimensions.beside(side, random.nextDouble(-50, 50), spans);
    List<Box> numbers = boxes(marks);
    assertThat(numbers).hasSize(spans.size());
    assertApart(numbers);
    for (Mark.Path line : dimensionLines(marks, side)) {
      long crossed = numbers.stream().filter(number -> number.overlaps(core(line))).count();
      assertThat(crossed).as("numbers on one dimension line: only its own").isLessThanOrEqualTo(1);
    }
  }

  private static Dimensions.Span span(Random random) {
    double from = random.nextInt(0, 160);
    double length = random.nextBoolean() ? random.nextDouble(0.3, 8) : random.nextDouble(8, 160);
    return new Dimensions.Span(from, from + length, Integer.toString(random.nextInt(1, 10_000)));
  }

  private static void assertApart(List<Box> boxes) {
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        assertThat(boxes.get(i).overlaps(boxes.get(j)))
            .as("%s and %s", boxes.get(i), boxes.get(j))
            .isFalse();
      }
    }
  }

  private static List<Box> boxes(List<Mark> marks) {
    return Mark.flattened(marks).stream()
        .filter(Mark.Text.class::isInstance)
        .map(Mark::extent)
        .toList();
  }

  /** Lines along the side, each one dimension's. */
  private static List<Mark.Path> dimensionLines(List<Mark> marks, Side side) {
    List<Mark.Path> lines = new ArrayList<>();
    for (Mark mark : marks) {
      if (mark instanceof Mark.Path path && path.pen() == Pen.DIMENSION) {
        Box box = Box.round(path.points());
        if (side.upright() ? box.width() < 1e-9 : box.height() < 1e-9) {
          lines.add(path);
        }
      }
    }
    return lines;
  }

  private static Box core(Mark.Path line) {
    return Box.round(line.points()).grown(HALF_LINE);
  }

  @Test
  void aShortDimensionHasItsNumberBesideIt() {
    Mark.Text text =
        text(Dimensions.beside(Side.BELOW, 0, List.of(new Dimensions.Span(10, 11, "3/4"))));
    assertThat(text.extent().left()).isGreaterThan(11);
    assertThat(text.lettering().words()).isEqualTo("¾");
  }

  @Test
  void aLongDimensionHasItsNumberInTheMiddle() {
    Mark.Text text =
        text(Dimensions.beside(Side.LEFT, 0, List.of(new Dimensions.Span(10, 110, "1000"))));
    assertThat(text.at().y()).isEqualTo(60);
    assertThat(text.at().x()).isNegative();
  }

  @Test
  void whatIsAllOnOneLineSharesItAndTheWholeLiesOutside() {
    List<Mark> marks =
        Dimensions.beside(
            Side.BELOW,
            0,
            List.of(
                new Dimensions.Span(0, 90, "900"),
                new Dimensions.Span(0, 40, "400"),
                new Dimensions.Span(40, 90, "500")));
    List<Mark.Text> texts =
        marks.stream().filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast).toList();
    assertThat(texts).extracting(t -> t.lettering().words()).containsExactly("400", "500", "900");
    assertThat(texts.get(0).at().y())
        .isEqualTo(texts.get(1).at().y())
        .isGreaterThan(texts.get(2).at().y());
  }

  @Test
  void aDimensionOfNothingIsRefused() {
    assertThatThrownBy(() -> new Dimensions.Span(4, 4, "0")).hasMessageContaining("from < to");
  }

  private static Mark.Text text(List<Mark> marks) {
    return marks.stream()
        .flatMap(m -> m instanceof Mark.Text t ? Stream.of(t) : Stream.empty())
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void runningNumbersNeverMeet(long seed) {
    Random random = new Random(seed);
    Side side = Side.values()[random.nextInt(4)];
    List<RunningDimensions.Station> stations =
        random
            .doubles(random.nextInt(1, 60), 1, 150)
            .sorted()
            .mapToObj(d -> new RunningDimensions.Station(d, Integer.toString((int) (d * 10))))
            .toList();
    List<Box> numbers = boxes(RunningDimensions.beside(side, 0, 0, stations));
    assertThat(numbers).hasSize(stations.size() + 1);
    assertApart(numbers);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void labelsNeverMeetAndKeepOffWhatIsReserved(long seed) {
    Random random = new Random(seed);
    Labels labels = new Labels();
    Box reserved = new Box(20, 20, 40, 30);
    labels.reserve(reserved);
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < 25; i++) {
      Point point = new Point(random.nextDouble(0, 60), random.nextDouble(0, 60));
      Lettering lettering = Lettering.of("P" + random.nextInt(1000), Typeface.REGULAR, 2.5);
      marks.addAll(i % 2 == 0 ? labels.on(point, lettering) : labels.near(point, lettering));
    }
    List<Box> boxes = boxes(marks);
    assertThat(boxes).hasSize(25);
    assertApart(boxes);
    assertThat(boxes).noneMatch(reserved::overlaps);
  }
}
