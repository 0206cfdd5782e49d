package loadwalk.cautions;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Supply;

/** Makes a bench of a row of the table of benches. */
final class BenchRow {
  static final List<String> COLUMNS =
      List.of("bench", "supplies", "counted on", "leads", "bench fuse", "load resistors", "meters");

  private static final Pattern SUPPLY =
      Pattern.compile("((?<count>\\d+) × )?(?<volts>[\\d.]+) V (?<amps>[\\d.]+) A");
  private static final Pattern LEAD =
      Pattern.compile(
          "(?<label>[a-z]+) (?<metres>[\\d.]+) m ((?<count>\\d+) × )?"
              + "(AWG (?<awg>\\d+)(?<zeros>/0)?|(?<area>[\\d.]+) mm²)");
  private static final Pattern FUSE = Pattern.compile(Words.NUMBER + " A");
  private static final Pattern SHARE = Pattern.compile(Words.NUMBER + " %");
  private static final Pattern RESISTOR =
      Pattern.compile(
          "((?<count>\\d+) × )?(?<ohms>[\\d.]+) Ω (?<watts>[\\d.]+) W"
              + "( ±(?<percent>[\\d.]+) %)?"
              + "( (?<mount>metal|free-air|fan|oil|heatsink (?<sink>[\\d.]+) K/W))?");
  private static final Pattern METER =
      Pattern.compile(
          "(?<reads>[a-z ]+?)( (?<low>[\\d.]+)–(?<high>[\\d.]+) Hz)?( ±(?<percent>[\\d.]+) %)?");

  private BenchRow() {}

  static Bench bench(Map<String, String> cells) {
    String fuse = cells.get("bench fuse");
    String share = cells.get("counted on");
    boolean usual = share.equals(MarkdownTable.NONE);
    return new Bench(
        cells.get("bench"),
        flat(cells.get("supplies"), BenchRow::supplies),
        Words.list(cells.get("leads"), "+", BenchRow::lead),
        fuse.equals(MarkdownTable.NONE)
            ? OptionalDouble.empty()
            : OptionalDouble.of(amount(FUSE, fuse, "a fuse such as 100 A")),
        Words.list(cells.get("load resistors"), "+", BenchRow::resistor),
        Words.list(cells.get("meters"), "+", BenchRow::meter),
        usual
            ? Bench.unknown().usableFraction()
            : amount(SHARE, share, "a share such as 90 %") / 100);
  }

  private static double amount(Pattern form, String text, String expected) {
    return Double.parseDouble(Words.match(form, text, expected).group(1));
  }

  private static <T> List<T> flat(String cell, java.util.function.Function<String, List<T>> each) {
    return Words.list(cell, "+", each).stream().flatMap(List::stream).toList();
  }

  private static List<Supply> supplies(String text) {
    Matcher found = Words.match(SUPPLY, text, "a supply such as 2 × 13.8 V 50 A");
    Supply one = new Supply(Words.number(found, "volts", 0), Words.number(found, "amps", 0));
    return Collections.nCopies((int) Words.number(found, "count", 1), one);
  }

  private static Lead lead(String text) {
    Matcher found = Words.match(LEAD, text, "a lead such as plus 0.5 m 2 × AWG 4 or 25 mm²");
    double awg = Words.number(found, "awg", Double.NaN);
    Lead.Gauge gauge =
        Double.isNaN(awg)
            ? new Lead.Mm2(Words.number(found, "area", 0))
            : new Lead.Awg((int) (found.group("zeros") == null ? awg : 1 - awg));
    return new Lead(
            found.group("label"),
            gauge,
            Words.number(found, "metres", 0),
            (int) Words.number(found, "count", 1))
        .insulatedFor(105);
  }

  private static LoadResistor resistor(String text) {
    Matcher found = Words.match(RESISTOR, text, "resistors such as 16 × 4 Ω 100 W ±5 %");
    double ohms = Words.number(found, "ohms", 0);
    String sink = found.group("sink");
    Optional<Mount> mount =
        Optional.ofNullable(found.group("mount"))
            .map(
                word ->
                    sink == null
                        ? Mount.of(Mount.Kind.ofWord(word))
                        : Mount.heatsink(Double.parseDouble(sink)));
    return new LoadResistor(
        ohms + " ohm",
        ohms,
        Words.number(found, "percent", LoadResistor.DEFAULT_TOLERANCE_PERCENT),
        Words.number(found, "watts", 0),
        (int) Words.number(found, "count", 1),
        OptionalDouble.empty(),
        mount);
  }

  private static Meter meter(String text) {
    Matcher found = Words.match(METER, text, "a meter such as output volts 20–1000 Hz ±1 %");
    String label = found.group("reads");
    for (ReadingId id : ReadingId.values()) {
      if (id.label().equals(label)) {
        Optional<Meter.Band> band =
            found.group("low") == null
                ? Optional.empty()
                : Optional.of(
                    new Meter.Band(Words.number(found, "low", 0), Words.number(found, "high", 0)));
        return new Meter(label + " meter", id, Words.number(found, "percent", 0), 0, 0, band);
      }
    }
    throw new IllegalArgumentException("no reading is called «" + label + "»");
  }
}
