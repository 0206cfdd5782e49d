package loadwalk.app.loop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import loadwalk.view.ProgramEvent;
import org.junit.jupiter.api.Test;

class BackgroundTest {
  private static final int WAIT_SECONDS = 60;

  private final BlockingQueue<ProgramEvent> heard = new LinkedBlockingQueue<>();
  private final Background background = Background.threads(heard::add);

  private ProgramEvent next() throws InterruptedException {
    ProgramEvent event = heard.poll(WAIT_SECONDS, TimeUnit.SECONDS);
    assertNotNull(event, "nothing was heard");
    return event;
  }

  @Test
  void stop_endsWorkUnderWay_andNotWhatBeginsLater() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    List<ProgramEvent> meanwhile =
        background.answering(
            "Reading.",
            task -> {
              task.tell("half");
              begun.countDown();
              while (!task.isStopped()) {
                Thread.onSpinWait();
              }
              return new ProgramEvent.Told("stopped");
            });
    assertEquals(List.of(new ProgramEvent.Told("Reading.")), meanwhile);
    begun.await();
    background.stop();
    assertEquals(new ProgramEvent.Told("half"), next());
    assertEquals(new ProgramEvent.Told("stopped"), next());
    background.answering("Again.", task -> new ProgramEvent.Told("stopped: " + task.isStopped()));
    assertEquals(new ProgramEvent.Told("stopped: false"), next());
  }
}
