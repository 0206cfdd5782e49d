package loadwalk.app.meter;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BiConsumer;
import loadwalk.app.loop.Clocks;
import loadwalk.bench.Connection;
import loadwalk.bench.Meter;
import loadwalk.meter.Act;
import loadwalk.meter.Dialogue;
import loadwalk.meter.Question;
import loadwalk.meter.Signal;

/**
 * The thread of one instrument: keeps its dialogue going and offers what it hears.
 *
 * <p>Nothing here ever waits for the reader of the news, and whoever closes it does not wait for
 * the thread: it ends by itself as soon as its port is closed under it.
 */
final class MeterLink implements Closeable {
  private static final int LONGEST_WAIT_MILLIS = 200;

  private final Connection.Line line;
  private final List<Meter> meters;
  private final Port.Maker ports;
  private final Clocks clocks;
  private final BiConsumer<Meter, Act.News> news;
  private final Hands hands = new Hands();
  private final Thread thread;
  private final ReentrantLock lock = new ReentrantLock();
  private final Condition closing = lock.newCondition();
  private volatile boolean over;
  private volatile Port port;
  private Dialogue dialogue;

  /**
   * Makes a link; {@link #start} sets it going.
   *
   * @param line where the instrument is
   * @param meters the meters of the bench that are read from it
   * @param ports what makes ports
   * @param clocks the clocks
   * @param news what hears of every reading and identity, on this link's thread
   */
  MeterLink(
      Connection.Line line,
      List<Meter> meters,
      Port.Maker ports,
      Clocks clocks,
      BiConsumer<Meter, Act.News> news) {
    this.line = line;
    this.meters = List.copyOf(meters);
    this.ports = ports;
    this.clocks = clocks;
    this.news = news;
    this.thread = new Thread(this::run, "meter-" + line.text());
    this.thread.setDaemon(true);
  }

  void start() {
    thread.start();
  }

  /** Tells whether the thread still runs. */
  boolean isAlive() {
    return thread.isAlive();
  }

  @Override
  public void close() {
    over = true;
    lock.lock();
    try {
      closing.signalAll();
    } finally {
      lock.unlock();
    }
    letGo();
  }

  private void run() {
    try {
      take(Dialogue.begin(meters.stream().map(Question::of).toList(), now()));
      while (!over) {
        listen(dialogue.wakeMillis() - now());
      }
    } finally {
      letGo();
    }
  }

  private long now() {
    return TimeUnit.NANOSECONDS.toMillis(clocks.monoNanos());
  }

  /** Listens for at most so long, and tells the dialogue what came, or that time went on. */
  private void listen(long millis) {
    if (millis <= 0) {
      take(dialogue.on(new Signal.Clock(now())));
      return;
    }
    int most = (int) Math.min(millis, LONGEST_WAIT_MILLIS);
    Port open = port;
    if (open == null) {
      rest(most);
      return;
    }
    try {
      String text = open.receive(most);
      if (!text.isEmpty()) {
        take(dialogue.on(new Signal.Received(text, now())));
      }
    } catch (IOException gone) {
      lost(gone);
    }
  }

  private void rest(int millis) {
    lock.lock();
    try {
      if (!over) {
        clocks.await(closing, millis);
      }
    } catch (InterruptedException e) {
      over = true;
    } finally {
      lock.unlock();
    }
  }

  private void lost(IOException why) {
    if (!over) {
      String said = why.getMessage() == null ? "the connection is gone" : why.getMessage();
      take(dialogue.on(new Signal.Lost(said, now())));
    }
  }

  private void take(Dialogue.Turn turn) {
    dialogue = turn.next();
    for (Act act : turn.acts()) {
      if (over) {
        return;
      }
      perform(act);
    }
  }

  private void perform(Act act) {
    try {
      act.by(hands);
    } catch (IOException gone) {
      lost(gone);
    }
  }

  /** Does what the dialogue wants done. */
  private final class Hands implements Act.Doer<IOException> {
    @Override
    public void open() throws IOException {
      MeterLink.this.open();
    }

    @Override
    public void send(String query) throws IOException {
      Port open = port;
      if (open == null) {
        throw new IOException("the connection was closed");
      }
      open.send(query + "\n");
    }

    @Override
    public void close() {
      letGo();
    }

    @Override
    public void tell(Act.News told) {
      told.about(meters).forEach(meter -> news.accept(meter, told));
    }
  }

  private void open() throws IOException {
    Port fresh = ports.make(line);
    port = fresh;
    if (over) {
      letGo();
      return;
    }
    fresh.open();
    take(dialogue.on(new Signal.Opened(now())));
  }

  private void letGo() {
    Port old = port;
    port = null;
    try {
      if (old != null) {
        old.close();
      }
    } catch (IOException gone) {
      // A line that cannot be closed is gone already; the next one is opened anew.
    }
  }
}
