package loadwalk.forecast;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import loadwalk.bench.ReadingId;
import loadwalk.json.JsonOut;

/**
 * Writes forecasts and cautions as JSON, the same way for sheet, rehearsal and plan; unknown values
 * are left out.
 */
public enum ForecastJson {
  /** A band is {@code [low, high]}. */
  ENDS,
  /** A band is {@code [low, expected, high]}. */
  EXPECTED;

  /** Writes one band. */
  public void band(JsonGenerator out, String key, Optional<Band> band) throws IOException {
    if (band.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart(key);
    JsonOut.number(out, band.get().low());
    if (this == EXPECTED) {
      JsonOut.number(out, band.get().middle());
    }
    JsonOut.number(out, band.get().high());
    out.writeEndArray();
  }

  /** Writes the band of each reading under its key. */
  public void readings(JsonGenerator out, Forecast forecast) throws IOException {
    for (Map.Entry<ReadingId, Band> reading : forecast.readings().entrySet()) {
      band(out, reading.getKey().key(), Optional.of(reading.getValue()));
    }
  }

  /** Writes the watts in the loads and the heat in the amplifier. */
  public void watts(JsonGenerator out, Forecast forecast) throws IOException {
    band(out, "loadWatts", forecast.demand().loadWatts());
    band(out, "totalWatts", forecast.demand().totalWatts());
    band(out, "heatWatts", forecast.demand().heatWatts());
  }

  /** Writes the opening line and the readings at which to stop, where they are known. */
  public static void opening(JsonGenerator out, Forecast forecast) throws IOException {
    if (forecast.givesFirst().isEmpty()) {
      return;
    }
    GivesFirst first = forecast.givesFirst().get();
    out.writeStringField("opening", first.line());
    out.writeObjectFieldStart("stopAt");
    for (GivesFirst.Stop stop : first.stops()) {
      JsonOut.number(out, stop.reading().key(), stop.value());
    }
    out.writeEndObject();
  }

  /**
   * Writes the cautions of a forecast.
   *
   * @param gravity whether to write the gravity of each caution; a rehearsal writes it once for the
   *     step
   */
  public static void cautions(JsonGenerator out, Forecast forecast, boolean gravity)
      throws IOException {
    JsonOut.objects(
        out,
        "cautions",
        forecast.cautions(),
        caution -> {
          out.writeStringField("code", caution.code());
          if (gravity) {
            out.writeStringField("gravity", caution.gravity().word());
          }
          out.writeStringField("text", caution.text());
        });
  }
}
