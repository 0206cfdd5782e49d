package loadwalk.disk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The records that a program wrote into a journal, and which of them it had called kept. */
final class JournalLines {
  private final List<String> there;
  private final Map<Integer, Set<String>> ever = new HashMap<>();
  private List<String> kept;
  private boolean failed;

  /** Begins behind the records that were there before. */
  JournalLines(List<String> before) {
    this.there = new ArrayList<>(before);
    this.kept = List.copyOf(before);
  }

  void take(Call call) {
    switch (call.kind()) {
      case WRITE, FORCE, RENAME -> {
        failed |= !call.done();
        String text = new String(call.bytes(), UTF_8).strip();
        if (call.done() && call.path().contains(".jsonl") && text.startsWith("{\"seq\":")) {
          ever.computeIfAbsent(there.size(), n -> new HashSet<>()).add(text);
          there.add(text);
        }
      }
      case CUT, REMOVE -> takenBack(call);
      case SAY -> {
        // One thread does it all: what is said behind a record is said because it is kept.
        kept = failed ? kept : List.copyOf(there);
      }
      default -> {}
    }
  }

  /** What failed is cut off, or its draft removed, before anything else is written. */
  private void takenBack(Call call) {
    failed |= !call.done();
    if (call.done() && call.path().contains(".jsonl")) {
      while (bytes() > call.offset()) {
        there.remove(there.size() - 1);
      }
      failed = false;
    }
  }

  private long bytes() {
    return there.stream().mapToLong(line -> line.getBytes(UTF_8).length + 1).sum();
  }

  /** Returns the records called kept so far. */
  List<String> kept() {
    return kept;
  }

  /** Tells whether a line may stand as the record of an index, from 0, that was not called kept. */
  boolean mayStand(int index, String line) {
    return ever.getOrDefault(index, Set.of()).contains(line);
  }
}
