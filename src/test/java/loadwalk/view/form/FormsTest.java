package loadwalk.view.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.bench.Connection;
import loadwalk.bench.Lead;
import loadwalk.bench.LoadResistor;
import loadwalk.bench.Metal;
import loadwalk.bench.Meter;
import loadwalk.bench.Mount;
import loadwalk.bench.ThdKind;
import loadwalk.practice.PracticeRig;
import loadwalk.view.Snapshots;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The two forms: texts to records and back, and a sentence for every line that is wrong. */
class FormsTest {
  private static final List<String> AMPLIFIER =
      List.of(
          "Halvorsen & Pike",
          "HP 250",
          "A-117",
          "1994",
          "AB",
          "2",
          "stereo 4 60 W at 14.4 V 0.1 %; bridged 4 180 W",
          "2",
          "4",
          "30 30",
          "no");
  private static final List<String> BENCH =
      List.of(
          "North bench",
          "13.8 V 60 A; 13.8 V 40 A",
          "plus AWG 4 1.5 m x1; minus 25 mm2 1.5 m x2; link AWG 2/0 0.3 m x1",
          "100",
          "4 ohm 5 % 100 W x4; 0.5 ohm 1 % 50 W x2",
          "DMM outputVolts 0.8 % 3 digits 0.01 45-1000 Hz; DC clamp supplyAmps 2 % 5 digits 0.1");

  private static <T> T good(FormRead<T> read) {
    if (read instanceof FormRead.Good<T> good) {
      return good.value();
    }
    throw new AssertionError(read.toString());
  }

  private static FormRead.Bad<?> bad(FormRead<?> read) {
    if (read instanceof FormRead.Bad<?> bad) {
      return bad;
    }
    throw new AssertionError(read.toString());
  }

  private static List<String> with(List<String> texts, int line, String text) {
    List<String> changed = new ArrayList<>(texts);
    changed.set(line, text);
    return changed;
  }

  @Test
  void amplifier_textsToRecordToTexts_areTheSame() {
    assertEquals(AMPLIFIER, AmplifierForm.texts(good(AmplifierForm.read(AMPLIFIER))));
  }

  @Test
  void bench_textsToRecordToTexts_areTheSame() {
    assertEquals(BENCH, BenchForm.texts(good(BenchForm.read(BENCH))));
  }

  @Test
  void lead_isTypedInFeet_inCladAluminium_withItsInsulation_andOughtsAsWritten() {
    String typed = "plus AWG 00 6 ft 105 C; minus 4 ga 5' cca x2; tail 25 mm2 1.5 m cca 90 °C";
    List<Lead> leads = good(BenchForm.read(with(BENCH, 2, typed))).leads();
    assertEquals(new Lead.Awg(-1), leads.get(0).gauge());
    assertEquals(1.8288, leads.get(0).metres(), 1e-12);
    assertEquals(OptionalDouble.of(105), leads.get(0).insulationCelsius());
    assertEquals(new Lead.Awg(4), leads.get(1).gauge());
    assertEquals(2, leads.get(1).parallel());
    assertEquals(Metal.CCA, leads.get(1).metal());
    assertEquals(OptionalDouble.of(90), leads.get(2).insulationCelsius());
    List<String> again = BenchForm.texts(good(BenchForm.read(with(BENCH, 2, typed))));
    assertEquals(leads, good(BenchForm.read(again)).leads());
    assertTrue(again.get(2).startsWith("plus AWG 2/0 6 ft 105 C x1"), again.get(2));
  }

  @Test
  void classNobodyKnows_isRefusedWithTheKnownOnes() {
    FormRead.Bad<?> bad = bad(AmplifierForm.read(with(AMPLIFIER, 4, "XR")));
    assertEquals(4, bad.line());
    assertTrue(bad.sentence().contains("A, AB, B, D, G, H or T"), bad.sentence());
    assertEquals(
        Optional.of("class d"),
        good(AmplifierForm.read(with(AMPLIFIER, 4, "class d"))).amplifierClass());
  }

