package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import loadwalk.json.Fault;
import loadwalk.json.Faults;
import loadwalk.json.JsonText;
import loadwalk.json.Node;
import loadwalk.json.Read;
import org.junit.jupiter.api.Test;

class AmplifierFileTest {
  private static final String FULL =
      "{\"format\":\"loadwalk-amplifier/1\",\"maker\":\"Halvorsen & Pike\",\"model\":\"HP-275\","
          + "\"serial\":\"0042\",\"year\":1994,\"class\":\"AB\",\"channels\":2,"
          + "\"ratings\":[{\"mode\":\"stereo\",\"ohms\":4,\"watts\":75,\"supplyVolts\":12,"
          + "\"thdPercent\":0.1},{\"mode\":\"bridged\",\"ohms\":4,\"watts\":300}],"
          + "\"minimumOhms\":{\"stereo\":0.5,\"bridged\":1},\"fuses\":[30,30],"
          + "\"regulated\":true}";

  @Test
  void read_ofAFullFile_givesEverything() {
    Amplifier amplifier = read(FULL).found().orElseThrow();
    assertEquals(
        new Amplifier(
            "Halvorsen & Pike",
            "HP-275",
            Optional.of("0042"),
            OptionalInt.of(1994),
            Optional.of("AB"),
            OptionalInt.of(2),
            List.of(
                new Rating(Mode.STEREO, 4, 75, OptionalDouble.of(12), OptionalDouble.of(0.1)),
                new Rating(Mode.BRIDGED, 4, 300, OptionalDouble.empty(), OptionalDouble.empty())),
            OptionalDouble.of(0.5),
            OptionalDouble.of(1),
            List.of(30.0, 30.0),
            Optional.of(true)),
        amplifier);
    assertEquals(amplifier, read(BenchFiles.AMPLIFIER.text(amplifier)).found().orElseThrow());
  }

  @Test
  void embedded_withMakerAndModelOnly_isEnough() {
    Faults faults = new Faults("line");
    Node node =
        JsonText.strict("line")
            .read("{\"maker\":\"Brightmoor\",\"model\":\"B2\",\"regulated\":null}")
            .found()
            .orElseThrow();
    Amplifier amplifier = BenchFiles.AMPLIFIER.embedded(node, faults).orElseThrow();
    assertEquals(Amplifier.named("Brightmoor", "B2"), amplifier);
    assertEquals(amplifier, read(BenchFiles.AMPLIFIER.text(amplifier)).found().orElseThrow());
    assertTrue(faults.isEmpty());
  }

  @Test
  void read_ofManyFaults_reportsAllInOneGo() {
    String text =
        "{\"format\":\"loadwalk-amplifier/1\",\n\"maker\":\"\",\n\"modell\":\"B2\",\n"
            + "\"year\":94,\n\"ratings\":[{\"mode\":\"stereo\",\"ohm\":4,\"watts\":0}],\n"
            + "\"minimumOhms\":{\"stereo\":-1},\n\"fuses\":30,\n\"regulated\":\"yes\"}";
    assertEquals(
        List.of(
            "amp.json:2:9: «maker» must not be empty",
            "amp.json:1:1: key «model» is missing",
            "amp.json:4:8: «year» must be between 1900 and 2200, not 94",
            "amp.json:5:12: key «ohms» is missing",
            "amp.json:5:45: «watts» must be between 0.001 and 1000000, not 0",
            "amp.json:5:29: unknown key «ohm»; nearest known key: «ohms»",
            "amp.json:6:25: «stereo» must be between 0.01 and 10000, not -1",
            "amp.json:7:9: «fuses» must be a list, not a number",
            "amp.json:8:13: «regulated» must be true or false, not text",
            "amp.json:3:1: unknown key «modell»; nearest known key: «model»"),
        read(text).faults().stream().map(Fault::text).toList());
  }

  @Test
  void read_withoutFormat_asksForIt() {
    List<Fault> faults = read("{\"maker\":\"Brightmoor\",\"model\":\"B2\"}").faults();
    assertEquals(1, faults.size());
    assertEquals(
        "key «format» is missing; add \"format\": \"loadwalk-amplifier/1\"",
        faults.get(0).sentence());
  }

  private static Read<Amplifier> read(String text) {
    return BenchFiles.AMPLIFIER.read(text.getBytes(StandardCharsets.UTF_8), "amp.json");
  }
}
