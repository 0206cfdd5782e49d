package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import loadwalk.json.Fault;
import loadwalk.json.Faults;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BenchFileTest {
  private static final String FULL =
      "{\"format\":\"loadwalk-bench/1\",\"name\":\"North bench\","
          + "\"supplies\":[{\"volts\":13.8,\"amps\":100},{\"volts\":13.8,\"amps\":100}],"
          + "\"leads\":[{\"label\":\"plus\",\"awg\":\"1/0\",\"metres\":1.5,\"parallel\":2},"
          + "{\"label\":\"minus\",\"mm2\":50,\"metres\":1.5},"
          + "{\"label\":\"tail\",\"awg\":4,\"metres\":0.3}],"
          + "\"fuse\":{\"amps\":200},"
          + "\"loads\":[{\"label\":\"wirewound\",\"ohms\":1,\"tolerancePercent\":1,\"watts\":300,"
          + "\"count\":8,\"ppmPerKelvin\":50}],"
          + "\"meters\":[{\"label\":\"bench meter\",\"reads\":\"outputVolts\",\"percent\":0.5,"
          + "\"digits\":3,\"resolution\":0.01,\"hertz\":[45,1000]}],\"usableFraction\":0.8}";

  @Test
  void read_ofAFullFile_givesEverything() {
    Bench bench = read(FULL).found().orElseThrow();
    assertEquals(160, bench.usableAmps().orElseThrow(), 1e-9);
    assertEquals(
        List.of(
            new Lead("plus", new Lead.Awg(0), 1.5, 2),
            new Lead("minus", new Lead.Mm2(50), 1.5, 1),
            new Lead("tail", new Lead.Awg(4), 0.3, 1)),
        bench.leads());
    assertEquals(OptionalDouble.of(200), bench.fuseAmps());
    assertEquals(
        new LoadResistor("wirewound", 1, 1, 300, 8, OptionalDouble.of(50)), bench.loads().get(0));
    assertEquals(
        new Meter(
            "bench meter",
            ReadingId.OUTPUT_VOLTS,
            0.5,
            3,
            0.01,
            Optional.of(new Meter.Band(45, 1000))),
        bench.meters().get(0));
    String written = BenchFiles.BENCH.text(bench);
    assertEquals(bench, read(written).found().orElseThrow());
    List<String> sizes =
        Pattern.compile("\"(awg|mm2)\"\\s*:\\s*[^,\\s]+")
            .matcher(written)
            .results()
            .map(found -> found.group().replaceAll("\\s", ""))
            .toList();
    assertEquals(List.of("\"awg\":\"1/0\"", "\"mm2\":50", "\"awg\":4"), sizes, "as on the reel");
  }

  @ParameterizedTest
  @CsvSource({"00, -1", "000, -2", "0000, -3", "2/0, -1", "0, 0", "1/0, 0", "4/0, -3", "10, 10"})
  void awg_asPeopleWriteIt_isReadAsSuch(String written, int number) {
    String lead = "\"leads\":[{\"awg\":\"" + written + "\",\"feet\":6}]}";
    Bench bench = read("{\"format\":\"loadwalk-bench/1\"," + lead).found().orElseThrow();
    assertEquals(new Lead.Awg(number), bench.leads().get(0).gauge());
    assertEquals(1.8288, bench.leads().get(0).metres(), 1e-12, "6 ft, 0.3048 m each");
    String again = BenchFiles.BENCH.text(bench);
    assertEquals(bench, read(again).found().orElseThrow());
    assertTrue(again.contains("\"feet\""), again);
  }

  @Test
  void lead_saysItsMetalAndInsulation_andNothingWhereNothingIsSaid() {
    String leads =
        "\"leads\":[{\"awg\":4,\"metres\":1,\"metal\":\"cca\",\"insulationCelsius\":105},"
            + "{\"awg\":4,\"metres\":1,\"metal\":\"copper\"}]}";
    Bench bench = read("{\"format\":\"loadwalk-bench/1\"," + leads).found().orElseThrow();
    Lead plain = new Lead("lead", new Lead.Awg(4), 1, 1);
    assertEquals(List.of(plain.of(Metal.CCA).insulatedFor(105), plain), bench.leads());
    String again = BenchFiles.BENCH.text(bench);
    assertEquals(bench, read(again).found().orElseThrow());
    assertEquals(again.indexOf("metal"), again.lastIndexOf("metal"), "copper goes without saying");
  }

  @Test
  void battery_standsForASupply_andIsWrittenAsSuch() {
    String supplies =
        "\"supplies\":[{\"openVolts\":12.7,\"milliohms\":5,\"ampereHours\":60},"
            + "{\"openVolts\":12.6,\"coldCrankingAmps\":600}]}";
    Bench bench = read("{\"format\":\"loadwalk-bench/1\"," + supplies).found().orElseThrow();
    Battery first = new Battery(12.7, new Battery.Milliohms(5), OptionalDouble.of(60));
    Battery second = new Battery(12.6, new Battery.ColdCranking(600), OptionalDouble.empty());
    assertEquals(List.of(Supply.of(first), Supply.of(second)), bench.supplies());
    assertEquals(bench, read(BenchFiles.BENCH.text(bench)).found().orElseThrow());
  }

  @Test
  void meterOfDistortion_saysWhatItsFigureCounts() {
    String text =
        "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"reads\":\"thdPercent\",\"percent\":5,"
            + "\"thdKind\":\"thd+n\",\"bandwidthHertz\":80000},"
            + "{\"reads\":\"thdPercent\",\"percent\":5}]}";
    Bench bench = read(text).found().orElseThrow();
    assertEquals(Optional.of(ThdKind.THD_N), bench.meters().get(0).thdKind());
    assertEquals(OptionalDouble.of(80_000), bench.meters().get(0).bandwidthHertz());
    assertEquals(Optional.empty(), bench.meters().get(1).thdKind());
    assertEquals(OptionalDouble.empty(), bench.meters().get(1).bandwidthHertz());
    assertEquals(bench, read(BenchFiles.BENCH.text(bench)).found().orElseThrow());
  }

  @Test
  void kindAndBandOfDistortion_onAnotherMeter_areRefused() {
    for (String key : List.of("\"thdKind\":\"thd-f\"", "\"bandwidthHertz\":20000")) {
      String text =
          "{\"format\":\"loadwalk-bench/1\",\"meters\":[{\"reads\":\"outputVolts\",\"percent\":1,"
              + key
              + "}]}";
      List<Fault> faults = read(text).faults();
      assertEquals(1, faults.size(), faults::toString);
      String said = faults.get(0).sentence();
      assertTrue(said.contains("belongs to a meter that reads «thdPercent»"), said);
    }
    String strange = "\"meters\":[{\"reads\":\"thdPercent\",\"percent\":1,\"thdKind\":\"thd\"}]";
    List<Fault> faults = read("{\"format\":\"loadwalk-bench/1\"," + strange + "}").faults();
    assertEquals(1, faults.size(), faults::toString);
  }

  @Test
  void embedded_withNothing_isABenchOfWhichNothingIsKnown() {
    Faults faults = new Faults("line");
    Node node = JsonText.strict("line").read("{}").found().orElseThrow();
    Bench bench = BenchFiles.BENCH.embedded(node, faults).orElseThrow();
    assertEquals(Bench.DEFAULT_USABLE_FRACTION, bench.usableFraction());
    assertTrue(bench.usableAmps().isEmpty());
    assertEquals(bench, read(BenchFiles.BENCH.text(bench)).found().orElseThrow());
  }

  @Test
  void load_withoutTolerance_isNeverTakenAsExact() {
    Bench bench =
        read("{\"format\":\"loadwalk-bench/1\",\"loads\":[{\"ohms\":4,\"watts\":50}]}")
            .found()
            .orElseThrow();
    assertEquals(5, bench.loads().get(0).tolerancePercent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"leads\":[{\"metres\":1}]|exactly one of «awg» and «mm2»",
        "\"leads\":[{\"awg\":4,\"mm2\":25,\"metres\":1}]|exactly one of «awg» and «mm2»",
        "\"leads\":[{\"awg\":\"5/0\",\"metres\":1}]|«awg» cannot be «5/0»; nearest",
        "\"leads\":[{\"awg\":4.5,\"metres\":1}]|«awg» must be a whole number",
        "\"leads\":[{\"awg\":4,\"metres\":1,\"parallel\":0}]|«parallel» must be between 1",
        "\"leads\":[{\"awg\":4}]|exactly one of «metres» and «feet»",
        "\"leads\":[{\"awg\":4,\"metres\":1,\"feet\":3}]|exactly one of «metres» and «feet»",
        "\"leads\":[{\"awg\":4,\"metres\":1,\"metal\":\"ccs\"}]|nearest known word: «cca»",
        "\"leads\":[{\"awg\":4,\"metres\":1,\"insulationCelsius\":20}]|must be between 50 and 300",
        "\"supplies\":[{\"volts\":13.8,\"amps\":9},{\"openVolts\":12.7,\"milliohms\":5}]|a battery"
            + " beside a supply cannot be forecast",
        "\"supplies\":[{\"openVolts\":12.7}]|exactly one of «milliohms» and «coldCrankingAmps»",
        "\"supplies\":[{\"openVolts\":12.7,\"milliohms\":5,\"amps\":9}]|unknown key «amps»",
        "\"supplies\":[{\"openVolts\":10,\"milliohms\":5}]|above the 10.5 V of an empty battery",
        "\"supplies\":[{\"volts\":13.8}]|key «amps» is missing",
        "\"fuse\":30|«fuse» must be an object",
        "\"fuse\":{\"amp\":30}|key «amps» is missing",
        "\"loads\":[{\"ohms\":4}]|key «watts» is missing",
        "\"meters\":[{\"reads\":\"outputVolt\",\"percent\":1}]|nearest known word: «outputVolts»",
        "\"meters\":[{\"reads\":\"supplyAmps\"}]|a meter needs «percent»",
        "\"meters\":[{\"reads\":\"supplyAmps\",\"digits\":2}]|«digits» needs a «resolution»",
        "\"meters\":[{\"reads\":\"supplyAmps\",\"percent\":1,\"hertz\":[9,1]}]|«hertz» must be"
            + " [low, high]",
        "\"meters\":[{\"reads\":\"supplyAmps\",\"percent\":1,\"hertz\":[1]}]|«hertz» must be [low,"
            + " high]",
        "\"meters\":[{\"reads\":\"supplyAmps\",\"percent\":1,\"hertz\":[1,2,3]}]|«hertz» must be"
            + " [low, high]",
        "\"usableFraction\":1.5|«usableFraction» must be between 0.01 and 1",
        "\"fuses\":1|unknown key «fuses»; nearest known key: «fuse»"
      })
  void read_ofAFaultyPart_saysWhatIsWrong(String part, String sentence) {
    List<Fault> faults = read("{\"format\":\"loadwalk-bench/1\"," + part + "}").faults();
    assertTrue(faults.stream().anyMatch(f -> f.sentence().contains(sentence)), faults.toString());
  }

  private static Read<Bench> read(String text) {
    return BenchFiles.BENCH.read(text.getBytes(StandardCharsets.UTF_8), "bench.json");
  }
}
