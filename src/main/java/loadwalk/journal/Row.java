package loadwalk.journal;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import loadwalk.journal.Facts.After;
import loadwalk.journal.Facts.Head;
import loadwalk.journal.Facts.Next;
import loadwalk.journal.Facts.Start;
import loadwalk.journal.Witness.Claim;

/** The decision table of {@link Recovery}; a test proves that exactly one row always matches. */
enum Row {
  NEWER(Heads.NEWER, Nexts.ANY, Afters.ANY, Starts.ANY, Claims.ANY),
  ALIEN(Heads.ALIEN, Nexts.ANY, Afters.ANY, Starts.ANY, Claims.ANY),
  WHOLE(Heads.READABLE, Nexts.END, Afters.ANY, Starts.ANY, Claims.NOTHING),
  MISSING(Heads.READABLE, Nexts.END, Afters.ANY, Starts.ANY, Claims.MORE),
  TORN(Heads.READABLE, Nexts.TORN, Afters.ANY, Starts.ANY, Claims.NOTHING),
  LOST(Heads.READABLE, Nexts.TORN, Afters.ANY, Starts.ANY, Claims.MORE),
  EXCHANGED(Heads.READABLE, Nexts.END_OR_TORN, Afters.ANY, Starts.ANY, Claims.OTHERS),
  STRANGE(Heads.NONE, Nexts.SPOILED, Afters.UNREADABLE, Starts.OTHER, Claims.ANY),
  RUIN(Heads.OURS, Nexts.SPOILED, Afters.UNREADABLE, Starts.ANY, Claims.ANY),
  RUIN_AT_BIRTH(Heads.NONE, Nexts.SPOILED, Afters.UNREADABLE, Starts.JOURNAL, Claims.ANY),
  HOLE(Heads.READABLE, Nexts.SPOILED, Afters.READABLE, Starts.ANY, Claims.ANY),
  FOREIGN(Heads.READABLE, Nexts.FOREIGN, Afters.ANY, Starts.ANY, Claims.ANY),
  REPEATED(Heads.READABLE, Nexts.REPEATED, Afters.ANY, Starts.ANY, Claims.ANY),
  REORDERED(Heads.READABLE, Nexts.AHEAD, Afters.THE_ONE_DUE, Starts.ANY, Claims.ANY),
  GAP(Heads.READABLE, Nexts.AHEAD, Afters.WITHOUT_THE_ONE_DUE, Starts.ANY, Claims.ANY);

  private final Set<Head> heads;
  private final Set<Next> nexts;
  private final Set<After> afters;
  private final Set<Start> starts;
  private final Set<Claim> claims;

  Row(Set<Head> heads, Set<Next> nexts, Set<After> afters, Set<Start> starts, Set<Claim> claims) {
    this.heads = heads;
    this.nexts = nexts;
    this.afters = afters;
    this.starts = starts;
    this.claims = claims;
  }

  boolean matches(Facts facts) {
    return heads.contains(facts.head())
        && nexts.contains(facts.next())
        && afters.contains(facts.after())
        && starts.contains(facts.start())
        && claims.contains(facts.claim());
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
    static final Set<Next> TORN = EnumSet.of(Next.TORN);
    static final Set<Next> END_OR_TORN = EnumSet.of(Next.END, Next.TORN);
    static final Set<Next> SPOILED = EnumSet.of(Next.SPOILED);
    static final Set<Next> FOREIGN = EnumSet.of(Next.FOREIGN);
    static final Set<Next> REPEATED = EnumSet.of(Next.REPEATED);
    static final Set<Next> AHEAD = EnumSet.of(Next.AHEAD);
  }

  private static final class Afters {
    static final Set<After> ANY = EnumSet.allOf(After.class);
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

  private static final class Claims {
    static final Set<Claim> ANY = EnumSet.allOf(Claim.class);
    static final Set<Claim> NOTHING = EnumSet.of(Claim.NOTHING);
    static final Set<Claim> MORE = EnumSet.of(Claim.MORE);
    static final Set<Claim> OTHERS = EnumSet.of(Claim.OTHERS);
  }
}
