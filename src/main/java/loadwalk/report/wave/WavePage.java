package loadwalk.report.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.report.page.Page;
import loadwalk.report.page.Page.Section;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.wave.Clipping;
import loadwalk.wave.Harmonic;
import loadwalk.wave.WaveReading;
import loadwalk.wave.analysis.LimitFinding;

/** Words what a captured wave shows. */
public final class WavePage {
  private static final Printer PRINTER = Printer.UTF8;

  private WavePage() {}

  /** Returns the page of a judged wave. */
  public static Page of(JudgedWave wave) {
    WaveReading reading = wave.reading();
    List<Section> sections = new ArrayList<>();
    wave.limit().ifPresent(limit -> sections.add(limit(limit)));
    sections.add(new Section("readings", "Readings", List.of(readings(reading))));
    if (!reading.harmonics().isEmpty()) {
      Table harmonics = harmonics(reading.harmonics());
      sections.add(new Section("harmonics", "Harmonics", List.of(harmonics)));
    }
    sections.add(new Section("method", "Method", List.of(method(wave))));
    if (!wave.notes().isEmpty()) {
      Bullets notes = new Bullets(wave.notes());
      sections.add(new Section("notes", "Notes", List.of(notes)));
    }
    return new Page(
        Sentence.of("Wave of {}", Visible.name(wave.name())),
        Sentence.of("Channel {}, SHA-256 {}", wave.channel(), wave.sha256()),
        List.of(),
        sections);
  }

  private static Section limit(LimitFinding limit) {
    List<Term> terms = new ArrayList<>();
    limit.reached().ifPresent(found -> terms.addAll(reached(found)));
    limit.missing().ifPresent(sentence -> terms.add(new Term("limit", sentence)));
    return new Section("limit", "Output at the limit", List.of(new Terms(terms)));
  }

  private static List<Term> reached(LimitFinding.Found found) {
    return List.of(
        new Term(
            Sentence.of("at {} % THD", number(found.limitPercent())),
            Sentence.of("{} rms", quantity(found.output()))),
        new Term("reached after", String.format(Locale.ROOT, "%.2f s", found.seconds())),
        new Term("method", found.method()));
  }

  private static Terms readings(WaveReading r) {
    return new Terms(
        List.of(
            new Term("frequency", quantity(r.frequency())),
            new Term("output", Sentence.of("{} rms, without DC", quantity(r.output()))),
            new Term("peak", PRINTER.value(r.peakVolts(), Unit.VOLT, 4)),
            new Term("crest factor", number(r.crestFactor())),
            new Term(
                "THD",
                r.thd().map(WavePage::quantity).orElse("no harmonic below half the sample rate")),
            new Term("THD+N", Sentence.of("{} of the fundamental", quantity(r.thdNoise()))),
            new Term("noise", PRINTER.value(r.noiseVolts(), Unit.VOLT, 3)),
            new Term("DC", quantity(r.dc())),
            new Term("clipping", clipping(r.clipping())),
            new Term("capture overdriven", r.clipping().capture().words()),
            new Term("looks like", r.shape().words())));
  }

  private static Table harmonics(List<Harmonic> harmonics) {
    List<List<String>> rows = new ArrayList<>();
    for (Harmonic h : harmonics) {
      rows.add(List.of(String.valueOf(h.number()), number(h.percent()) + " %"));
    }
    return new Table(
        "Relative to the fundamental",
        List.of(Column.numbers("Harmonic"), Column.numbers("Level")),
        rows);
  }

  private static Terms method(JudgedWave wave) {
    WaveReading reading = wave.reading();
    return new Terms(
        List.of(
            new Term("method", reading.method()),
            new Term("calibration", reading.calibration().how())));
  }

  private static String clipping(Clipping c) {
    return Sentence.of(
        "top {}, bottom {}", side(c.top(), c.topFraction()), side(c.bottom(), c.bottomFraction()));
  }

  private static String side(boolean clipped, double part) {
    return clipped
        ? Sentence.of("flat for {} % of a period", String.format(Locale.ROOT, "%.1f", 100 * part))
        : "none";
  }

  /** Words a quantity; one block shows no scatter, so the value gets only four digits. */
  private static String quantity(Quantity quantity) {
    return quantity.u() > 0
        ? PRINTER.quantity(quantity)
        : Sentence.of(
            "{} (uncertainty unknown)", PRINTER.value(quantity.value(), quantity.unit(), 4));
  }

  private static String number(double value) {
    return PRINTER.value(value, Unit.ONE, 4);
  }
}
