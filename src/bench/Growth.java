import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import loadwalk.bench.LoadResistor;
import loadwalk.cli.KeptWalks;
import loadwalk.cli.LedgerReading;
import loadwalk.journal.JournalRecord;
import loadwalk.journal.Recovered;
import loadwalk.journal.Recovery;
import loadwalk.plan.Rules;
import loadwalk.plan.wiring.WiringRequest;
import loadwalk.plan.wiring.WiringSearch;
import loadwalk.report.page.Picture;
import loadwalk.walk.fact.FactText;

/** Measures how work grows with its size and prints the order found between the sizes. */
final class Growth {
  private static final int ROUNDS = 15;
  private static final Recovered WHOLE = new Recovered.Whole(List.of(), 0, Recovered.Ending.KNOWN);

  private Growth() {}

  /** Something whose cost depends on a size. */
  private interface Work {
    void run() throws IOException;
  }

  static void print(Path demo) throws IOException {
    List<String> bodies =
        Recovery.read(Files.readAllBytes(demo)).records().stream()
            .map(JournalRecord::body)
            .toList();
    grow(
        "folding a walk, records",
        new int[] {10, 100, 1000, 10_000},
        n -> () -> FactText.walk(grown(bodies, n)),
        ROUNDS);
    grow(
        "ledger with its index, walks",
        new int[] {100, 1000, 10_000, 100_000},
        n -> ledger(grown(bodies, 10), n),
        ROUNDS);
    grow("wiring of 3.1 Ω, resistors", new int[] {4, 8, 12, 20, 40}, Growth::wiring, ROUNDS);
  }

  /** A walk of so many records: the fourth, a temperature entered, again and again. */
  private static List<String> grown(List<String> bodies, int records) {
    List<String> grown = new ArrayList<>(bodies.subList(0, 4));
    while (grown.size() < records) {
      grown.add(bodies.get(3));
    }
    return grown;
  }

  private static Work ledger(List<String> bodies, int walks) {
    Walks kept = new Walks(bodies, walks);
    return () -> LedgerReading.of(kept, sentence -> {}, () -> false);
  }

  private static Work wiring(int resistors) {
    double[] ohms = {1, 2.2, 4, 8, 3.3};
    List<LoadResistor> stock = new ArrayList<>();
    for (int i = 0; i < ohms.length; i++) {
      int count = resistors / ohms.length + (i < resistors % ohms.length ? 1 : 0);
      if (count > 0) {
        stock.add(
            new LoadResistor(ohms[i] + " ohm", ohms[i], 5, 100, count, OptionalDouble.empty()));
      }
    }
    WiringSearch search = new WiringSearch(stock, LoadResistor::watts);
    return () -> search.find(new WiringRequest(3.1, 200, 1, 5));
  }

  /** Many walks alike, and an index, in memory. */
  private static final class Walks implements KeptWalks {
    private final List<String> bodies;
    private final List<String> walks = new ArrayList<>();
    private byte[] index = {};

    Walks(List<String> bodies, int count) {
      this.bodies = bodies;
      for (int i = 0; i < count; i++) {
        walks.add(String.format("walk-%06d", i));
      }
    }

    @Override
    public Rules rules() {
      return Rules.of(Map.of());
    }

    @Override
    public Listing list() {
      return new Listing(walks, List.of());
    }

    @Override
    public String maker() {
      return "this program";
    }

    @Override
    public Unread bytes(String walk) {
      return new Unread() {
        @Override
        public byte[] bytes() {
          return walk.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String end() {
          return "";
        }

        @Override
        public Journal read() {
          List<String> own = new ArrayList<>(bodies);
          own.set(0, own.get(0).replaceFirst("\"walk\":\"[^\"]*", "\"walk\":\"" + walk));
          return new Journal(own, WHOLE);
        }
      };
    }

    @Override
    public String find(String typed) {
      return typed;
    }

    @Override
    public Journal read(String name) {
      return new Journal(bodies, WHOLE);
    }

    @Override
    public Optional<Picture> photo(String path, String sha256) {
      return Optional.empty();
    }

    @Override
    public byte[] ledgerIndex() {
      return index;
    }

    @Override
    public void keepLedgerIndex(byte[] bytes) {
      index = bytes;
    }
  }

  private static void grow(String what, int[] sizes, IntFunction<Work> works, int rounds)
      throws IOException {
    List<String> told = new ArrayList<>();
    double before = Double.NaN;
    for (int i = 0; i < sizes.length; i++) {
      Work work = works.apply(sizes[i]);
      work.run();
      Sample sample = new Sample();
      for (int round = 0; round < rounds; round++) {
        long start = System.nanoTime();
        work.run();
        sample.add((System.nanoTime() - start) / 1e6);
      }
      double now = sample.median();
      String order =
          i == 0
              ? ""
              : String.format(
                  Locale.ROOT,
                  " (n^%.2f)",
                  Math.log(now / before) / Math.log((double) sizes[i] / sizes[i - 1]));
      told.add(String.format(Locale.ROOT, "%d: %.3g ms%s", sizes[i], now, order));
      before = now;
    }
    System.out.println("| growth: " + what + " | | " + String.join(", ", told) + " | | | |");
  }
}
