package loadwalk.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.bench.Mode;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import loadwalk.text.Sha256;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SequenceReaderTest {
  private static final String HEAD =
      "{\"format\":\"loadwalk-sequence/1\",\"name\":\"mine\",\"title\":\"Mine\","
          + "\"tone\":{\"hertz\":40},\"limit\":{\"thdPercent\":1},\"supplyVolts\":13.8,\n"
          + "\"steps\":[";

  @ParameterizedTest
  @ValueSource(
      strings = {"full-walk", "stereo-only", "bridged-only", "rated-conditions", "low-ohm-recheck"})
  void stockSequence_isReadFromTheClasspath_andSurvivesBeingWritten(String name)
      throws IOException {
    Sequence sequence = stock(name);
    assertEquals(name, sequence.name());
    assertEquals(64, sequence.contentHash().length());
    Sequence again =
        SequenceReader.read(SequenceReader.FILE.text(sequence), "again").found().orElseThrow();
    assertEquals(sequence.steps(), again.steps());
    assertEquals(sequence.toneHertz(), again.toneHertz());
    assertEquals(sequence.limitThdPercent(), again.limitThdPercent());
    assertEquals(sequence.supplyVolts(), again.supplyVolts());
    assertEquals(sequence.title(), again.title());
  }

  @Test
  void fullWalk_isPlannedWithItsSecondWarmUpAndRecheck() throws IOException {
    assertEquals(
        List.of(
            "warm-up",
            "idle",
            "stereo-4",
            "stereo-2",
            "stereo-1",
            "bridged-4",
            "bridged-2",
            "bridged-1",
            "bridged-0.5",
            "open-load",
            "warm-up#2",
            "recheck"),
        ids(stock("full-walk")));
    PlannedStep last = PlannedStep.of(stock("full-walk")).get(11);
    assertEquals(Recheck.HEAVIEST, last.step().repeats().orElseThrow());
    PlannedStep second = PlannedStep.of(stock("full-walk")).get(10);
    assertEquals(new WarmUp(15, 0.5, 0.5), second.step());
  }

  @Test
  void repeats_areNumbered_andRecheckNamesThem() {
    Sequence sequence =
        good(
            "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},"
                + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4.0},"
                + "{\"do\":\"recheck\",\"of\":[\"stereo-4#2\",\"stereo-4\"]},"
                + "{\"do\":\"recheck\",\"of\":[\"heaviest\"],\"afterWarmMinutes\":3}");
    assertEquals(
        List.of("stereo-4", "stereo-4#2", "recheck", "recheck#2", "warm-up", "recheck#3"),
        ids(sequence));
    assertEquals(new WarmUp(3, 0.5, 0.5), PlannedStep.of(sequence).get(4).step());
  }

  @Test
  void read_ofEveryKindOfStep_keepsItsNumbers() {
    Sequence sequence =
        good(
            "{\"do\":\"warm-up\",\"minutes\":2,\"powerFraction\":0.25},{\"do\":\"idle\"},"
                + "{\"do\":\"measure\",\"mode\":\"bridged\",\"ohms\":0.5,\"optional\":true},"
                + "{\"do\":\"open-load\"},{\"do\":\"music\",\"minutes\":10},"
                + "{\"do\":\"note\",\"text\":\"one\\ntwo\"}");
    assertEquals(
        List.of(
            new WarmUp(2, 0.25, 0.5),
            new Idle(),
            new Measure(Mode.BRIDGED, 0.5, true),
            new OpenLoad(),
            new Music(10),
            new Note("one\ntwo")),
        sequence.steps());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohm\":4}|key «ohms» is missing",
        "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":0}|«ohms» must be between 0.05 and 1000",
        "{\"do\":\"measure\",\"mode\":\"mono\",\"ohms\":4}|«mode» cannot be «mono»",
        "{\"do\":\"mesure\",\"mode\":\"stereo\",\"ohms\":4}|nearest known word: «measure»",
        "{\"do\":\"warm-up\",\"minutes\":-1}|«minutes» must be between 0.01 and 600",
        "{\"do\":\"open-load\"}|needs a measure step before it",
        "{\"do\":\"recheck\",\"of\":[\"heaviest\"]}|needs a measure step before it",
        "{\"do\":\"recheck\"}|key «of» is missing",
        "{\"do\":\"note\"}|key «text» is missing",
        "{}|key «do» is missing",
        "4|each of «steps» must be an object, not a number",
        "|«steps» must have at least one step"
      })
  void read_ofAFaultyStep_saysWhatIsWrong(String step, String part) {
    List<Fault> faults = bad(HEAD + (step == null ? "" : step) + "]}");
    assertTrue(faults.get(0).sentence().contains(part), faults.toString());
  }

  @Test
  void read_ofARecheckOfALaterStep_namesWhatItCanBe() {
    List<Fault> faults =
        bad(
            HEAD
                + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":4},\n"
                + "{\"do\":\"recheck\",\"of\":[\"stereo-2\"]},\n"
                + "{\"do\":\"measure\",\"mode\":\"stereo\",\"ohms\":2}]}");
    assertEquals(
        "mine.json:3:22: no measure step «stereo-2» comes before this one; name «heaviest» or"
            + " «stereo-4»",
        faults.get(0).text());
  }

  @Test
  void read_ofManyFaults_reportsAllInOneGo() {
    List<Fault> faults =
        bad(
            "{\"format\":\"loadwalk-sequence/1\",\n\"name\":\"My Walk\",\n\"tone\":{\"herz\":40},\n"
                + "\"limit\":1,\n\"steps\":[{\"do\":\"idle\",\"ohm\":4}]}");
    assertEquals(
        List.of(
            "mine.json:2:8: «name» must be 1 to 64 small letters, digits and hyphens, no hyphen"
                + " first",
            "mine.json:1:1: key «title» is missing",
            "mine.json:3:8: key «hertz» is missing",
            "mine.json:3:9: unknown key «herz»; nearest known key: «hertz»",
            "mine.json:4:9: «limit» must be an object, not a number",
            "mine.json:1:1: key «supplyVolts» is missing",
            "mine.json:5:23: unknown key «ohm»; nearest known key: «do»"),
        faults.stream().map(Fault::text).toList());
  }

  @Test
  void read_ofANewerFormat_saysOnlyThat() {
    List<Fault> faults = bad("{\"format\":\"loadwalk-sequence/2\",\"new\":1}");
    assertEquals(1, faults.size());
    assertTrue(faults.get(0).sentence().contains("use a newer Loadwalk"), faults.toString());
  }

  /** The digest of "abc" is the published example of FIPS 180-4 (from memory). */
  @Test
  void contentHash_isTheSha256OfTheBytes() {
    String text = HEAD + "{\"do\":\"idle\"}]}";
    Sequence first = SequenceReader.read(text, "a").found().orElseThrow();
    Sequence same =
        SequenceReader.read(text.getBytes(StandardCharsets.UTF_8), "b").found().orElseThrow();
    Sequence other = SequenceReader.read(text + "\n", "a").found().orElseThrow();
    assertEquals(first.contentHash(), same.contentHash());
    assertTrue(!first.contentHash().equals(other.contentHash()));
    assertEquals(
        "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        Sha256.of("abc".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void sequenceOfAnotherName_thanItsFile_isRefusedWhereItIsFoundByIt() {
    byte[] bytes = (HEAD + "{\"do\":\"idle\"}]}").getBytes(StandardCharsets.UTF_8);
    String name = SequenceReader.read(bytes, "x.json").found().orElseThrow().name();
    assertTrue(SequenceReader.readNamed(bytes, name + ".json", name).found().isPresent());
    Read<Sequence> other = SequenceReader.readNamed(bytes, "other.json", "other");
    assertEquals(
        "«name» is «" + name + "» but the file is named «other»; they must match",
        other.faults().get(0).sentence());
    assertEquals(1, other.faults().size());
  }

  private static Sequence stock(String name) throws IOException {
    String path = "/loadwalk/sequences/" + name + ".json";
    try (InputStream in = SequenceReaderTest.class.getResourceAsStream(path)) {
      assertNotNull(in, path);
      return SequenceReader.read(in.readAllBytes(), path).found().orElseThrow();
    }
  }

  private static Sequence good(String steps) {
    Read<Sequence> read = SequenceReader.read(HEAD + steps + "]}", "mine.json");
    assertEquals(List.of(), read.faults());
    return read.found().orElseThrow();
  }

  private static List<Fault> bad(String text) {
    Read<Sequence> read = SequenceReader.read(text, "mine.json");
    assertTrue(read.found().isEmpty(), text);
    return read.faults();
  }

  private static List<String> ids(Sequence sequence) {
    return PlannedStep.of(sequence).stream().map(PlannedStep::id).toList();
  }
}
