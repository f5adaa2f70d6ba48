package fourpin.casework;

import static fourpin.job.SampleJobs.in;
import static org.assertj.core.api.Assertions.assertThat;

import fourpin.casework.Finding.Severity;
import fourpin.job.CaseDraft;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.JobDraft;
import fourpin.job.Room;
import fourpin.job.SampleJobs;
import fourpin.job.Sizes;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whether cases fit between two walls, with the wood of their stiles that is to be scribed. */
class RoomChecksTest {

  private static List<Finding> found(String width, String room, FaceFrame.Scribe scribe) {
    CaseDraft draft = new CaseDraft();
    draft.sizes = new Sizes(Sizes.Measured.OUTSIDE, in(width), in("84"), in("12"));
    draft.faceFrame =
        Optional.of(
            new FaceFrame("oak", in("2"), Optional.empty(), in("2"), in("2"), in("0"), scribe));
    Job job = SampleJobs.job(draft.order());
    Job inRoom =
        JobDraft.changed(
            job,
            d ->
                d.room =
                    Optional.of(
                        new Room(Optional.of(in(room)), Optional.empty(), Optional.empty())));
    return CaseworkBuilder.build(inRoom).findings();
  }

  /** Each scribed stile is 3/4 in wider: 119 is 120 1/2 with both. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "119   | 120 | BOTH | NOTE  | 1/2 in comes off, 1/4 in at each scribed stile",
        "119   | 119 | BOTH | NOTE  | 1 1/2 in comes off, 3/4 in at each scribed stile",
        "119.5 | 120 | LEFT | NOTE  | 1/4 in comes off at its scribed stile",
        "119   | 118 | BOTH | ERROR | 119 in wide, all that is to be scribed taken off",
        "119   | 118 | NONE | ERROR | the cases side by side are 119 in wide, the room 118 in",
        "119   | 120 1/2 | BOTH | DOUBT | : nothing is left to trim",
        "119   | 121 | BOTH | DOUBT | they end 1/2 in short of the walls",
      })
  void should_count_what_is_scribed_off(
      String width, String room, FaceFrame.Scribe scribe, Severity severity, String what) {
    assertThat(found(width, room, scribe))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(severity);
              assertThat(f.what()).contains(what);
            });
  }

  @ParameterizedTest
  @CsvSource({"119,119,NONE", "110,120,LEFT"})
  void should_be_content_with_room(String width, String room, FaceFrame.Scribe scribe) {
    assertThat(found(width, room, scribe)).isEmpty();
  }
}
