package loadwalk.report.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loadwalk.journal.Soundness;
import loadwalk.report.ledger.LedgerBuilder.Taken;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;

/**
 * Finds the journals that are copies of one walk, so that a walk counts once.
 *
 * <p>Journals whose opening record is the same, to the byte and with its time, hold one walk. Where
 * one goes on from where another ends, the one that goes furthest counts. Where two of them differ,
 * neither is a copy, and both count.
 *
 * @param kept the journals that count, in their order
 * @param counted the journal that counts, by the name of each copy of it
 * @param notes what a reader of the ledger is to know of copies and other names
 */
public record Copies(List<Taken> kept, Map<String, String> counted, List<String> notes) {
  private static final byte LINE_FEED = '\n';

  /** Copies the collections. */
  public Copies {
    kept = List.copyOf(kept);
    counted = Collections.unmodifiableMap(new LinkedHashMap<>(counted));
    notes = List.copyOf(notes);
  }

  /** Reads the bytes of a journal once more. */
  public interface Bytes {
    /** Returns the bytes; none where they cannot be read any more. */
    byte[] of(String journal);
  }

  /** Finds the copies among journals. */
  static Copies among(List<Taken> journals, Bytes bytes) {
    Map<String, List<Taken>> walks = new LinkedHashMap<>();
    for (Taken journal : journals) {
      walks.computeIfAbsent(journal.kept().opening(), o -> new ArrayList<>()).add(journal);
    }
    Search search = new Search(bytes);
    walks.values().forEach(search::look);
    List<Taken> kept = new ArrayList<>(journals);
    kept.removeIf(journal -> search.counted.containsKey(journal.journal()));
    kept.forEach(search::name);
    return new Copies(kept, search.counted, search.notes);
  }

  /** One pass over the walks. */
  private static final class Search {
    private final Bytes reader;
    private final Map<String, String> counted = new LinkedHashMap<>();
    private final List<String> notes = new ArrayList<>();

    Search(Bytes reader) {
      this.reader = reader;
    }

    void look(List<Taken> alike) {
      Map<String, List<Taken>> same = new LinkedHashMap<>();
      for (Taken journal : alike) {
        same.computeIfAbsent(journal.sum(), s -> new ArrayList<>()).add(journal);
      }
      List<Taken> different = new ArrayList<>();
      same.values().forEach(equal -> different.add(oneOf(equal)));
      if (different.size() > 1) {
        compare(different);
      }
    }

    /**
     * Of files with the same bytes the one counts whose end is as it was kept, and among those the
     * one whose name is that of the walk.
     */
    private Taken oneOf(List<Taken> equal) {
      Taken one =
          Collections.min(
              equal,
              Comparator.<Taken>comparingInt(j -> standing(j).ordinal())
                  .thenComparing(j -> !j.journal().equals(j.named()))
                  .thenComparing(Taken::journal));
      for (Taken other : equal) {
        if (other != one) {
          count(other, one);
          notes.add(
              Sentence.of("{} is a copy of {}; they count as one walk.", shown(other), shown(one)));
        }
      }
      return one;
    }

    /**
     * Takes the longest first: of what begins like it to the last byte, it is the whole. A damaged
     * one comes last, so that no sound one counts as part of it.
     */
    private void compare(List<Taken> different) {
      Map<Taken, byte[]> texts = new LinkedHashMap<>();
      different.forEach(journal -> texts.put(journal, reader.of(journal.journal())));
      List<Taken> longestFirst = new ArrayList<>(different);
      longestFirst.sort(
          Comparator.<Taken, Boolean>comparing(journal -> standing(journal).isFaulty())
              .thenComparingInt(journal -> -texts.get(journal).length)
              .thenComparing(Taken::journal));
      List<Taken> whole = new ArrayList<>();
      for (Taken journal : longestFirst) {
        byte[] text = texts.get(journal);
        int at = 0;
        while (at < whole.size() && alike(texts.get(whole.get(at)), text) < text.length) {
          at++;
        }
        if (at < whole.size()) {
          count(journal, whole.get(at));
          notes.add(partOf(journal, whole.get(at), records(text, text.length)));
        } else {
          if (at > 0) {
            notes.add(apart(whole.get(0), journal, texts));
          }
          whole.add(journal);
        }
      }
    }

    private static Soundness.Standing standing(Taken journal) {
      return journal.kept().entry().soundness().standing();
    }

    private static String partOf(Taken copy, Taken whole, int records) {
      return Sentence.of(
          "{} is a copy of {} up to record {}; {} goes on and is the one that counts.",
          shown(copy),
          shown(whole),
          records,
          shown(whole));
    }

    private static String apart(Taken one, Taken other, Map<Taken, byte[]> texts) {
      byte[] text = texts.get(other);
      return Sentence.of(
          "{} and {} begin as one walk and differ from record {} on; both are shown.",
          shown(one),
          shown(other),
          records(text, alike(texts.get(one), text)) + 1);
    }

    private void count(Taken copy, Taken one) {
      counted.put(copy.journal(), one.journal());
    }

    /** Says which walk a journal of another name holds. */
    void name(Taken journal) {
      if (!journal.journal().equals(journal.named())) {
        notes.add(
            Sentence.of(
                "{} is the name of a journal in which the walk is called {}; either name finds it.",
                shown(journal),
                Visible.name(journal.named())));
      }
    }

    private static String shown(Taken journal) {
      return Visible.name(journal.journal());
    }

    /** Returns how many bytes from the first are the same. */
    private static int alike(byte[] one, byte[] other) {
      int at = Arrays.mismatch(one, other);
      return at < 0 ? one.length : at;
    }

    private static int records(byte[] text, int end) {
      int records = 0;
      for (int at = 0; at < end; at++) {
        records += text[at] == LINE_FEED ? 1 : 0;
      }
      return records;
    }
  }
}
