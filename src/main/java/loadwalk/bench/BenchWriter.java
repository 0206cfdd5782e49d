package loadwalk.bench;

import static loadwalk.json.JsonOut.number;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import loadwalk.json.Format;
import loadwalk.json.JsonOut;

/** Writes a bench as JSON that {@link BenchReader} reads back the same. */
public final class BenchWriter {
  private BenchWriter() {}

  /** Returns the text of a bench file. */
  public static String text(Bench bench) {
    return JsonOut.pretty(out -> write(out, bench));
  }

  /** Writes a bench as one object with its format. */
  public static void write(JsonGenerator out, Bench bench) throws IOException {
    out.writeStartObject();
    out.writeStringField(Format.KEY, BenchReader.FORMAT.text());
    out.writeStringField("name", bench.name());
    writeList(out, "supplies", bench.supplies(), BenchWriter::writeSupply);
    number(out, "usableFraction", bench.usableFraction());
    writeList(out, "leads", bench.leads(), BenchWriter::writeLead);
    if (bench.fuseAmps().isPresent()) {
      out.writeObjectFieldStart("fuse");
      number(out, "amps", bench.fuseAmps().getAsDouble());
      out.writeEndObject();
    }
    writeList(out, "loads", bench.loads(), BenchWriter::writeLoad);
    writeList(out, "meters", bench.meters(), BenchWriter::writeMeter);
    out.writeEndObject();
  }

  private interface Item<T> {
    void write(JsonGenerator out, T item) throws IOException;
  }

  private static <T> void writeList(JsonGenerator out, String key, List<T> list, Item<T> item)
      throws IOException {
    if (list.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart(key);
    for (T each : list) {
      out.writeStartObject();
      item.write(out, each);
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private static void writeSupply(JsonGenerator out, Supply supply) throws IOException {
    number(out, "volts", supply.volts());
    number(out, "amps", supply.amps());
  }

  private static void writeLead(JsonGenerator out, Lead lead) throws IOException {
    out.writeStringField("label", lead.label());
    if (lead.gauge() instanceof Lead.Mm2 metric) {
      number(out, "mm2", metric.area());
    } else if (lead.gauge() instanceof Lead.Awg awg && awg.number() > 0) {
      out.writeNumberField("awg", awg.number());
    } else {
      out.writeStringField("awg", lead.gauge().text().substring("AWG ".length()));
    }
    number(out, "metres", lead.metres());
    out.writeNumberField("parallel", lead.parallel());
  }

  private static void writeLoad(JsonGenerator out, LoadResistor load) throws IOException {
    out.writeStringField("label", load.label());
    number(out, "ohms", load.ohms());
    number(out, "tolerancePercent", load.tolerancePercent());
    number(out, "watts", load.watts());
    out.writeNumberField("count", load.count());
    AmplifierWriter.writeOptional(out, "ppmPerKelvin", load.ppmPerKelvin());
  }

  private static void writeMeter(JsonGenerator out, Meter meter) throws IOException {
    out.writeStringField("label", meter.label());
    out.writeStringField("reads", meter.reads().key());
    number(out, "percent", meter.percent());
    number(out, "digits", meter.digits());
    number(out, "resolution", meter.resolution());
    if (meter.band().isPresent()) {
      out.writeArrayFieldStart("hertz");
      number(out, meter.band().get().lowHertz());
      number(out, meter.band().get().highHertz());
      out.writeEndArray();
    }
    if (meter.connection().isPresent()) {
      out.writeObjectFieldStart("connection");
      writeConnection(out, meter.connection().get());
      out.writeEndObject();
    }
  }

  private static void writeConnection(JsonGenerator out, Connection connection) throws IOException {
    if (connection.line() instanceof Connection.Serial serial) {
      out.writeStringField("serial", serial.device());
      out.writeNumberField("baud", serial.baud());
    } else {
      out.writeStringField("tcp", connection.line().text());
    }
    out.writeStringField("query", connection.query());
    out.writeStringField("unit", connection.unit());
    number(out, "scale", connection.scale());
    out.writeNumberField("timeoutMillis", connection.answerMillis());
  }
}
