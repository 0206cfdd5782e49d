package loadwalk.report.ledger;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.report.ledger.LedgerEntry.Load;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.Repeatability;

/** Writes the entry of one journal as one line of the index; {@link IndexLineReader} reads it. */
final class IndexLine {
  static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.USE_FAST_DOUBLE_PARSER).build();

  /** Stands for the place of a word where there is none. */
  static final int NONE = -1;

  private final JsonGenerator out;

  private IndexLine(JsonGenerator out) {
    this.out = out;
  }

  static byte[] bytes(String journal, LedgerIndex.Kept kept) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (JsonGenerator out = JSON.createGenerator(bytes)) {
      new IndexLine(out).write(journal, kept);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return bytes.toByteArray();
  }

  /** Reads a line into the map. */
  static void read(byte[] line, Map<String, LedgerIndex.Kept> kept) throws IOException {
    try (JsonParser in = JSON.createParser(line)) {
      new IndexLineReader(in).into(kept);
    }
  }

  private void write(String journal, LedgerIndex.Kept kept) throws IOException {
    out.writeStartArray();
    out.writeString(journal);
    out.writeString(kept.opening());
    out.writeString(kept.end());
    write(kept.entry());
    out.writeEndArray();
  }

  private void write(LedgerEntry e) throws IOException {
    out.writeString(e.walk());
    out.writeString(e.amplifier());
    out.writeBoolean(e.practice());
    out.writeBoolean(e.finished());
    out.writeNumber(e.openDoubts());
    out.writeNumber(e.wallMillis());
    write(e.done());
    optional(e.fuseAmps());
    yesNo(e.regulated());
    out.writeNumber(e.soundness().standing().ordinal());
    out.writeString(e.soundness().told());
    write(e.repeats());
    out.writeStartArray();
    for (LedgerEntry.Ended ended : e.ended()) {
      out.writeNumber(ended.mode().ordinal());
      out.writeNumber(ended.ohms());
      out.writeNumber(ended.outcome().ordinal());
    }
    out.writeEndArray();
    for (Load load : e.loads()) {
      out.writeStartArray();
      write(load);
      out.writeEndArray();
    }
  }

  private void write(LedgerEntry.Done done) throws IOException {
    out.writeString(done.sequence());
    out.writeString(done.contentHash());
    out.writeNumber(done.toneHertz());
    out.writeNumber(done.limitThdPercent());
    out.writeNumber(done.supplyVolts());
  }

  private void write(BenchRepeats repeats) throws IOException {
    out.writeString(repeats.bench());
    out.writeStartArray();
    for (Repeatability.Pair pair : repeats.pairs()) {
      out.writeNumber(pair.relativeVolts());
      out.writeNumber(pair.meterU());
    }
    out.writeEndArray();
  }

  private void write(Load load) throws IOException {
    write(load.conditions());
    out.writeNumber(load.askedHertz());
    out.writeNumber(load.limitThdPercent());
    out.writeStartArray();
    for (Enum<?> mark : load.marks()) {
      out.writeNumber(mark.ordinal());
    }
    out.writeEndArray();
    out.writeStartArray();
    for (KeptWatts watts : load.channelWatts()) {
      write(watts);
    }
    out.writeEndArray();
    write(load.totalWatts());
    optional(load.ratio());
    word(load.verdict());
    optional(load.efficiency());
    optional(load.efficiencyU());
  }

  private void write(Conditions read) throws IOException {
    out.writeNumber(read.mode().ordinal());
    out.writeNumber(read.ohms());
    optional(read.ohmsRead());
    out.writeNumber(read.channelsRead());
    optional(read.hertz());
    out.writeNumber(read.criterion().ordinal());
    out.writeBoolean(read.said());
    optional(read.thdPercent());
    optional(read.supplyVolts());
    write(read.around());
  }

  private void write(Circumstances around) throws IOException {
    word(around.said());
    yesNo(around.warm());
    optional(around.heldSeconds());
    optional(around.ambientCelsius());
    word(around.thdKind());
    optional(around.thdBandwidthHertz());
    word(around.readBy());
    out.writeBoolean(around.practice());
    out.writeBoolean(around.stoodBy());
    out.writeBoolean(around.inDoubt());
  }

  private void write(KeptWatts watts) throws IOException {
    out.writeNumber(watts.value());
    out.writeNumber(watts.u());
    boolean known = Double.isInfinite(watts.degreesOfFreedom());
    optional(known ? OptionalDouble.empty() : OptionalDouble.of(watts.degreesOfFreedom()));
    out.writeNumber(watts.excess());
  }

  private void word(Optional<? extends Enum<?>> word) throws IOException {
    out.writeNumber(word.isPresent() ? word.get().ordinal() : NONE);
  }

  private void yesNo(Optional<Boolean> value) throws IOException {
    out.writeNumber(value.map(yes -> yes ? 1 : 0).orElse(NONE));
  }

  private void optional(OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      out.writeNumber(value.getAsDouble());
    } else {
      out.writeNull();
    }
  }
}
