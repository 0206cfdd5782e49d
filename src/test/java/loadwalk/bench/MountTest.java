package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import loadwalk.json.Fault;
import loadwalk.json.Read;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a load resistor is mounted, as a bench file says it. */
class MountTest {
  private static Read<Bench> read(String keys) {
    String file =
        "{\"format\":\"loadwalk-bench/1\",\n\"loads\":[{\"ohms\":4,\"watts\":100"
            + keys.replace('\'', '"')
            + "}]}";
    return BenchFiles.BENCH.read(file.getBytes(StandardCharsets.UTF_8), "b.json");
  }

  private static Optional<Mount> mount(String keys) {
    return read(keys).found().orElseThrow().loads().get(0).mount();
  }

  @Test
  void file_saysHowAResistorIsMounted_orNothing() {
    assertEquals(Optional.empty(), mount(""));
    Optional<Mount> sink = mount(",'mount':'heatsink','kelvinPerWatt':0.5");
    assertEquals(Optional.of(Mount.heatsink(0.5)), sink);
    assertEquals("on a heatsink of 0.5 K/W", sink.orElseThrow().words());
    for (String word : List.of("metal", "free-air", "fan", "oil")) {
      Mount found = mount(",'mount':'" + word + "'").orElseThrow();
      assertEquals(Mount.of(Mount.Kind.ofWord(word)), found);
    }
  }

  @Test
  void file_comesBackAsItWasWritten() {
    for (String keys : List.of("", ",'mount':'oil'", ",'mount':'heatsink','kelvinPerWatt':2")) {
      Bench bench = read(keys).found().orElseThrow();
      byte[] written = BenchFiles.BENCH.text(bench).getBytes(StandardCharsets.UTF_8);
      assertEquals(Optional.of(bench), BenchFiles.BENCH.read(written, "b.json").found());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        ",'mount':'heatsink'|mount|a heatsink needs «kelvinPerWatt»",
        ",'mount':'fan','kelvinPerWatt':1|kelvinPerWatt|belongs to the mount «heatsink»",
        ",'kelvinPerWatt':1|kelvinPerWatt|belongs to the mount «heatsink»",
        ",'mount':'heatsnk','kelvinPerWatt':1|mount|heatsink",
        ",'mount':'heatsink','kelvinPerWatt':0|kelvinPerWatt|0.001"
      })
  void fault_namesLineColumnAndKey(String keys, String key, String words) {
    List<Fault> faults = read(keys).faults();
    assertEquals(1, faults.size(), faults.toString());
    Fault fault = faults.get(0);
    assertEquals(2, fault.line());
    assertEquals(key, fault.key());
    assertTrue(fault.column() > 20, fault.text());
    assertTrue(fault.sentence().contains(words), fault.text());
  }
}