  @Test
  void battery_isTypedForASupply() {
    String typed = "battery 12.7 V 5 mohm 60 Ah; battery 12.6 V 600 CCA";
    Bench bench = good(BenchForm.read(with(BENCH, 1, typed)));
    assertEquals(440, bench.supplies().get(0).amps(), 1e-9);
    assertEquals(typed, BenchForm.texts(bench).get(1));
    FormRead.Bad<?> mixed =
        bad(BenchForm.read(with(BENCH, 1, "13.8 V 60 A; battery 12.7 V 5 mohm")));
    assertTrue(mixed.sentence().contains("a battery beside a supply"), mixed.sentence());
    assertEquals(1, mixed.line());
  }

  @Test
  void practiceAmplifiersAndBenches_comeBackFromTheirTexts() {
    for (long seed = 1; seed <= 100; seed++) {
      Amplifier amplifier = PracticeRig.ofSeed(seed).amplifier().printed();
      assertEquals(amplifier, good(AmplifierForm.read(AmplifierForm.texts(amplifier))));
      Bench bench = PracticeRig.ofSeed(seed).bench().described();
      List<String> texts = BenchForm.texts(bench);
      assertEquals(texts, BenchForm.texts(good(BenchForm.read(texts))), "seed " + seed);
      assertEquals(bench.meters(), good(BenchForm.read(texts)).meters());
      assertEquals(bench.leads(), good(BenchForm.read(texts)).leads());
    }
  }

  @Test
  void loadTakenUpAgain_keepsItsUnseenParts_onlyWhereItIsTheSame() {
    LoadResistor seen = new LoadResistor("oil bath", 4, 5, 100, 4, OptionalDouble.of(50));
    Bench before = benchOf(seen);
    Bench typed = good(BenchForm.read(with(BENCH, 4, "4 ohm 5 % 100 W x2")));
    LoadResistor kept = UnseenParts.kept(Optional.of(before), typed).loads().get(0);
    assertEquals(new LoadResistor("oil bath", 4, 5, 100, 2, OptionalDouble.of(50)), kept);
    for (String other : List.of("2 ohm 5 % 100 W", "4 ohm 1 % 100 W", "4 ohm 5 % 50 W")) {
      Bench changed = good(BenchForm.read(with(BENCH, 4, other)));
      assertEquals(changed.loads(), UnseenParts.kept(Optional.of(before), changed).loads(), other);
    }
  }

  @Test
  void mount_isTypedBehindTheResistor() {
    String loads = "4 ohm 5 % 100 W x4 heatsink 0.5 K/W; 2 ohm 5 % 50 W x1 free-air; 1 ohm 5 % 9 W";
    Bench bench = good(BenchForm.read(with(BENCH, 4, loads)));
    assertEquals(
        List.of(
            Optional.of(Mount.heatsink(0.5)),
            Optional.of(Mount.of(Mount.Kind.FREE_AIR)),
            Optional.empty()),
        bench.loads().stream().map(LoadResistor::mount).toList());
    assertEquals(loads + " x1", BenchForm.texts(bench).get(4));
    Bench retyped = good(BenchForm.read(with(BENCH, 4, "4 ohm 5 % 100 W x4 oil")));
    assertEquals(
        Optional.of(Mount.of(Mount.Kind.OIL)),
        UnseenParts.kept(Optional.of(bench), retyped).loads().get(0).mount());
  }

  private static Bench benchOf(LoadResistor load) {
    Bench b = good(BenchForm.read(BENCH));
    return new Bench(
        b.name(), b.supplies(), b.leads(), b.fuseAmps(), List.of(load), b.meters(), 0.9);
  }

  @Test
  void meterOfDistortion_isTypedWithWhatItCounts() {
    String meters =
        "box thdPercent 5 % 1 digits 0.01 20-20000 Hz thd+n to 80000 Hz;"
            + " old box thdPercent 5 % 1 digits 0.01 thd-r";
    Bench bench = good(BenchForm.read(with(BENCH, 5, meters)));
    Meter box = bench.meters().get(0);
    assertEquals(Optional.of(ThdKind.THD_N), box.thdKind());
    assertEquals(OptionalDouble.of(80_000), box.bandwidthHertz());
    assertEquals(Optional.of(ThdKind.THD_R), bench.meters().get(1).thdKind());
    assertEquals(OptionalDouble.empty(), bench.meters().get(1).bandwidthHertz());
    assertEquals(meters, BenchForm.texts(bench).get(5));
    FormRead.Bad<?> wrong =
        bad(BenchForm.read(with(BENCH, 5, "DMM outputVolts 1 % 2 digits 0.01 thd-f")));
    assertTrue(wrong.toString().contains("Only a meter that reads thdPercent"), wrong.toString());
  }

