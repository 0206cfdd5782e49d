package loadwalk.report.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.plan.PlanExample;
import loadwalk.report.Hostile;
import loadwalk.report.page.Block;
import loadwalk.report.page.HtmlPage;
import loadwalk.report.page.MarkdownPage;
import loadwalk.report.page.Page;
import loadwalk.report.page.TextPage;
import loadwalk.sequence.Sequence;
import loadwalk.sequence.Step;
import org.junit.jupiter.api.Test;

/** The plan of one step, in every format. */
public class PlanPageTest {
  private static final Page PAGE = page(PlanExample.AMPLIFIER, PlanExample.BENCH);

  public static Page page(Amplifier amplifier, Bench bench) {
    return PlanPage.of(
        PlanExample.plan(PlanExample.STEREO_4, amplifier, bench), PlanExample.TABLES);
  }

  /** A plan in which every name means harm. */
  public static Page hostile() {
    String everything = String.join(" ", Hostile.ALL);
    Bench plain = PlanExample.BENCH;
    Bench bench =
        new Bench(
            everything,
            plain.supplies(),
            plain.leads().stream()
                .map(l -> new Lead(everything + l.label(), l.gauge(), l.metres(), l.parallel()))
                .toList(),
            plain.fuseAmps(),
            plain.loads().stream()
                .map(
                    l ->
                        new LoadResistor(
                            Hostile.MARKUP + Hostile.TURNING + Hostile.LINK + l.label(),
                            l.ohms(),
                            l.tolerancePercent(),
                            l.watts(),
                            l.count(),
                            l.ppmPerKelvin()))
                .toList(),
            List.of(),
            plain.usableFraction());
    return page(Amplifier.named(everything, Hostile.LINK), bench);
  }

  @Test
  void text_saysEachStepAndDrawsItsWiring() {
    List<String> lines = TextPage.lines(PAGE, 80, false);
    List<String> row = lines.stream().filter(l -> l.startsWith("stereo-4  ")).toList();
    assertEquals(
        List.of(
            "stereo-4",
            "heed",
            "20/24",
            "100/144",
            "40/81",
            "13.7/13.5",
            "amplifier's fuses, 135 %"),
        List.of(row.get(0).split("  +")),
        String.join("\n", lines));
    assertTrue(lines.contains("    left+ --+-[R1]-+-- left-"), String.join("\n", lines));
    assertTrue(
        lines.contains("R1 = 8 ohm-a, 8 Ω 100 W; R2 = 8 ohm-b, 8 Ω 100 W."),
        String.join("\n", lines));
  }

  @Test
  void text_losesNoSignAtAnyWidth() {
    String whole = squeezed(TextPage.lines(PAGE, 4000, false));
    for (int columns : new int[] {60, 78, 80, 120}) {
      List<String> lines = TextPage.lines(PAGE, columns, false);
      lines.forEach(line -> assertTrue(line.length() <= columns, line));
      for (String word : List.of("left+ to R1 left, R2 left", "W in 8 ohm-a", "stop at 60 A")) {
        assertTrue(whole.contains(squeezed(List.of(word))), word);
        assertTrue(squeezed(lines).contains(squeezed(List.of(word))), word + " at " + columns);
      }
    }
  }

  private static String squeezed(List<String> lines) {
    return String.join("", lines).replace(" ", "");
  }

  @Test
  void drawing_tooWideForThePage_isWrittenInWords() {
    Block.Drawing drawing = new Block.Drawing("A load", List.of("-".repeat(60)), "A + B");
    Page page =
        new Page("t", "s", List.of(), List.of(new Page.Section("a", "b", List.of(drawing))));
    assertTrue(TextPage.lines(page, 80, false).contains("    " + "-".repeat(60)));
    assertTrue(TextPage.lines(page, 60, false).contains("    A + B"));
  }

  @Test
  void ascii_isAscii_whateverTheNames() {
    for (Page page : List.of(PAGE, hostile())) {
      for (String line : TextPage.lines(page, 80, true)) {
        assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
      }
    }
  }

  @Test
  void html_andMarkdown_keepTheDrawing() {
    String html = HtmlPage.html(PAGE);
    assertTrue(html.contains("<pre>left+ --+-[R1]-+-- left-\n"), html);
    assertTrue(html.contains("<h2 id=\"h-step-1\">stereo-4: heed</h2>"), html);
    String markdown = MarkdownPage.text(PAGE);
    assertTrue(markdown.contains("\n```\nleft+ --+-[R1]-+-- left-\n"), markdown);
    assertTrue(markdown.contains("| stereo-4 | heed | 20/24 | 100/144 |"), markdown);
  }

  @Test
  void html_asksNothingOfAnyone() {
    String html = HtmlPage.html(PAGE);
    for (String request : List.of("http:", "https:", "src=", "<script", "@import", "url(")) {
      assertFalse(html.contains(request), request);
    }
  }

  @Test
  void step_thatAsksTheSameAgain_pointsBack() {
    List<Step> steps = new ArrayList<>(PlanExample.STEREO_4.steps());
    steps.addAll(PlanExample.STEREO_4.steps());
    Sequence twice = new Sequence("twice", "Twice", 1000, 1, 13.8, steps, "0");
    Page page =
        PlanPage.of(
            PlanExample.plan(twice, PlanExample.AMPLIFIER, PlanExample.BENCH), PlanExample.TABLES);
    assertTrue(TextPage.lines(page, 80, false).contains("Same as stereo-4."));
  }
}
