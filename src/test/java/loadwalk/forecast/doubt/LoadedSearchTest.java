package loadwalk.forecast.doubt;

import static loadwalk.forecast.model.Amplifiers.STEREO_2;
import static loadwalk.forecast.model.Amplifiers.STEREO_4;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Observation;
import loadwalk.forecast.Slip;
import loadwalk.forecast.model.Amplifiers;
import loadwalk.forecast.model.WalkModel;
import org.junit.jupiter.api.Test;

/** What a search makes of the walk so far. */
class LoadedSearchTest {
  /** Half the watts of a channel, in a walk of volts three times as suspect as in one of watts. */
  @Test
  void unitTypedForTheFirstTime_isEvidence() {
    double volts = Amplifiers.readings(STEREO_4).get(ReadingId.OUTPUT_VOLTS);
    double watts = volts * volts / 4;
    double inVolts = oddsOfHalfTheWatts(new Observation(STEREO_4, output("outputVolts", volts)));
    double inWatts = oddsOfHalfTheWatts(new Observation(STEREO_4, output("outputWatts", watts)));
    double both =
        oddsOfHalfTheWatts(
            new Observation(STEREO_4, output("outputVolts", volts)),
            new Observation(STEREO_4, output("outputWatts", watts)));
    assertEquals(Math.log(3), inVolts - inWatts, 0.1);
    assertEquals(inWatts, both, 0.5);
  }

  private static double oddsOfHalfTheWatts(Observation... before) {
    double volts = Amplifiers.readings(STEREO_2).get(ReadingId.OUTPUT_VOLTS);
    WalkModel model = new WalkModel(Amplifiers.evidence(Amplifiers.rated(50), List.of(before)));
    LoadedSearch search =
        new LoadedSearch(
            model, STEREO_2, output("outputWatts", volts * volts / 4), Double.NaN, false);
    LoadedSearch.Found found = search.find();
    assertEquals(Slip.ONE_CHANNEL_FOR_BOTH, found.finding().slip());
    return found.finding().logOdds();
  }

  private static Map<ReadingId, Double> output(String key, double value) {
    return Map.of(ReadingId.ofKey(key).orElseThrow(), value);
  }
}
