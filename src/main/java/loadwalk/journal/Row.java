package loadwalk.journal;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loadwalk.journal.Facts.After;
import loadwalk.journal.Facts.Head;
import loadwalk.journal.Facts.Next;
import loadwalk.journal.Facts.Start;

/** The decision table of {@link Recovery}; a test proves that exactly one row always matches. */
enum Row {
  NEWER(Heads.NEWER, Nexts.ANY, Afters.ANY, Starts.ANY),
  ALIEN(Heads.ALIEN, Nexts.ANY, Afters.ANY, Starts.ANY),
  WHOLE(Heads.READABLE, Nexts.END, Afters.ANY, Starts.ANY),
  TORN(Heads.OURS, Nexts.SPOILED, Afters.NOTHING, Starts.ANY),
  TORN_AT_BIRTH(Heads.NONE, Nexts.SPOILED, Afters.NOTHING, Starts.JOURNAL),
  STRANGE(Heads.NONE, Nexts.SPOILED, Afters.UNREADABLE, Starts.OTHER),
  RUIN(Heads.OURS, Nexts.SPOILED, Afters.SPOILED, Starts.ANY),
  RUIN_AT_BIRTH(Heads.NONE, Nexts.SPOILED, Afters.SPOILED, Starts.JOURNAL),
  HOLE(Heads.READABLE, Nexts.SPOILED, Afters.READABLE, Starts.ANY),
  REPEATED(Heads.READABLE, Nexts.REPEATED, Afters.ANY, Starts.ANY),
  REORDERED(Heads.READABLE, Nexts.AHEAD, Afters.THE_ONE_DUE, Starts.ANY),
  GAP(Heads.READABLE, Nexts.AHEAD, Afters.WITHOUT_THE_ONE_DUE, Starts.ANY);

  private final Set<Head> heads;
  private final Set<Next> nexts;
  private final Set<After> afters;
  private final Set<Start> starts;

  Row(Set<Head> heads, Set<Next> nexts, Set<After> afters, Set<Start> starts) {
    this.heads = heads;
    this.nexts = nexts;
    this.afters = afters;
    this.starts = starts;
  }

  boolean matches(Facts facts) {
    return heads.contains(facts.head())
        && nexts.contains(facts.next())
        && afters.contains(facts.after())
        && starts.contains(facts.start());
  }

  static Row of(Facts facts) {
    List<Row> matching = Arrays.stream(values()).filter(row -> row.matches(facts)).toList();
    if (matching.size() != 1) {
      throw new IllegalStateException(matching + " match " + facts);
    }
    return matching.get(0);
  }

  private static final class Heads {
    static final Set<Head> NONE = EnumSet.of(Head.NONE);
    static final Set<Head> OURS = EnumSet.of(Head.OURS);
    static final Set<Head> NEWER = EnumSet.of(Head.NEWER);
    static final Set<Head> ALIEN = EnumSet.of(Head.ALIEN);
    static final Set<Head> READABLE = EnumSet.of(Head.NONE, Head.OURS);
  }

  private static final class Nexts {
    static final Set<Next> ANY = EnumSet.allOf(Next.class);
    static final Set<Next> END = EnumSet.of(Next.END);
    static final Set<Next> SPOILED = EnumSet.of(Next.SPOILED);
    static final Set<Next> REPEATED = EnumSet.of(Next.REPEATED);
    static final Set<Next> AHEAD = EnumSet.of(Next.AHEAD);
  }

  private static final class Afters {
    static final Set<After> ANY = EnumSet.allOf(After.class);
    static final Set<After> NOTHING = EnumSet.of(After.NOTHING);
    static final Set<After> SPOILED = EnumSet.of(After.SPOILED);
    static final Set<After> UNREADABLE = EnumSet.of(After.NOTHING, After.SPOILED);
    static final Set<After> READABLE = EnumSet.of(After.RECORDS, After.THE_ONE_DUE);
    static final Set<After> THE_ONE_DUE = EnumSet.of(After.THE_ONE_DUE);
    static final Set<After> WITHOUT_THE_ONE_DUE =
        EnumSet.complementOf(EnumSet.of(After.THE_ONE_DUE));
  }

  private static final class Starts {
    static final Set<Start> ANY = EnumSet.allOf(Start.class);
    static final Set<Start> JOURNAL = EnumSet.of(Start.JOURNAL);
    static final Set<Start> OTHER = EnumSet.of(Start.OTHER);
  }
}
