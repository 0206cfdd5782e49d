package loadwalk.report.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.Hostile;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.report.sheet.SheetWaveTest;
import loadwalk.wave.Calibration;
import loadwalk.wave.analysis.LimitFinding;
import loadwalk.wave.analysis.WaveAnalysis;
import org.junit.jupiter.api.Test;

/** A judged wave, in every format. */
public class WavePageTest {

  public static Page page(String name, Optional<LimitFinding> limit) throws Exception {
    return WavePage.of(
        new JudgedWave(
            name,
            "0123456789abcdef".repeat(4),
            1,
            WaveAnalysis.of(new SheetWaveTest.Clipped(), 1, Calibration.fullScale(20, 1)),
            limit,
            List.of("A note on " + name)));
  }

  private static LimitFinding found() {
    Quantity volts = Quantity.of(13.4, Unit.VOLT, "capture", 0.05);
    return new LimitFinding.Found(volts, 1, 4.25, "between two windows", List.of(), List.of());
  }

  @Test
  void everyFormat_saysWhatWasFound() throws Exception {
    Page page = page("tone.wav", Optional.of(found()));
    String text = String.join("\n", TextPage.lines(page, 80, false));
    String html = HtmlPage.html(page);
    String markdown = MarkdownPage.text(page);
    for (String part : List.of("Wave of tone.wav", "between two windows", "4.25 s")) {
      assertTrue(text.contains(part), part + " in " + text);
      assertTrue(html.replace('\u00a0', ' ').contains(part), part + " in " + html);
      assertTrue(markdown.contains(part), part + " in " + markdown);
    }
    assertTrue(text.contains("flat for"), text);
    assertTrue(markdown.contains("| Harmonic | Level |\n| ---: | ---: |\n"), markdown);
  }

  @Test
  void missingLimit_saysWhatIsMissing() throws Exception {
    LimitFinding missing = new LimitFinding.NotFound("THD does not reach 1.00 %.");
    String text = String.join("\n", TextPage.lines(page("a.wav", Optional.of(missing)), 80, false));
    assertTrue(text.contains("limit  THD does not reach 1.00 %."), text);
  }

  @Test
  void hostileName_isInertAndAsciiIsAscii() throws Exception {
    Page page = page(String.join(" ", Hostile.ALL), Optional.empty());
    for (String line : TextPage.lines(page, 80, true)) {
      assertEquals(List.of(), line.chars().filter(c -> c < ' ' || c > '~').boxed().toList(), line);
    }
    assertFalse(HtmlPage.html(page).contains("<script"));
  }
}