  @Test
  void benchTakenUpAgain_keepsAConnection_onlyForTheSameReading() {
    Connection wire =
        new Connection(new Connection.Tcp("127.0.0.1", 5025), "MEAS:VOLT:AC?", "V", 1, 2000);
    String meters = "DMM outputVolts 1 % 2 digits 0.01; DMM supplyAmps 1 % 2 digits 0.01";
    Bench typed = good(BenchForm.read(with(BENCH, 5, meters)));
    Bench before =
        new Bench(
            typed.name(),
            typed.supplies(),
            typed.leads(),
            typed.fuseAmps(),
            typed.loads(),
            List.of(typed.meters().get(0).connectedBy(wire)),
            0.9);
    List<Meter> kept = UnseenParts.kept(Optional.of(before), typed).meters();
    assertEquals(Optional.of(wire), kept.get(0).connection());
    assertEquals(Optional.empty(), kept.get(1).connection(), "the amperes have no wire");
  }

  @Test
  void benchTakenUpAgain_losesNothingTheFormDoesNotShow() {
    Bench practice = PracticeRig.ofSeed(1).bench().described();
    Connection wire =
        new Connection(new Connection.Tcp("127.0.0.1", 5025), "MEAS:VOLT:AC?", "V", 1, 2000);
    List<Meter> meters = practice.meters().stream().map(m -> m.connectedBy(wire)).toList();
    Bench before =
        new Bench(
            practice.name(),
            practice.supplies(),
            practice.leads(),
            practice.fuseAmps(),
            practice.loads(),
            meters,
            0.7);
    Bench typed = good(BenchForm.read(BenchForm.texts(before)));
    assertEquals(before, UnseenParts.kept(Optional.of(before), typed));
    assertEquals(typed, UnseenParts.kept(Optional.empty(), typed));
    Bench other = good(BenchForm.read(BENCH));
    Bench mixed = UnseenParts.kept(Optional.of(before), other);
    assertEquals(0.7, mixed.usableFraction());
    assertEquals(other.loads(), mixed.loads());
    assertEquals(Optional.empty(), mixed.meters().get(0).connection(), "DMM is another meter");
    assertEquals(Optional.of(wire), mixed.meters().get(1).connection(), "DC clamp is still there");
  }

