package loadwalk.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import loadwalk.json.Fault;
import loadwalk.json.FileShape;
import loadwalk.json.Read;
import loadwalk.json.Shaped;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The least and most that every number of the two files may be: both are read and written back, and
 * what lies just beyond is refused with a sentence that names the key and its limits.
 */
class BenchLimitsTest {
  private static final String METER = "'meters':[{'reads':'outputVolts',";
  private static final String QUERY = "'percent':1,'connection':{'query':'READ?',";

  /** The number stands where @ is. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          year | 'year':@ | 1899 | 1900 | 2200 | 2201
          channels | 'channels':@ | 0 | 1 | 64 | 65
          stereo | 'minimumOhms':{'stereo':@} | 0.0099 | 0.01 | 10000 | 10001
          bridged | 'minimumOhms':{'bridged':@} | 0.0099 | 0.01 | 10000 | 10001
          fuses | 'fuses':[@] | 0.099 | 0.1 | 10000 | 10001
          ohms | 'ratings':[{'mode':'stereo','ohms':@,'watts':50}] | 0.0099 | 0.01 | 10000 | 10001
          watts | 'ratings':[{'mode':'stereo','ohms':4,'watts':@}] | 0.00099 | 0.001 | 1000000 | 1000001
          supplyVolts | 'ratings':[{'mode':'bridged','ohms':4,'watts':9,'supplyVolts':@}] | 0.99 | 1 | 1000 | 1001
          thdPercent | 'ratings':[{'mode':'bridged','ohms':4,'watts':9,'thdPercent':@}] | 9.0E-7 | 1.0E-6 | 100 | 101
          """)
  void amplifier(String key, String part, String below, String least, String most, String above) {
    String rest = "{'format':'loadwalk-amplifier/1','maker':'Halvorsen & Pike','model':'Twin 50',";
    new Field<>(BenchFiles.AMPLIFIER, key, rest + part + "}").holds(below, least, most, above);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          usableFraction | 'usableFraction':@ | 0.0099 | 0.01 | 1 | 1.01
          volts | 'supplies':[{'volts':@,'amps':50}] | 0.099 | 0.1 | 1000 | 1001
          amps | 'supplies':[{'volts':13.8,'amps':@}] | 0.0099 | 0.01 | 100000 | 100001
          metres | 'leads':[{'awg':4,'metres':@}] | 0.00099 | 0.001 | 1000 | 1001
          parallel | 'leads':[{'awg':4,'metres':1,'parallel':@}] | 0 | 1 | 1000 | 1001
          awg | 'leads':[{'awg':@,'metres':1}] | -4 | -3 | 40 | 41
          mm2 | 'leads':[{'mm2':@,'metres':1}] | 0.0099 | 0.01 | 10000 | 10001
          amps | 'fuse':{'amps':@} | 0.099 | 0.1 | 100000 | 100001
          ohms | 'loads':[{'ohms':@,'watts':100}] | 0.00099 | 0.001 | 1000000 | 1000001
          tolerancePercent | 'loads':[{'ohms':4,'watts':100,'tolerancePercent':@}] | -1 | 0 | 100 | 101
          watts | 'loads':[{'ohms':4,'watts':@}] | 0.0099 | 0.01 | 1000000 | 1000001
          count | 'loads':[{'ohms':4,'watts':100,'count':@}] | 0 | 1 | 1000 | 1001
          ppmPerKelvin | 'loads':[{'ohms':4,'watts':100,'ppmPerKelvin':@}] | -100001 | -100000 | 100000 | 100001
          """)
  void bench(String key, String part, String below, String least, String most, String above) {
    new Field<>(BenchFiles.BENCH, key, bench(part)).holds(below, least, most, above);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          percent | 'percent':@ | -1 | 0 | 100 | 101
          digits | 'resolution':0.1,'digits':@ | -1 | 0 | 100000 | 100001
          resolution | 'percent':1,'resolution':@ | -1 | 0 | 1000000 | 1000001
          hertz | 'percent':1,'hertz':[@,1000000000] | -1 | 0 | 1000000000 | 1000000001
          timeoutMillis | CONNECTION 'tcp':'a','timeoutMillis':@} | 9 | 10 | 60000 | 60001
          scale | CONNECTION 'tcp':'a','scale':@} | -1000000001 | -1000000000 | 1000000000 | 1000000001
          baud | CONNECTION 'serial':'COM3','baud':@} | 299 | 300 | 4000000 | 4000001
          port | CONNECTION 'tcp':'a:@'} | 0 | 1 | 65535 | 65536
          """)
  void meter(String key, String part, String below, String least, String most, String above) {
    String meter = METER + part.replace("CONNECTION ", QUERY) + "}]";
    new Field<>(BenchFiles.BENCH, key, bench(meter)).holds(below, least, most, above);
  }

  private static String bench(String part) {
    return "{'format':'loadwalk-bench/1'," + part + "}";
  }

  /** One number of a file, whose text has @ in its place. */
  private record Field<T extends Shaped<T>>(FileShape<T> file, String key, String text) {
    void holds(String below, String least, String most, String above) {
      for (String number : List.of(least, most)) {
        Read<T> read = read(number);
        assertEquals(List.of(), read.faults(), number);
        String written = file.text(read.found().orElseThrow());
        assertEquals(read.found(), read(written, "written").found(), written);
      }
      for (String number : List.of(below, above)) {
        List<Fault> faults = read(number).faults();
        assertTrue(
            faults.stream().map(Fault::sentence).anyMatch(said -> names(said, least, most)),
            number + ": " + faults);
      }
    }

    private boolean names(String said, String least, String most) {
      return said.matches("«?" + key + "»? must be between " + least + " and " + most + ", .*");
    }

    private Read<T> read(String number) {
      return read(text.replace('\'', '"').replace("@", number), "file.json");
    }

    private Read<T> read(String json, String name) {
      return file.read(json.getBytes(StandardCharsets.UTF_8), name);
    }
  }
}
