package loadwalk.app.loop;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import loadwalk.view.ProgramEvent;

/** Does long work so that the event loop need not wait for it. */
public interface Background {

  /** What work in the background may tell and must ask. */
  interface Task {
    /** Tells how far the work has come. */
    void tell(String sentence);

    /** Tells whether the work is to end early. */
    boolean isStopped();
  }

  /** Does the work at once; used where nobody waits for a screen. */
  Background NONE =
      new Background() {
        @Override
        public List<ProgramEvent> answering(String meanwhile, Function<Task, ProgramEvent> work) {
          return List.of(work.apply(new Silent()));
        }

        @Override
        public void stop() {
          // Work done at once is over when anyone could stop it.
        }
      };

  /**
   * Begins the work; what it returns reaches the program now or later.
   *
   * @param meanwhile what is told while it lasts
   */
  List<ProgramEvent> answering(String meanwhile, Function<Task, ProgramEvent> work);

  /** Asks all work under way to end early. */
  void stop();

  /** Returns a background of one thread a piece of work, whose results go to the event loop. */
  static Background threads(Consumer<ProgramEvent> loop) {
    AtomicInteger stops = new AtomicInteger();
    return new Background() {
      @Override
      public List<ProgramEvent> answering(String meanwhile, Function<Task, ProgramEvent> work) {
        Task task = new Telling(loop, stops, stops.get());
        Thread thread = new Thread(() -> loop.accept(work.apply(task)), "background");
        thread.setDaemon(true);
        thread.start();
        return List.of(new ProgramEvent.Told(meanwhile));
      }

      @Override
      public void stop() {
        stops.incrementAndGet();
      }
    };
  }

  /** A task that nobody waits for. */
  record Silent() implements Task {
    @Override
    public void tell(String sentence) {
      // Work done at once has no progress worth telling.
    }

    @Override
    public boolean isStopped() {
      return false;
    }
  }

  /**
   * A task whose progress the event loop hears.
   *
   * @param loop the event loop
   * @param stops how often work was stopped
   * @param atStart how often it had been when this began
   */
  record Telling(Consumer<ProgramEvent> loop, AtomicInteger stops, int atStart) implements Task {
    @Override
    public void tell(String sentence) {
      loop.accept(new ProgramEvent.Told(sentence));
    }

    @Override
    public boolean isStopped() {
      return stops.get() != atStart;
    }
  }
}
