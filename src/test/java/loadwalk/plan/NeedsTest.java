package loadwalk.plan;

import static loadwalk.plan.PlanExample.bench;
import static loadwalk.plan.PlanExample.sequence;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import loadwalk.bench.BareAmplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Mode;
import loadwalk.bench.Supply;
import loadwalk.bench.Target;
import loadwalk.plan.PlanExample.Told;
import loadwalk.sequence.Idle;
import loadwalk.sequence.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan tells its reader to buy or to fit before anything is connected. */
class NeedsTest {
  private static final OptionalDouble NO_FUSE = OptionalDouble.empty();
  private static final List<Supply> AMPLE = List.of(new Supply(13.8, 1000));
  private static final List<Lead> THICK =
      List.of(new Lead("plus", new Lead.Awg(-3), 1, 4).insulatedFor(105));
  private static final Measure STEREO_4 = new Measure(Mode.STEREO, 4, false);
  private static final Measure BRIDGED_4 = new Measure(Mode.BRIDGED, 4, false);

  private static LoadResistor eight(int count) {
    return new LoadResistor("8 ohm", 8, 5, 100, count, OptionalDouble.empty());
  }

  private static List<String> needs(Bench bench, Told told) {
    return PlanExample.plan(sequence(STEREO_4), BareAmplifier.rated(), bench, any -> told).needs();
  }

  private static List<String> starting(List<String> needs, String start) {
    return needs.stream().filter(need -> need.startsWith(start)).toList();
  }

  /**
   * The fuse carries the worst current, and the leads carry the fuse: a lead thinner than the fuse
   * burns before the fuse opens. By hand, in copper at 50 °C, with no more than 3 % of 13.8 V lost
   * there and back: at 10 A AWG 18 carries the fuse but loses 0.468 V.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          4     | -   | 5   | 3.75 | 18  | 20  | 0.187
          5     | -   | 5   | 3.75 | 18  | 20  | 0.234
          5.1   | -   | 7.5 | 5.63 | 18  | 20  | 0.239
          10    | -   | 10  | 7.5  | 16  | 25  | 0.295
          20    | -   | 20  | 15   | 14  | 35  | 0.37
          25    | -   | 25  | 18.8 | 12  | 45  | 0.291
          41    | -   | 50  | 37.5 | 10  | 60  | 0.3
          81    | -   | 100 | 75   | 6   | 120 | 0.235
          105   | -   | 125 | 93.8 | 4   | 160 | 0.191
          81    | 60  | 100 | 75   | 6   | 120 | 0.235
          81    | 80  | 100 | 75   | 6   | 120 | 0.235
          81    | 81  | own | -    | 6   | 120 | 0.235
          81    | 150 | own | -    | 4   | 160 | 0.148
          81    | 160 | own | -    | 4   | 160 | 0.148
          160   | -   | 175 | 131  | 2   | 210 | 0.183
          220   | -   | 225 | 169  | 1   | 245 | 0.2
          270   | -   | 300 | 225  | 2/0 | 330 | 0.154
          400   | -   | 400 | 300  | 4/0 | 445 | 0.144
          """)
  void leads_carryTheFuse_andTheFuseTheWorstCurrent(
      double worst, String own, String fuse, String good, String awg, String carries, String lost) {
    OptionalDouble fitted = own.equals("-") ? NO_FUSE : OptionalDouble.of(Double.parseDouble(own));
    List<String> needs = needs(bench(AMPLE, List.of(), fitted, eight(4)), Told.worstAmps(worst));
    List<String> fuses = starting(needs, "A ");
    if (fuse.equals("own")) {
      assertEquals(List.of(), fuses);
    } else {
      String said = fuses.get(0).replaceAll("A (\\S+) A fuse \\(.*\\) at", "A $1 A fuse at");
      assertEquals(
          "A "
              + fuse
              + " A fuse at the source, good for "
              + good
              + " A continuous. The leads must"
              + " carry more than the fuse.",
          said);
    }
    assertEquals(
        List.of(
            "Supply leads of AWG "
                + awg
                + " or thicker with insulation for 105 °C, 1 m each way: good for "
                + carries
                + " A continuous, "
                + lost
                + " V lost at worst."),
        starting(needs, "Supply leads"));
  }

  @Test
  void currentBeyondEveryLeadAndFuse_isSaid() {
    String leads =
        "No single lead up to AWG 4/0 carries %s A over 1 m each way within 3 %%. Run several in"
            + " parallel, or check the ratings.";
    Bench bench = bench(AMPLE, List.of(), NO_FUSE, eight(4));
    assertEquals(
        "A 500 A fuse (bolt-in, 51 mm (ISO 8820-5 SF51)) at the source, good for 375 A continuous."
            + " The leads must carry more than the fuse.",
        needs(bench, Told.worstAmps(441)).get(0));
    assertEquals(leads.formatted("441"), needs(bench, Told.worstAmps(441)).get(1));
    assertEquals(
        List.of("No common single fuse carries 501 A. Check the ratings.", leads.formatted("501")),
        needs(bench, Told.worstAmps(501)));
  }

  /** A run that carries the current is kept; each run of the bench must. */
  @ParameterizedTest
  @CsvSource({
    "160, 4, 4, enough",
    "160.1, 4, 4, thicker",
    "81, 4, 8, thicker",
    "80, 4, 8, enough",
    "81, 8, 4, thicker"
  })
  void ownLeads_areKeptIfEveryRunCarriesTheWorst(
      double worst, int plus, int minus, String verdict) {
    List<Lead> leads =
        List.of(
            new Lead("plus", new Lead.Awg(plus), 1, 1).insulatedFor(105),
            new Lead("minus", new Lead.Awg(minus), 1, 1).insulatedFor(105));
    Bench bench = bench(AMPLE, leads, OptionalDouble.of(200), eight(4));
    List<String> needs = needs(bench, Told.worstAmps(worst));
    assertEquals(verdict.equals("enough") ? 0 : 1, needs.size(), needs.toString());
  }

