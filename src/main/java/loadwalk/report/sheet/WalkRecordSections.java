package loadwalk.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import loadwalk.quantity.Printer;
import loadwalk.quantity.Unit;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Bullets;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Page.Section;
import loadwalk.text.Visible;
import loadwalk.walk.fact.StepState;
import loadwalk.walk.fact.WalkState;

/** Words what happened on the way of a walk. */
final class WalkRecordSections {
  private static final Printer PRINTER = Printer.UTF8;

  private WalkRecordSections() {}

  /** Takes what happened as a section of its own; what did not shares one. */
  private interface Told {
    void of(String id, String title, String none, List<String> items);
  }

  static List<Section> sections(Sheet sheet) {
    Sheet.WalkRecord record = sheet.record();
    List<Section> sections = new ArrayList<>();
    List<String> not = new ArrayList<>();
    Told told =
        (id, title, none, items) -> {
          if (items.isEmpty()) {
            not.add(none);
          } else {
            sections.add(new Section(id, title, List.of(new Bullets(items))));
          }
        };
    told.of("doubts", "Doubts and their answers", "No entry was doubted.", doubts(record));
    told.of("amended", "Amended readings", "No reading was entered twice.", amendments(record));
    told.of("halts", "Halts lifted", "No halt was lifted.", lifts(record));
    told.of("skipped", "Steps skipped", "No step was skipped.", skips(record));
    told.of("warm-up", "Warm-up", "This walk has no warm-up.", warmUps(record));
    told.of("stops", "Stops", "The walk was never stopped.", record.stops());
    told.of("notes", "Notes", "No notes were written.", notes(record));
    if (!record.photos().isEmpty()) {
      List<Block> photos = record.photos().stream().map(WalkRecordSections::photo).toList();
      sections.add(new Section("photos", "Photos", photos));
    }
    if (!not.isEmpty()) {
      Block none = new Paragraph(String.join(" ", not));
      sections.add(new Section("not", "What did not happen", List.of(none)));
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
            case AMENDED -> "Corrected to " + Visible.name(d.detail()) + ".";
            case STOOD_BY -> "Stood by: " + ResultWords.sentence(d.detail());
          };
      items.add(
          d.stepId()
              + ", "
              + d.reading().label()
              + " typed as "
              + Visible.name(d.typed())
              + ": "
              + d.doubt().slipWords()
              + ". "
              + ResultWords.sentence(d.doubt().text())
              + " "
              + answer);
    }
    return items;
  }

  private static List<String> amendments(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    for (Sheet.Amendment a : record.amendments()) {
      List<String> typed = a.typed().stream().map(Visible::name).toList();
      items.add(
          a.stepId()
              + ", "
              + a.reading().label()
              + ": first "
              + typed.get(0)
              + ", then "
              + String.join(", then ", typed.subList(1, typed.size()))
              + ".");
    }
    return items;
  }

  private static List<String> lifts(Sheet.WalkRecord record) {
    List<String> items = new ArrayList<>();
    for (Sheet.Lift lift : record.lifts()) {
      items.add(
          lift.stepId()
              + " was halted. "
              + String.join(" ", lift.halts().stream().map(ResultWords::sentence).toList())
              + " Lifted because: "
              + ResultWords.sentence(lift.reason()));
    }
    return items;
  }

  private static List<String> skips(Sheet.WalkRecord record) {
    return record.skips().stream()
        .map(s -> s.stepId() + ": " + ResultWords.sentence(s.reason()))
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
      return w.stepId() + " (" + w.status().word() + "): not begun.";
    }
    StringBuilder text = new StringBuilder();
    text.append(w.stepId()).append(" (").append(w.status().word()).append("): ");
    text.append(ResultWords.minutes(w.seconds()));
    text.append(" of ").append(PRINTER.exact(w.plannedMinutes(), Unit.ONE)).append(" min");
    w.endedEarly().ifPresent(why -> text.append(", ended early: ").append(why));
    text.append(text.charAt(text.length() - 1) == '.' ? " " : ". ").append(temperatures(w));
    return text.toString();
  }

  private static String temperatures(Sheet.WarmUp w) {
    int count = w.temperatures().size();
    if (count == 0) {
      return "No temperatures were typed: the clock alone decided.";
    }
    Sheet.Temperature first = w.temperatures().get(0);
    Sheet.Temperature last = w.temperatures().get(count - 1);
    String range =
        count == 1
            ? "One temperature: " + celsius(first.celsius()) + "."
            : count
                + " temperatures, from "
                + celsius(first.celsius())
                + " to "
                + celsius(last.celsius())
                + ".";
    return range + settling(w).map(s -> " " + s).orElse("");
  }

  private static Optional<String> settling(Sheet.WarmUp w) {
    return w.fit()
        .map(
            fit ->
                "They settle towards "
                    + celsius(fit.endCelsius())
                    + " with a time constant of "
                    + PRINTER.value(fit.tauMinutes(), Unit.ONE, 2)
                    + " min; at the last reading "
                    + PRINTER.value(fit.now().celsiusPerMinute(), Unit.ONE, 2)
                    + " °C/min.");
  }

  private static String celsius(double celsius) {
    return PRINTER.value(celsius, Unit.CELSIUS, 3);
  }

  private static List<String> notes(Sheet.WalkRecord record) {
    return record.notes().stream()
        .map(n -> ResultWords.moment(n.wallMillis()) + ", " + n.stepId() + ": " + n.text())
        .toList();
  }
}
