package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import loadwalk.bench.ReadingId;
import loadwalk.bench.Target;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Block.Term;
import loadwalk.report.page.Block.Terms;
import loadwalk.report.page.Page.Section;
import loadwalk.result.Circumstances;
import loadwalk.result.Conditions;
import loadwalk.result.ReadBy;
import loadwalk.result.StepResult;
import loadwalk.text.Sentence;

/** Words the conditions that each result was really reached under; what nobody read says so. */
final class ConditionsSection {
  private static final Printer PRINTER = Printer.UTF8;
  private static final String NOT_READ = "not read";
  private static final String NOT_KNOWN = "not known";

  private ConditionsSection() {}

  static Section of(Sheet sheet) {
    List<Sheet.StepLine> steps =
        sheet.steps().stream().filter(ConditionsSection::isResult).toList();
    List<Block> blocks =
        steps.isEmpty()
            ? List.of(new Paragraph("No output measured yet."))
            : List.of(readings(steps), circumstances(steps), controls(sheet));
    return new Section("conditions", "Conditions reached", blocks);
  }

  private static boolean isResult(Sheet.StepLine step) {
    return step.result()
        .filter(r -> r.kind() == Target.Kind.LOADED && r.watts().isPresent())
        .isPresent();
  }

  private static Table readings(List<Sheet.StepLine> steps) {
    return new Table(
        "What was read with each output",
        List.of(
            Column.words("Step"),
            Column.numbers("Load"),
            Column.numbers("Tone"),
            Column.numbers("Supply"),
            Column.words("THD"),
            Column.words("Point")),
        steps.stream().map(ConditionsSection::readings).toList());
  }

  private static List<String> readings(Sheet.StepLine step) {
    Conditions read = step.result().orElseThrow().conditions();
    return List.of(
        step.id(),
        ohms(step),
        exact(read.hertz(), Unit.HERTZ),
        exact(read.supplyVolts(), Unit.VOLT),
        PointWords.thd(read, step.pairs()),
        PointWords.of(read, step.pairs()));
  }

  private static String ohms(Sheet.StepLine step) {
    List<String> ohms = new ArrayList<>();
    for (ReadingId id : List.of(ReadingId.LOAD_OHMS, ReadingId.OTHER_LOAD_OHMS)) {
      step.readings().stream()
          .filter(reading -> reading.id() == id)
          .forEach(reading -> ohms.add(PRINTER.exact(reading.value(), Unit.OHM)));
    }
    return ohms.isEmpty() ? NOT_READ : String.join(", ", ohms);
  }

  private static Table circumstances(List<Sheet.StepLine> steps) {
    return new Table(
        "How each output was read",
        List.of(
            Column.words("Step"),
            Column.words("Outputs read"),
            Column.words("Warm"),
            Column.numbers("Held for"),
            Column.numbers("Air"),
            Column.words("Read by")),
        steps.stream().map(ConditionsSection::circumstances).toList());
  }

  private static List<String> circumstances(Sheet.StepLine step) {
    StepResult result = step.result().orElseThrow();
    Circumstances around = result.conditions().around();
    return List.of(
        step.id(),
        Sentence.of("{} of {}", result.conditions().channelsRead(), result.mode().loads()),
        around.warm().map(warm -> warm ? "yes" : "no").orElse(NOT_KNOWN),
        around.heldSeconds().isPresent()
            ? ResultWords.minutes(around.heldSeconds().getAsDouble())
            : NOT_KNOWN,
        exact(around.ambientCelsius(), Unit.CELSIUS),
        around.readBy().map(ReadBy::text).orElse(NOT_KNOWN));
  }

  private static Terms controls(Sheet sheet) {
    String set = sheet.record().controls().map(ResultWords::quoted).orElse(NOT_KNOWN);
    return new Terms(List.of(new Term("Gain and controls", set)));
  }

  private static String exact(OptionalDouble value, Unit unit) {
    return value.isPresent() ? PRINTER.exact(value.getAsDouble(), unit) : NOT_READ;
  }
}
