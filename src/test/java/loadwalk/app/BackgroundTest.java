package loadwalk.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import loadwalk.view.DeskEvent;
import org.junit.jupiter.api.Test;

class BackgroundTest {
  private static final int WAIT_SECONDS = 60;

  private final BlockingQueue<DeskEvent> heard = new LinkedBlockingQueue<>();
  private final Background background = Background.threads(heard::add);

  private DeskEvent next() throws InterruptedException {
    DeskEvent event = heard.poll(WAIT_SECONDS, TimeUnit.SECONDS);
    assertNotNull(event, "nothing was heard");
    return event;
  }

  @Test
  void stop_endsWorkUnderWay_andNotWhatBeginsLater() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    List<DeskEvent> meanwhile =
        background.answering(
            "Reading.",
            task -> {
              task.tell("half");
              begun.countDown();
              while (!task.isStopped()) {
                Thread.onSpinWait();
              }
              return new DeskEvent.Told("stopped");
            });
    assertEquals(List.of(new DeskEvent.Told("Reading.")), meanwhile);
    begun.await();
    background.stop();
    assertEquals(new DeskEvent.Told("half"), next());
    assertEquals(new DeskEvent.Told("stopped"), next());
    background.answering("Again.", task -> new DeskEvent.Told("stopped: " + task.isStopped()));
    assertEquals(new DeskEvent.Told("stopped: false"), next());
  }
}
