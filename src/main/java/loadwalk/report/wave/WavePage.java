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
  public static Page of(JudgedWave findings) {
    WaveReading reading = findings.reading();
    List<Section> sections = new ArrayList<>();
    findings.limit().ifPresent(limit -> sections.add(limit(limit)));
    sections.add(new Section("readings", "What the wave shows", List.of(readings(reading))));
    if (!reading.harmonics().isEmpty()) {
      Table harmonics = harmonics(reading.harmonics());
      sections.add(new Section("harmonics", "Harmonics", List.of(harmonics)));
    }
    sections.add(new Section("method", "How it was read", List.of(method(findings))));
    if (!findings.notes().isEmpty()) {
      Bullets notes = new Bullets(findings.notes());
      sections.add(new Section("notes", "Notes", List.of(notes)));
    }
    return new Page(
        "Wave of " + Visible.name(findings.name()),
        "Channel " + findings.channel() + ", SHA-256 " + findings.sha256(),
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
            "at " + number(found.limitPercent()) + " % THD", quantity(found.output()) + " rms"),
        new Term("passed after", String.format(Locale.ROOT, "%.2f s", found.seconds())),
        new Term("method", found.method()));
  }

  private static Terms readings(WaveReading r) {
    return new Terms(
        List.of(
            new Term("frequency", quantity(r.frequency())),
            new Term("output", quantity(r.output()) + " rms, without DC"),
            new Term("peak", PRINTER.value(r.peakVolts(), Unit.VOLT, 4)),
            new Term("crest factor", number(r.crestFactor())),
            new Term(
                "THD",
                r.thd().map(WavePage::quantity).orElse("no harmonic below half the sample rate")),
            new Term("THD+N", quantity(r.thdNoise()) + " of the fundamental"),
            new Term("noise", PRINTER.value(r.noiseVolts(), Unit.VOLT, 3)),
            new Term("DC", quantity(r.dc())),
            new Term("clipping", clipping(r.clipping())),
            new Term("overdriven", "the capture itself: " + r.clipping().capture().words()),
            new Term("looks like", r.shape().words())));
  }

  private static Table harmonics(List<Harmonic> harmonics) {
    List<List<String>> rows = new ArrayList<>();
    for (Harmonic h : harmonics) {
      rows.add(List.of(String.valueOf(h.number()), number(h.percent()) + " %"));
    }
    return new Table(
        "Against the fundamental",
        List.of(Column.numbers("Harmonic"), Column.numbers("Level")),
        rows);
  }

  private static Terms method(JudgedWave findings) {
    WaveReading reading = findings.reading();
    return new Terms(
        List.of(
            new Term("method", reading.method()),
            new Term("calibration", reading.calibration().how())));
  }

  private static String clipping(Clipping c) {
    return "top "
        + side(c.top(), c.topFraction())
        + ", bottom "
        + side(c.bottom(), c.bottomFraction());
  }

  private static String side(boolean clipped, double part) {
    return clipped
        ? String.format(Locale.ROOT, "flat for %.1f %% of a period", 100 * part)
        : "none";
  }

  /** One block shows no scatter; what is not known to many digits is not printed with them. */
  private static String quantity(Quantity quantity) {
    return quantity.u() > 0
        ? PRINTER.quantity(quantity)
        : PRINTER.value(quantity.value(), quantity.unit(), 4) + " (uncertainty not known)";
  }

  private static String number(double value) {
    return PRINTER.value(value, Unit.ONE, 4);
  }
}
