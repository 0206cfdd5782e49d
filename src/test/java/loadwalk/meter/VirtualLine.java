package loadwalk.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeSet;

/** A dialogue with a simulated instrument in time that is only counted. */
final class VirtualLine {
  private record Due(long atMillis, long order, int generation, String text, boolean cuts) {}

  /** What was told, and when, ms. */
  record Told(int question, MeterReading reading, long atMillis) {}

  private final SimulatedInstrument instrument;
  private final PriorityQueue<Due> due =
      new PriorityQueue<>(Comparator.comparingLong(Due::atMillis).thenComparingLong(Due::order));
  final Map<Dialogue.Phase, Long> phases = new EnumMap<>(Dialogue.Phase.class);
  final Set<String> sent = new TreeSet<>();
  final List<Told> heard = new ArrayList<>();
  private Dialogue dialogue;
  private int generation;
  private long order;
  int opened;
  int closed;
  int mostDue;
  long now;

  VirtualLine(SimulatedInstrument instrument, List<Question> questions) {
    this.instrument = instrument;
    take(Dialogue.begin(questions, 0));
  }

  Dialogue dialogue() {
    return dialogue;
  }

  /** Runs until a moment, and forgets what was heard before. */
  void runTo(long end) {
    heard.clear();
    while (true) {
      long wake = Math.max(now, dialogue.wakeMillis());
      long next = due.isEmpty() ? wake : Math.min(wake, due.peek().atMillis());
      if (next > end) {
        now = end;
        return;
      }
      now = next;
      if (!due.isEmpty() && due.peek().atMillis() <= now) {
        deliver(due.poll());
      } else {
        take(dialogue.on(new Signal.Clock(now)));
      }
    }
  }

  private void deliver(Due piece) {
    if (piece.generation() != generation) {
      return;
    }
    take(dialogue.on(new Signal.Received(piece.text(), now)));
    if (piece.cuts() && piece.generation() == generation) {
      take(dialogue.on(new Signal.Lost("the cable was pulled", now)));
    }
  }

  private void take(Dialogue.Turn turn) {
    dialogue = turn.next();
    phases.merge(dialogue.phase(), 1L, Long::sum);
    for (Act act : turn.acts()) {
      perform(act);
    }
  }

  private void perform(Act act) {
    if (act instanceof Act.Open) {
      opened++;
      generation++;
      due.clear();
      take(dialogue.on(new Signal.Opened(now)));
    } else if (act instanceof Act.Close) {
      closed++;
      generation++;
    } else if (act instanceof Act.Heard reading) {
      heard.add(new Told(reading.question(), reading.reading(), now));
    } else if (act instanceof Act.Send send) {
      sent.add(send.query());
      long at = now;
      for (SimulatedInstrument.Delivery piece :
          instrument.hear(send.query(), Connections.PATIENCE)) {
        at += piece.delayMillis();
        due.add(new Due(at, order++, generation, piece.text(), piece.cuts()));
      }
      mostDue = Math.max(mostDue, due.size());
    }
  }
}
