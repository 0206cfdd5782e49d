package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.InputStream;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import loadwalk.bench.ReadingId;
import loadwalk.chart.Chart;
import loadwalk.chart.Series;
import loadwalk.plan.StockRules;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.walk.Intent;
import loadwalk.walk.fact.Capture;
import loadwalk.wave.Calibration;
import loadwalk.wave.analysis.WaveAnalysis;
import loadwalk.wave.file.AudioSource;
import org.junit.jupiter.api.Test;

/** The captured wave of a step on its sheet, in every format. */
public class SheetWaveTest {
  private static final String HASH = "0123456789abcdef".repeat(4);

  /** Two seconds of a sine cut off at 0.8, as 50 Hz at 48 kHz. */
  public static final class Clipped implements AudioSource {
    private int at;

    @Override
    public double samplesPerSecond() {
      return 48_000;
    }

    @Override
    public int channels() {
      return 1;
    }

    @Override
    public int read(double[][] block) {
      int count = Math.min(block[0].length, 96_000 - at);
      for (int i = 0; i < count; i++) {
        double y = Math.sin(2 * Math.PI * 50 * (at + i) / 48_000);
        block[0][i] = Math.max(-0.8, Math.min(0.8, y));
      }
      at += count;
      return count == 0 ? -1 : count;
    }
  }

  private static Capture clipped() throws Exception {
    return Capture.of(
        new Capture.Source("<clip> & co.wav", HASH, 1),
        WaveAnalysis.of(new Clipped(), 1, Calibration.fullScale(20, 1)));
  }

  private static Walks walk() throws Exception {
    Walks w = Walks.opened("full-walk", Walks.halvorsen(), Walks.north(), OptionalLong.empty());
    w.begin();
    w.hear(new Intent.EndEarly("steady already"));
    w.begin();
    w.enter("idle", ReadingId.SUPPLY_AMPS, "1.6 A");
    w.hear(new Intent.Finish());
    w.begin();
    w.hear(new Intent.TakeCapture("stereo-4", clipped(), Walks.START));
    return w;
  }

  private static Sheet sheet() throws Exception {
    return Sheet.of(walk().state(), SheetOptions.DEFAULT, StockRules.RULES);
  }

  @Test
  void waveChart_showsTwoPeriods_besideAPureSine() throws Exception {
    Chart chart = WaveSections.wave("stereo-4", clipped());
    Series captured = chart.series().get(0);
    assertEquals(256, captured.points().size());
    assertEquals(40, captured.points().get(255).x(), 0.1, "two periods of 50 Hz, in ms");
    double top = captured.points().stream().mapToDouble(Series.Point::y).max().orElseThrow();
    double sine =
        chart.series().get(1).points().stream().mapToDouble(Series.Point::y).max().orElseThrow();
    assertEquals(16, top, 0.01);
    // The fundamental of a sine clipped at k = 0.8: 2/pi (asin k + k sqrt(1 - k^2)).
    assertEquals(20 * 2 / Math.PI * (Math.asin(0.8) + 0.8 * 0.6), sine, 0.02);
  }

  @Test
  void spectrumChart_showsDecibels_downToItsFloor() throws Exception {
    Chart chart = WaveSections.spectrum("stereo-4", clipped());
    List<Series.Point> lines = chart.series().get(0).points();
    assertEquals(10, lines.size());
    assertEquals(0, lines.get(0).y());
    assertEquals(-100, lines.get(1).y(), "no second harmonic in a wave cut alike on both sides");
    // H3 of a sine clipped at k, 4 k (1 - k^2)^(3/2) / (3 pi): integrated by hand.
    double first = 2 / Math.PI * (Math.asin(0.8) + 0.8 * 0.6);
    double third = 4 * 0.8 * Math.pow(0.36, 1.5) / (3 * Math.PI);
    assertEquals(20 * Math.log10(third / first), lines.get(2).y(), 0.02);
  }

  @Test
  void everyFormat_carriesTheWave() throws Exception {
    String html = Sheets.html(sheet());
    assertTrue(html.contains("Wave of stereo-4"), "the wave");
    assertTrue(html.contains("Spectrum of stereo-4"), "the spectrum");
    assertTrue(html.contains("&lt;clip&gt; &amp; co.wav"), "the file's name, inert");
    assertFalse(html.contains("<clip>"));
    String markdown = Sheets.markdown(sheet());
    assertTrue(markdown.contains(HASH), markdown);
    assertTrue(markdown.contains("H10"), markdown);
    String text = String.join("\n", Sheets.lines(sheet(), 78, false));
    assertTrue(text.contains("Captured waves"), text);
    assertTrue(text.contains("hard clipping on both sides"), text);
  }

  @Test
  void json_carriesTheWave_asItsSchemaSays() throws Exception {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode json = mapper.readTree(SheetJson.text(sheet()));
    try (InputStream in = getClass().getResourceAsStream("/loadwalk/schema/sheet.schema.json")) {
      assertEquals(
          Set.of(),
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
              .getSchema(in)
              .validate(json));
    }
    JsonNode wave = json.at("/steps/2/wave");
    assertEquals(HASH, wave.get("sha256").asText());
    assertEquals(128, wave.get("cycleVolts").size());
    assertEquals(9, wave.get("harmonicPercents").size());
    assertTrue(json.at("/steps/1/wave").isMissingNode());
  }

  @Test
  void typedOutput_hasNoWave() {
    Sheet sheet = Sheet.of(Walks.eventful().state(), SheetOptions.DEFAULT, StockRules.RULES);
    assertEquals(List.of(), WaveSections.sections(sheet));
  }
}
