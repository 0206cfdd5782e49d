package loadwalk.scenario;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wattmeter in place of a voltmeter. */
class WattsScenarioTest {
  @TempDir Path folder;

  @Test
  void wattsTypedForVolts_standBesideTheForecastInWatts() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter").sees("output volts", "to 18.6 V");
    bench.press("text:62 W", "Enter").sees("output watts 62 W 21 to 87 W").seesNot("87 V");
    bench.journalTellsTheSame();
  }

  @Test
  void voltsTypedAfterWatts_takeTheRow() {
    BenchSide bench = BenchSide.at(folder).warmAtStereoFour();
    bench.press("text:4", "Enter", "text:62 W", "Enter", "Up", "text:15.7", "Enter");
    bench.sees("output volts 15.7 V 9.3 to 18.6 V").journalTellsTheSame();
  }
}
