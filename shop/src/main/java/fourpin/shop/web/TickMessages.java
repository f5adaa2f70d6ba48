package fourpin.shop.web;

import fourpin.shop.store.HeldTick;
import fourpin.shop.store.Tick;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What bench pages and the server tell each other, as docs/bench-page.md describes it. */
final class TickMessages {

  private static final int DEEPEST = 4;
  private static final int MOST_TICKS = 1_000;
  private static final int MOST_HOLES = 100_000;
  private static final String STEP = "\\d{1,5}";
  private static final String PLAN = "[0-9a-f]{32}";

  /** The year 5138; a clock beyond it is none. */
  private static final long LATEST = 100_000_000_000_000L;

  private static final JsonMapper JSON =
      JsonMapper.builder(
              JsonFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .build();

  private TickMessages() {}

  /**
   * What a device says.
   *
   * @param sent when, in milliseconds since 1970 by its own clock
   */
  record Said(String plan, long sent, List<SaidTick> ticks) {

    private boolean isSound() {
      return isPlan(plan)
          && isMoment(sent)
          && ticks.size() <= MOST_TICKS
          && ticks.stream().noneMatch(Objects::isNull)
          && ticks.stream().allMatch(SaidTick::isSound);
    }

    Instant sentAt() {
      return Instant.ofEpochMilli(sent);
    }

    List<Tick> all() {
      return ticks.stream().map(SaidTick::tick).toList();
    }
  }

  record SaidTick(String step, String state, int counted, long said) {

    private boolean isSound() {
      return step.matches(STEP)
          && state.matches("open|done")
          && counted >= 0
          && counted <= MOST_HOLES
          && isMoment(said);
    }

    private Tick tick() {
      return new Tick(
          step,
          Tick.State.valueOf(state.toUpperCase(Locale.ROOT)),
          counted,
          Instant.ofEpochMilli(said));
    }
  }

  private record Held(String token, String newest, long now, List<HeldOne> ticks) {}

  private record HeldOne(String step, String state, int counted, long at, String device) {
    static HeldOne of(HeldTick tick) {
      return new HeldOne(
          tick.step(),
          tick.state().name().toLowerCase(Locale.ROOT),
          tick.counted(),
          tick.at().toEpochMilli(),
          tick.device());
    }
  }

  private static boolean isMoment(long millis) {
    return millis >= 0 && millis < LATEST;
  }

  static boolean isPlan(String text) {
    return text.matches(PLAN);
  }

  /** Nothing if it is not what a bench page says. */
  static Optional<Said> read(String body) {
    try {
      return Optional.ofNullable(JSON.readValue(body, Said.class)).filter(Said::isSound);
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  /**
   * @param token for the next that the page says
   * @param newest digest of the steps that the job has by now
   * @param now by the clock that the ticks were held by
   */
  static String write(String token, String newest, Instant now, List<HeldTick> held) {
    List<HeldOne> ticks = held.stream().map(HeldOne::of).toList();
    return JSON.writeValueAsString(new Held(token, newest, now.toEpochMilli(), ticks));
  }
}
