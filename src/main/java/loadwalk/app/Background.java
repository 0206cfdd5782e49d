package loadwalk.app;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import loadwalk.view.DeskEvent;

/** Does long work so that the event loop need not wait for it. */
interface Background {

  /** Does the work at once; used where nobody waits for a screen. */
  Background NONE =
      new Background() {
        @Override
        public List<DeskEvent> answering(String meanwhile, Supplier<DeskEvent> work) {
          return List.of(work.get());
        }

        @Override
        public void tell(String sentence) {
          // Work done at once has no progress worth telling.
        }
      };

  /**
   * Begins the work; what it returns reaches the desk now or later.
   *
   * @param meanwhile what is told while it lasts
   */
  List<DeskEvent> answering(String meanwhile, Supplier<DeskEvent> work);

  /** Tells how far the work has come. */
  void tell(String sentence);

  /** Returns a background of one thread a piece of work, whose results go to the event loop. */
  static Background threads(Consumer<DeskEvent> loop) {
    return new Background() {
      @Override
      public List<DeskEvent> answering(String meanwhile, Supplier<DeskEvent> work) {
        Thread thread = new Thread(() -> loop.accept(work.get()), "background");
        thread.setDaemon(true);
        thread.start();
        return List.of(new DeskEvent.Told(meanwhile));
      }

      @Override
      public void tell(String sentence) {
        loop.accept(new DeskEvent.Told(sentence));
      }
    };
  }
}
