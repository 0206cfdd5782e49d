package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Page.Section;
import loadwalk.text.Sentence;
import loadwalk.text.Visible;
import loadwalk.walk.SteadinessWords;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Words what happened during a walk. */
final class WalkRecordSections {
  private static final Printer PRINTER = Printer.UTF8;

  private WalkRecordSections() {}

  /** Adds one section for each thing that happened; all that did not happen shares one section. */
  private interface Part {
    void of(String id, String title, String none, List<String> items);
  }

  static List<Section> sections(Sheet sheet) {
    Sheet.WalkRecord record = sheet.record();
    List<Section> sections = new ArrayList<>();
    List<String> not = new ArrayList<>();
    Part part =
        (id, title, none, items) -> {
          if (items.isEmpty()) {
            not.add(none);
          } else {
            sections.add(new Section(id, title, List.of(new Bullets(items))));
          }
        };
    part.of("doubts", "Doubts and answers", "No entry was doubted.", doubts(record));
    part.of("amended", "Amended readings", "No reading was entered twice.", amendments(record));
    part.of("halts", "Halts lifted", "No halt was lifted.", lifts(record));
    part.of("skipped", "Steps skipped", "No step was skipped.", skips(record));
    part.of("warm-up", "Warm-up", "There was no warm-up.", warmUps(record));
    part.of("stops", "Stops", "The walk was never stopped.", stops(record));
    part.of("notes", "Notes", "No notes were taken.", notes(record));
    if (!record.photos().isEmpty()) {
      List<Block> photos = record.photos().stream().map(WalkRecordSections::photo).toList();
      sections.add(new Section("photos", "Photos", photos));
    }
    if (!not.isEmpty()) {
      Block none = new Paragraph(String.join(" ", not));
      sections.add(new Section("not", "Nothing to report", List.of(none)));
    }
    return sections;
  }

  private static Block photo(Sheet.Photo photo) {
    WalkState.Attachment a = photo.attachment();
    String where = ResultWords.moment(a.wallMillis()) + ", " + a.stepId();
    return new Block.Photo(a.caption(), where, a.path(), photo.picture());
  }

  private static List<String> doubts(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    for (Sheet.DoubtLine d : record.doubts()) {
      String answer =
          switch (d.answer()) {
            case OPEN -> "No answer yet.";
            case KEPT -> "Entered again and kept.";
            case AMENDED -> Sentence.of("Corrected to {}.", Visible.name(d.detail()));
            case STOOD_BY -> Sentence.of("Stood by: {}", ResultWords.typed(d.detail()));
            case ENDED -> "The step ended before its limit.";
            case POINT_SAID -> Sentence.of("Said to be read {}.", d.detail());
          };
      items.add(
          Sentence.of(
              "{}, {} typed as {}: {}. {} {}",
              d.stepId(),
              d.reading().label(),
              Visible.name(d.typed()),
              d.doubt().slipWords(),
              ResultWords.sentence(d.doubt().text()),
              answer));
    }
    return items;
  }

  private static List<String> amendments(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    for (Sheet.Amendment a : record.amendments()) {
      String typed = a.typed().stream().map(Visible::name).collect(Collectors.joining(" → "));
      items.add(Sentence.of("{}, {}: {}.", a.stepId(), a.reading().label(), typed));
    }
    return items;
  }

  private static List<String> lifts(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    for (Sheet.Lift lift : record.lifts()) {
      items.add(
          Sentence.of(
              "{} was halted. {} Lifted because: {}",
              lift.stepId(),
              lift.halts().stream().map(ResultWords::sentence).collect(Collectors.joining(" ")),
              ResultWords.typed(lift.reason())));
    }
    return items;
  }

  private static List<String> skips(Sheet.WalkRecord record) {
    return record.skips().stream()
        .map(s -> Sentence.of("{}: {}", s.stepId(), ResultWords.typed(s.reason())))
        .toList();
  }

  private static List<String> warmUps(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    record.warmUps().forEach(w -> items.add(warmUp(w)));
    record.cooled().ifPresent(items::add);
    return items;
  }

  private static String warmUp(Sheet.WarmUp w) {
    if (w.seconds() == 0 && w.status() != StepState.Status.DONE) {
      return Sentence.of("{} ({}): not started.", w.stepId(), w.status().word());
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        Sentence.of(
            "{} ({}): {} of {} min.",
            w.stepId(),
            w.status().word(),
            ResultWords.minutes(w.seconds()),
            PRINTER.exact(w.plannedMinutes(), Unit.ONE)));
    w.endedEarly()
        .ifPresent(why -> sentences.add(Sentence.of("Ended early: {}", ResultWords.typed(why))));
    temperatures(w.temperatures()).ifPresent(sentences::add);
    settling(w).ifPresent(sentences::add);
    sentences.add(SteadinessWords.atTheEnd(w.atTheEnd()));
    return String.join(" ", sentences);
  }

  private static Optional<String> temperatures(List<Sheet.Temperature> temperatures) {
    int count = temperatures.size();
    if (count == 0) {
      return Optional.empty();
    }
    String first = celsius(temperatures.get(0).celsius());
    String last = celsius(temperatures.get(count - 1).celsius());
    return Optional.of(
        count == 1
            ? Sentence.of("One temperature: {}.", first)
            : Sentence.of("{} temperatures, from {} to {}.", count, first, last));
  }

  private static Optional<String> settling(Sheet.WarmUp w) {
    return w.fit()
        .map(
            fit ->
                Sentence.of(
                    "They settle towards {} with a time constant of {} min.",
                    celsius(fit.endCelsius()),
                    PRINTER.value(fit.tauMinutes(), Unit.ONE, 2)));
  }

  private static String celsius(double celsius) {
    return PRINTER.value(celsius, Unit.CELSIUS, 3);
  }

  private static List<String> stops(Sheet.WalkRecord record) {
    return record.stops().stream()
        .map(
            stop ->
                Sentence.of(
                    "{}, {}: {}",
                    ResultWords.moment(stop.wallMillis()),
                    stop.stepId(),
                    stop.reason().map(ResultWords::typed).orElse("no reason typed yet.")))
        .toList();
  }

  private static List<String> notes(Sheet.WalkRecord record) {
    return record.notes().stream()
        .map(
            n ->
                Sentence.of(
                    "{}, {}: {}",
                    ResultWords.moment(n.wallMillis()),
                    n.stepId(),
                    ResultWords.typed(n.text())))
        .toList();
  }
}