  @Test
  void onlyTheNames_areNeeded() {
    Amplifier amplifier =
        good(AmplifierForm.read(with(with(AmplifierForm.blank(), 0, "Verrin"), 1, "V1")));
    assertEquals(Amplifier.named("Verrin", "V1"), amplifier);
    assertEquals(
        "South bench", good(BenchForm.read(with(BenchForm.blank(), 0, "South bench"))).name());
    assertEquals(0, bad(AmplifierForm.read(AmplifierForm.blank())).line());
    assertEquals(0, bad(BenchForm.read(BenchForm.blank())).line());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|''",
        "1|' '",
        "3|19x4",
        "3|1994.5",
        "3|3",
        "5|0",
        "5|two",
        "5|200",
        "6|stereo 4",
        "6|mono 4 60 W",
        "6|stereo x 60 W",
        "6|stereo 4 60 A",
        "6|stereo 4 -60 W",
        "6|stereo 4 7000000000 W",
        "6|stereo 4 60 W at 0.5 V",
        "7|4 V",
        "7|0.0001",
        "8|wide",
        "9|30 A 30 V",
        "9|30,30",
        "9|30 0.01",
        "9|30;thirty",
        "10|maybe"
      })
  void amplifierLine_thatIsWrong_isTheOneNamed(int line, String text) {
    assertEquals(line, bad(AmplifierForm.read(with(AMPLIFIER, line, text))).line());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|''",
        "1|13.8 V",
        "1|13.8 A 60 V",
        "1|13.8 V 60000000 A",
        "2|plus AWG 4",
        "2|plus 25 1.5 m",
        "2|plus AWG 44 1.5 m",
        "2|plus AWG 4 5000 m",
        "3|many",
        "3|0.01",
        "4|4 ohm 100 W",
        "4|4 ohm 5 % 100 W x99999",
        "4|8000000000 ohm 5 % 100 W",
        "4|4 ohm 101 % 100 W",
        "5|DMM volts 0.8 % 3 digits 0.01",
        "5|DMM outputVolts 101 % 3 digits 0.01",
        "5|DMM outputVolts 0.8 % 3 digits",
        "5|DMM outputVolts 0.8 % 3 digits 0.01 45 Hz"
      })
  void benchLine_thatIsWrong_isTheOneNamed(int line, String text) {
    assertEquals(line, bad(BenchForm.read(with(BENCH, line, text))).line());
  }

  /** What is typed into a line, and what is said of it. */
  private record Wrong(int line, String text) {}

  private static List<Wrong> wrong(int line, String... texts) {
    return Stream.of(texts).map(text -> new Wrong(line, text)).toList();
  }

  private static String table(
      List<String> labels, List<List<Wrong>> all, BiFunction<Integer, String, String> told) {
    StringBuilder table = new StringBuilder();
    for (List<Wrong> lines : all) {
      table.append(labels.get(lines.get(0).line())).append('\n');
      for (Wrong w : lines) {
        table.append(String.format("    %-30s  %s%n", w.text(), told.apply(w.line(), w.text())));
      }
    }
    return table.toString();
  }

  @Test
  void amplifierLines_thatAreWrong_getTheirSentences() throws IOException {
    List<List<Wrong>> all =
        List.of(
            wrong(0, "", " "),
            wrong(1, ""),
            wrong(3, "0", "-1994", "1994.5", "1", "9999", "10000", "19x4", "3", "1 V"),
            wrong(5, "0", "1.5", "65", "9999", "10000", "two", "2 A"),
            wrong(
                6,
                "stereo 4",
                "mono 4 60 W",
                "stereo x 60 W",
                "stereo 4 x W",
                "stereo 4 60 A",
                "stereo 4 0 W",
                "stereo 0 60 W",
                "stereo 4 60 W at 1,2,3 V",
                "stereo 4 60 W at 0.5 V",
                "stereo 4 60 W 1.2.3 %",
                "bridged 4 180 W; stereo 4",
                "stereo 4 7000000000 W"),
            wrong(7, "4 V", "0", "0.0001", "wide", "100000000"),
            wrong(8, "4 W", "0", "0.0001", "wide", "100000000"),
            wrong(9, "30 A 30 V", "30,30", "30,300", "30 0.01", "30;thirty", "30 30000"),
            wrong(10, "maybe", "y", "true"));
    String table =
        table(
            AmplifierForm.LABELS,
            all,
            (line, text) -> sentence(line, AmplifierForm.read(with(AMPLIFIER, line, text))));
    Snapshots.holds("forms/amplifier-wrong", table);
  }

  @Test
  void benchLines_thatAreWrong_getTheirSentences() throws IOException {
    List<List<Wrong>> all =
        List.of(
            wrong(0, "", " "),
            wrong(
                1,
                "13.8 V",
                "x V 60 A",
                "13.8 V x A",
                "13.8 A 60 V",
                "0 V 60 A",
                "13.8 V 60000000 A"),
            wrong(
                2,
                "plus AWG 4",
                "plus 25 1.5 m",
                "plus x mm2 1.5 m",
                "plus AWG 4 x m",
                "plus AWG 44 1.5 m",
                "plus AWG 12345 1.5 m",
                "plus AWG 4 5000 m",
                "plus AWG 4 1.5 m x0",
                "plus AWG 4 1.5 m x9999",
                "plus AWG 4 1.5 m x10000"),
            wrong(3, "many", "0.01", "0", "100 V"),
            wrong(
                4,
                "4 ohm 100 W",
                "x ohm 5 % 100 W",
                "4 ohm x % 100 W",
                "4 ohm 5 % x W",
                "4 ohm 101 % 100 W",
                "4 ohm 5 % 100 W x99999",
                "8000000000 ohm 5 % 100 W"),
            wrong(
                5,
                "DMM volts 0.8 % 3 digits 0.01",
                "DMM outputVolts x % 3 digits 0.01",
                "DMM outputVolts 0.8 % x digits 0.01",
                "DMM outputVolts 0.8 % 3 digits x",
                "DMM outputVolts 101 % 3 digits 0.01",
                "DMM outputVolts 0.8 % 3 digits",
                "DMM outputVolts 0.8 % 3 digits 0.01 45 Hz",
                "DMM outputVolts 0.8 % 3 digits 0.01 4.5.5-1000 Hz",
                "DMM outputVolts 0.8 % 3 digits 0.01 45-1.0.0 Hz",
                "DMM outputVolts 0.8 % 3 digits 0.01 1000-45 Hz"));
    String table =
        table(
            BenchForm.LABELS,
            all,
            (line, text) -> sentence(line, BenchForm.read(with(BENCH, line, text))));
    Snapshots.holds("forms/bench-wrong", table);
  }

  private static String sentence(int line, FormRead<?> read) {
    FormRead.Bad<?> bad = bad(read);
    assertEquals(line, bad.line(), bad.sentence());
    return bad.sentence();
  }

  @ParameterizedTest
  @CsvSource({"0,0", "00,-1", "000,-2", "0000,-3", "4/0,-3", "1/0,0", "4,4", "18,18"})
  void gauge_ofSeveralNoughts_isAThickOne(String typed, int number) {
    Bench bench = good(BenchForm.read(with(BENCH, 2, "plus AWG " + typed + " 1.5 m")));
    assertEquals(new Lead.Awg(number), bench.leads().get(0).gauge());
  }

  @Test
  void whateverAFormTakes_canBeReadAgain() {
    String endless = "n".repeat(2000);
    assertEquals(1, bad(AmplifierForm.read(with(AMPLIFIER, 1, endless))).line());
    assertEquals(0, bad(BenchForm.read(with(BENCH, 0, endless))).line());
    Random random = new Random(7);
    for (int i = 0; i < 2_000; i++) {
      String number = new BigDecimal(Math.exp(40 * (random.nextDouble() - 0.5))).toPlainString();
      String digits = number.substring(0, Math.min(30, number.length()));
      int line = 3 + random.nextInt(AMPLIFIER.size() - 3);
      if (AmplifierForm.read(with(AMPLIFIER, line, digits)) instanceof FormRead.Good<Amplifier> a) {
        assertEquals(List.of(), BenchFiles.AMPLIFIER.faults(a.value()), digits);
      }
      if (BenchForm.read(with(BENCH, 3, digits)) instanceof FormRead.Good<Bench> b) {
        assertEquals(List.of(), BenchFiles.BENCH.faults(b.value()), digits);
      }
    }
  }

  @Test
  void fuses_withADecimalComma_areTaken() {
    assertEquals(
        List.of(7.5, 30.0), good(AmplifierForm.read(with(AMPLIFIER, 9, "7,5 30"))).fuses());
  }

  @Test
  void impossibleNumbers_areRefusedWithASentence_neverThrown() {
    for (String text : List.of("0 V 60 A", "-1 V 60 A", "1e400 V 60 A", "NaN V 60 A")) {
      assertTrue(bad(BenchForm.read(with(BENCH, 1, text))).sentence().endsWith("."), text);
    }
    assertTrue(bad(BenchForm.read(with(BENCH, 4, "4 ohm 5 % 100 W x0"))).sentence().endsWith("."));
    assertTrue(bad(AmplifierForm.read(with(AMPLIFIER, 7, "0"))).sentence().endsWith("."));
  }

  @Test
  void randomLines_neverThrow() {
    Random random = new Random(99);
    String letters = "stereo bridged 4 60 W V % ; ohm AWG mm2 x2 m Hz-1/0,.\ud83d\u0000é";
    for (int i = 0; i < 20_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(40); n > 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      AmplifierForm.read(with(AMPLIFIER, random.nextInt(AMPLIFIER.size()), text.toString()));
      BenchForm.read(with(BENCH, random.nextInt(BENCH.size()), text.toString()));
    }
    assertEquals(BENCH, BenchForm.texts(good(BenchForm.read(BENCH))));
  }
}
