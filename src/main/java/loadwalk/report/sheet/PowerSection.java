package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.bench.Mode;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Headline;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page.Section;
import loadwalk.result.Mark;
import loadwalk.result.PublishedPower;
import loadwalk.text.Sentence;

/**
 * Words the headline: at each load the total, the watts of each channel that was read and the
 * balance of the two, with the marks of the result; then how they stand to the ratings.
 */
final class PowerSection {
  private static final Printer PRINTER = Printer.UTF8;
  private static final String NOT_READ = "not read";

  /** Decibels for each relative change of a power: 10/ln 10. */
  private static final double DECIBELS = 10 / Math.log(10);

  private final Sheet sheet;

  private PowerSection(Sheet sheet) {
    this.sheet = sheet;
  }

  static Section of(Sheet sheet) {
    return new Section("power", "Power", new PowerSection(sheet).blocks());
  }

  private List<Block> blocks() {
    List<Block> ended = EndedWords.blocks(sheet.record().ended());
    List<Block> blocks = new ArrayList<>();
    if (sheet.loads().isEmpty()) {
      blocks.add(new Paragraph("No output measured yet."));
      blocks.addAll(ended);
      return blocks;
    }
    blocks.add(new Headline(headline()));
    RatingWords.table(sheet.loads()).ifPresent(blocks::add);
    blocks.addAll(ended);
    List<String> notes = new ArrayList<>(PointWords.notes(sheet));
    oneChannel().ifPresent(notes::add);
    sheet.loads().forEach(line -> runs(line.power()).ifPresent(notes::add));
    sheet.loads().forEach(line -> notes.addAll(RatingWords.notes(line)));
    blocks.add(new Bullets(notes));
    return blocks;
  }

  private Table headline() {
    boolean stereo = sheet.loads().stream().anyMatch(l -> l.power().mode() == Mode.STEREO);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Load"));
    columns.add(Column.numbers("Total", Unit.WATT));
    if (stereo) {
      columns.add(Column.numbers("Channel 1", Unit.WATT));
      columns.add(Column.numbers("Channel 2", Unit.WATT));
      columns.add(Column.numbers("Balance", Unit.DECIBEL));
    }
    columns.add(Column.words("Marks"));
    String coverage = ResultWords.coverage(powers());
    return new Table(
        stereo
            ? Sentence.of(
                "Power at each load, ± at {}; the balance is channel 2 over channel 1", coverage)
            : Sentence.of("Power at each load, ± at {}", coverage),
        columns,
        sheet.loads().stream().map(line -> row(line.power(), stereo)).toList());
  }

  private List<String> row(PublishedPower power, boolean stereo) {
    List<String> row = new ArrayList<>();
    row.add(ResultWords.load(power));
    row.add(PRINTER.quantity(power.totalWatts()));
    if (stereo) {
      boolean channels = power.mode() == Mode.STEREO;
      row.add(channels ? PRINTER.quantity(power.watts()) : "");
      row.add(channels ? channel2(power) : "");
      row.add(power.balance().map(PowerSection::decibels).orElse(""));
    }
    row.add(power.marks().stream().map(Mark::text).collect(Collectors.joining(", ")));
    return row;
  }

  private String channel2(PublishedPower power) {
    if (power.channelWatts().size() > 1) {
      return PRINTER.quantity(power.channelWatts().get(1));
    }
    return hasOneChannel() ? "" : NOT_READ;
  }

  private boolean hasOneChannel() {
    return sheet.amplifier().channels().orElse(Mode.STEREO.loads()) == 1;
  }

  private static String decibels(Quantity balance) {
    double ratio = balance.value();
    return ratio > 0
        ? PRINTER.quantity(balance.mapped(10 * Math.log10(ratio), DECIBELS / ratio, Unit.DECIBEL))
        : "channel 2 silent";
  }

  private Optional<String> oneChannel() {
    List<String> loads =
        sheet.loads().stream()
            .map(Sheet.LoadLine::power)
            .filter(p -> p.mode() == Mode.STEREO && p.channelWatts().size() == 1)
            .map(ResultWords::load)
            .toList();
    return loads.isEmpty() || hasOneChannel()
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "One channel read, both loaded: {}. The total is twice channel 1.",
                String.join(", ", loads)));
  }

  /** Says which runs a power rests on, where there was a choice, and how far they lie apart. */
  private static Optional<String> runs(PublishedPower power) {
    if (power.spread().isPresent()) {
      return Optional.of(
          Sentence.of(
              "{}: runs disagree, with totals from {} to {}. The headline is the lowest, from {}.",
              ResultWords.load(power),
              PRINTER.quantity(power.spread().get().low()),
              PRINTER.quantity(power.spread().get().high()),
              power.fromStepId()));
    }
    return power.why().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Sentence.of(
                "{} is taken from {}: {}.",
                ResultWords.load(power),
                String.join(", ", power.runs()),
                power.why()));
  }

  private List<Quantity> powers() {
    return sheet.loads().stream()
        .map(Sheet.LoadLine::power)
        .flatMap(p -> Stream.concat(p.channelWatts().stream(), Stream.of(p.totalWatts())))
        .toList();
  }
}
