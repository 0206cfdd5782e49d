package loadwalk.app.sound;

import java.io.IOException;
import java.util.Optional;
import loadwalk.app.store.DiskFaults;
import loadwalk.text.Sentence;
import loadwalk.view.state.Live;
import loadwalk.wave.CaptureException;
import loadwalk.wave.analysis.LiveMeter;
import loadwalk.wave.analysis.LiveReading;

/**
 * Listens to a sound input on a thread of its own, keeps the last seconds, and holds them when THD
 * reaches the limit. Nobody else ever waits for the device.
 */
final class LiveListener {
  private static final double KEPT_SECONDS = 12;

  /** What follows the limit is kept too, so that the curve through it has two sides. */
  private static final double TAIL_SECONDS = 0.6;

  private static final int BLOCKS_A_SECOND = 20;

  private final LiveInput input;
  private final int channel;
  private final double hertz;
  private final double limitPercent;
  private final Runnable nudge;
  private volatile boolean over;
  private Live live = Live.OPENING;
  private Optional<Live> ended = Optional.empty();
  private boolean changed = true;
  private boolean armed;
  private float[] ring = new float[0];
  private long written;
  private long holdAt = Long.MAX_VALUE;
  private int rate;

  /** What was held: the last seconds, oldest first. */
  record Held(float[] samples, int samplesPerSecond) {}

  /**
   * Makes a listener; {@link #start} sets it going.
   *
   * @param channel counted from 1; an input with fewer gives its last
   * @param hertz the tone of the sequence
   * @param limitPercent the THD at which it holds by itself
   * @param nudge what is run, on the listener's thread, when there is something new
   */
  LiveListener(LiveInput input, int channel, double hertz, double limitPercent, Runnable nudge) {
    this.input = input;
    this.channel = channel;
    this.hertz = hertz;
    this.limitPercent = limitPercent;
    this.nudge = nudge;
  }

  void start() {
    Thread thread = new Thread(this::listen, "listener");
    thread.setDaemon(true);
    thread.start();
  }

  private void listen() {
    try (LiveInput.Opened source = input.open()) {
      LiveMeter meter = new LiveMeter(source.samplesPerSecond(), hertz, source.step());
      begin(source.samplesPerSecond());
      double[][] block = new double[source.channels()][rate / BLOCKS_A_SECOND];
      double[] samples = block[Math.min(channel, block.length) - 1];
      int read = source.read(block);
      while (!over && read >= 0) {
        keep(samples, read);
        meter.accept(samples, read).ifPresent(this::show);
        read = source.read(block);
      }
      if (!over) {
        end(Live.none("The sound input stopped."));
      }
    } catch (CaptureException none) {
      end(Live.none(none.getMessage()));
    } catch (IOException broken) {
      end(Live.none(Sentence.of("The sound input failed: {}.", DiskFaults.reason(broken))));
    }
  }

  private synchronized void begin(double samplesPerSecond) {
    rate = (int) Math.round(samplesPerSecond);
    ring = new float[(int) (KEPT_SECONDS * rate)];
  }

  private synchronized void keep(double[] samples, int count) {
    for (int i = 0; i < count && written < holdAt; i++) {
      ring[(int) (written % ring.length)] = (float) samples[i];
      written++;
    }
  }

  private void show(LiveReading reading) {
    synchronized (this) {
      if (live.state() == Live.State.HELD) {
        return;
      }
      double thd = reading.thdPercent().orElse(0);
      boolean reached = armed && thd >= limitPercent;
      armed |= reading.thdPercent().isPresent() && thd < limitPercent;
      live = new Live(Live.State.HEARING, Optional.empty(), Optional.of(reading));
      changed = true;
      if (reached) {
        hold();
      }
    }
    nudge.run();
  }

  /** What is held outlasts the input: the end is told once the hold is let go. */
  private void end(Live how) {
    synchronized (this) {
      ended = Optional.of(how);
      if (live.state() == Live.State.HELD) {
        holdAt = Math.min(holdAt, written);
        return;
      }
      live = how;
      changed = true;
    }
    nudge.run();
  }

  /** Holds what is shown now, where something is. */
  synchronized void hold() {
    if (live.state() == Live.State.HEARING) {
      live = new Live(Live.State.HELD, Optional.empty(), live.reading());
      changed = true;
      holdAt = written + (long) (TAIL_SECONDS * rate);
    }
  }

  /** Goes on after a hold; it holds by itself again once THD has been below the limit. */
  synchronized void goOn() {
    if (live.state() == Live.State.HELD) {
      live = ended.orElse(new Live(Live.State.HEARING, Optional.empty(), live.reading()));
      changed = true;
      armed = false;
      written = 0;
      holdAt = Long.MAX_VALUE;
    }
  }

  /** Returns what is held, once all of it was heard. */
  synchronized Optional<Held> held() {
    if (live.state() != Live.State.HELD || written < holdAt) {
      return Optional.empty();
    }
    int count = (int) Math.min(written, ring.length);
    float[] samples = new float[count];
    for (int i = 0; i < count; i++) {
      samples[i] = ring[(int) ((written - count + i) % ring.length)];
    }
    return Optional.of(new Held(samples, rate));
  }

  /** Returns what is shown, once for every change. */
  synchronized Optional<Live> news() {
    if (!changed) {
      return Optional.empty();
    }
    changed = false;
    return Optional.of(live);
  }

  /** Lets the input go; its thread closes it as soon as the device answers. */
  void close() {
    over = true;
  }
}