  /** Of 50 A and 30 A in parallel 72 A count; 72 A at worst are just enough. */
  @Test
  void supplies_mustDeliverTheWorstFromTheirUsablePart() {
    List<Supply> both = List.of(new Supply(13.8, 50), new Supply(13.8, 30));
    Bench bench = bench(both, THICK, OptionalDouble.of(200), eight(4));
    assertEquals(List.of(), needs(bench, Told.worstAmps(72)));
    assertEquals(
        List.of(
            "Supplies of 82.2 A in all at 13.8 V: 74 A at worst, and 90 % of the sum counts as"
                + " usable. The bench has 72 A usable."),
        needs(bench, Told.worstAmps(74)));
    assertEquals(
        List.of(
            "Supplies of 82.2 A in all at 13.8 V: 74 A at worst, and 90 % of the sum counts as"
                + " usable."),
        needs(bench(List.of(), THICK, OptionalDouble.of(200), eight(4)), Told.worstAmps(74)));
  }

  @Test
  void currentThatNothingForetells_isSaid_andNothingIsAdvisedFromIt() {
    String unknown =
        "The supply current is not known. Enter the amplifier's rated powers, or measure a light"
            + " load first.";
    assertEquals(
        List.of(unknown), needs(bench(List.of(), List.of(), NO_FUSE, eight(4)), Told.NOTHING));
    assertEquals(
        List.of(unknown, "For stereo 4 Ω: buy 2 resistors of 4 Ω, 100 W."),
        needs(bench(List.of(), List.of(), NO_FUSE, eight(1)), Told.NOTHING));
  }

  /** The step that asks most decides, wherever it stands. */
  @Test
  void heaviestStep_decides() {
    Bench bench = bench(AMPLE, List.of(), NO_FUSE, eight(4));
    Function<Target, Told> told =
        target ->
            switch (target.stepId()) {
              case "stereo-4" -> Told.worstAmps(25);
              case "bridged-4" -> Told.worstAmps(81);
              case "idle" -> Told.worstAmps(3);
              default -> Told.NOTHING;
            };
    List<String> needs =
        PlanExample.plan(
                sequence(new Measure(Mode.STEREO, 8, false), STEREO_4, BRIDGED_4, new Idle()),
                BareAmplifier.rated(),
                bench,
                told)
            .needs();
    assertEquals(1, starting(needs, "A 100 A fuse").size(), needs.toString());
    assertEquals(1, starting(needs, "Supply leads of AWG 6 ").size(), needs.toString());
  }

  /**
   * By hand, in free air for a reading: 144 W in 4 Ω take two 8 Ω of 100 W; two loads take four.
   */
  @Test
  void loads_areBoughtForTheWorstWatts() {
    Map<Integer, String> byStock =
        Map.of(
            1, "For stereo 4 Ω, 144 W each at worst: buy 3 resistors of 8 Ω, 100 W.",
            2, "For stereo 4 Ω, 144 W each at worst: buy 2 resistors of 8 Ω, 100 W.",
            3, "For stereo 4 Ω, 144 W each at worst: buy 1 resistor of 8 Ω, 100 W.");
    byStock.forEach(
        (count, sentence) -> {
          Bench bench = bench(AMPLE, THICK, OptionalDouble.of(200), eight(count));
          assertEquals(List.of(sentence), needs(bench, Told.worstAmps(81).watts(144)));
        });
    Bench enough = bench(AMPLE, THICK, OptionalDouble.of(200), eight(4));
    assertEquals(List.of(), needs(enough, Told.worstAmps(81).watts(144)));
    assertEquals(
        List.of(
            "For stereo 4 Ω, 40000 W each at worst, nothing to buy was found. All resistors"
                + " together bear 394 W. The step needs 80000 W."),
        needs(enough, Told.worstAmps(81).watts(40_000)));
  }

  /** One line for each load, for the step that heats it most. */
  @Test
  void load_thatSeveralStepsUse_isBoughtOnce() {
    Bench bench = bench(AMPLE, THICK, OptionalDouble.of(200), eight(1));
    double[] watts = {100, 144, 120};
    int[] asked = {0};
    List<String> needs =
        PlanExample.plan(
                sequence(STEREO_4, STEREO_4, STEREO_4, BRIDGED_4),
                BareAmplifier.rated(),
                bench,
                target ->
                    target.mode() == Mode.BRIDGED
                        ? Told.worstAmps(50).watts(100)
                        : Told.worstAmps(50).watts(watts[asked[0]++]))
            .needs();
    assertEquals(
        List.of(
            "For stereo 4 Ω, 144 W each at worst; bridged 4 Ω, 100 W each at worst: buy 3"
                + " resistors of 8 Ω, 100 W."),
        needs);
  }
}
