package loadwalk.view.walk;

import java.util.OptionalDouble;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Area;
import loadwalk.view.canvas.Canvas;
import loadwalk.view.canvas.Scope;
import loadwalk.view.canvas.Style;
import loadwalk.view.state.Live;
import loadwalk.wave.analysis.LiveReading;
import loadwalk.wave.file.CaptureSetup;

/** The live input beside the readings: level, THD, the clipping light, a small scope picture. */
final class LivePanel {
  private static final int WIDEST = 76;

  private LivePanel() {}

  /** Paints it into what room there is; the line of numbers comes first. */
  static void paint(Canvas canvas, Live live, CaptureSetup setup, Area area) {
    if (live.reading().isEmpty()) {
      String told = live.why().orElse("LIVE  waiting for the sound input");
      Style style = live.why().isPresent() ? Style.HEED : Style.FAINT;
      canvas.paragraph(area.column(), area.row(), area.columns(), 2, told, style);
      return;
    }
    LiveReading now = live.reading().get();
    boolean held = live.state() == Live.State.HELD;
    int column = canvas.text(area.column(), area.row(), held ? "HELD" : "LIVE", Style.HEADING) + 2;
    column = canvas.text(column, area.row(), numbers(now, setup), Style.STRONG) + 2;
    boolean lit = now.top() || now.bottom() || now.overdriven();
    column = canvas.text(column, area.row(), light(now), lit ? Style.HALT : Style.FAINT) + 2;
    if (held && area.rows() == 1) {
      canvas.text(column, area.row(), "Ctrl-W takes it", Style.KEY);
    }
    int width = Math.min(area.columns(), WIDEST);
    Scope.paint(
        canvas, now.picture(), new Area(area.column(), area.row() + 1, width, area.rows() - 1));
  }

  private static String numbers(LiveReading now, CaptureSetup setup) {
    OptionalDouble scale = voltsPerUnit(setup);
    Printer print = Printer.UTF8;
    String level =
        scale.isPresent()
            ? Sentence.of("{} rms", print.value(scale.getAsDouble() * now.rms(), Unit.VOLT, 4))
            : Sentence.of(
                "{} dBFS rms",
                print.value(20 * Math.log10(Math.max(now.rms(), 1e-6)), Unit.ONE, 3));
    String thd =
        now.thdPercent().isPresent()
            ? Sentence.of(
                "THD {}", print.reading(now.thdPercent().getAsDouble(), Unit.PERCENT, 0.01))
            : "no THD";
    String hertz =
        now.hertz().isPresent() ? print.value(now.hertz().getAsDouble(), Unit.HERTZ, 3) : "no tone";
    return level + "  " + thd + "  " + hertz;
  }

  private static OptionalDouble voltsPerUnit(CaptureSetup setup) {
    return setup.fullScaleVolts().isPresent()
        ? OptionalDouble.of(setup.fullScaleVolts().getAsDouble() * setup.divider().orElse(1))
        : OptionalDouble.empty();
  }

  private static String light(LiveReading now) {
    if (now.overdriven()) {
      return "INPUT OVERDRIVEN";
    }
    if (now.top() && now.bottom()) {
      return "CLIPS top and bottom";
    }
    return now.top() ? "CLIPS at top" : now.bottom() ? "CLIPS at bottom" : "no clipping";
  }
}
