package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import loadwalk.json.JsonOut;
import loadwalk.report.page.JsonParts;
import loadwalk.result.PowerAtSupply;
import loadwalk.result.RatingComparison;

/** Writes as JSON what keeps a rating and a reading from being like for like. */
public final class RatingJson {
  private RatingJson() {}

  /** Writes what differs, what the rating leaves open, and the estimate at its supply volts. */
  public static void unlike(JsonGenerator out, RatingComparison rating) throws IOException {
    JsonOut.texts(out, "differs", rating.differs());
    JsonOut.texts(out, "notes", rating.notes());
    if (rating.estimate().isPresent()) {
      PowerAtSupply estimate = rating.estimate().get();
      out.writeObjectFieldStart("estimate");
      JsonParts.quantity(out, "watts", estimate.watts());
      JsonOut.number(out, "supplyVolts", estimate.supplyVolts());
      out.writeStringField("text", estimate.assumption());
      out.writeEndObject();
    }
  }
}
