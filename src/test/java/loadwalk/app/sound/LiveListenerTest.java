package loadwalk.app.sound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import loadwalk.app.Ramps;
import loadwalk.view.state.Live;
import org.junit.jupiter.api.Test;

/** What is held of a live input, sound fed to it second by second. */
class LiveListenerTest {
  private static final double TONE_HERTZ = 40;
  private static final double LIMIT_PERCENT = 1;

  private static LiveListener listening(FedInput input, int channel) {
    LiveListener listener = new LiveListener(input, channel, TONE_HERTZ, LIMIT_PERCENT, () -> {});
    listener.start();
    return listener;
  }

  private static Live shown(LiveListener listener) {
    return listener.news().orElseThrow();
  }

  @Test
  void secondChannel_isHeard_whereItIsAskedFor() throws Exception {
    FedInput input = new FedInput(2);
    LiveListener listener = listening(input, 2);
    input.feed(new double[Ramps.RATE], Ramps.steady(0.5, 1));
    double expected = 0.5 * (1 - 0.075 * 0.25) / Math.sqrt(2);
    assertEquals(expected, shown(listener).reading().orElseThrow().rms(), 0.01);
  }

  @Test
  void toneAboveTheLimitFromTheBeginning_isNotHeld() throws Exception {
    FedInput input = new FedInput(1);
    LiveListener listener = listening(input, 1);
    input.feed(Ramps.steady(0.9, 2));
    Live live = shown(listener);
    assertTrue(live.reading().orElseThrow().thdPercent().orElseThrow() > LIMIT_PERCENT);
    assertEquals(Live.State.HEARING, live.state());
    input.feed(Ramps.steady(0.4, 2));
    input.feed(Ramps.steady(0.9, 2));
    assertEquals(Live.State.HELD, shown(listener).state());
  }

  @Test
  void wave_isHeldWithMoreThanHalfASecondBehindTheLimit() throws Exception {
    FedInput input = new FedInput(1);
    LiveListener listener = listening(input, 1);
    input.feed(Ramps.steady(0.4, 2));
    assertEquals(Live.State.HEARING, shown(listener).state());
    Live live = Live.OPENING;
    double[] block = Ramps.steady(0.9, 0.1);
    int loud = 0;
    while (live.state() != Live.State.HELD && loud < 40) {
      input.feed(block);
      loud++;
      live = listener.news().orElse(live);
    }
    assertEquals(Live.State.HELD, live.state());
    assertEquals(Optional.empty(), listener.held(), "its end has not been heard");
    for (int i = 0; i < 7; i++) {
      input.feed(block);
    }
    int samples = listener.held().orElseThrow().samples().length;
    assertEquals(2 + 0.1 * loud + 0.6, (double) samples / Ramps.RATE, 0.06);
  }
}
