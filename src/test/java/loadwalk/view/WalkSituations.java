package loadwalk.view;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Supplier;
import loadwalk.bench.Amplifier;

/** Where somebody can be in a walk, each by a name and the keys that lead there. */
final class WalkSituations {
  private static final Amplifier LONG_NAME =
      Amplifier.named(
          "Halvorsen, Pike and Brothers of the Lower Valley", "HP 250 Grand Reserve II");

  private WalkSituations() {}

  static Map<String, Supplier<Desk>> all() {
    Map<String, Supplier<Desk>> all = new LinkedHashMap<>();
    briefs(all);
    runs(all);
    warmUps(all);
    questions(all);
    holds(all);
    ends(all);
    return all;
  }

  static Desk strongOnWeak() {
    return Desk.atHome().opens(Shelf.SHORT, Shelf.STRONG, Shelf.WEAK);
  }

  static Desk strongOnStout() {
    return Desk.atHome().opens(Shelf.SHORT, Shelf.STRONG, Shelf.STOUT);
  }

  private static Desk strongOn(String sequence) {
    return Desk.atHome().opens(sequence, Shelf.STRONG, Shelf.STOUT);
  }

  private static String[] skip() {
    return new String[] {"F3", "text:not asked here", "Enter"};
  }

  private static Desk practice() {
    return Desk.atHome().practises(Shelf.LADDER, 1);
  }

  static Desk practiceAtFour() {
    return practice().press("Enter", "wait:17", "Enter", "Enter", "F8", "F9");
  }

  private static void briefs(Map<String, Supplier<Desk>> all) {
    all.put(
        "brief-not-ready",
        () -> Desk.atHome().opens(Shelf.SHORT, Shelf.NAMED, Shelf.WEAK, OptionalLong.empty()));
    all.put("brief-clear", () -> strongOnStout());
    all.put("brief-note", () -> Desk.atHome().opens(Shelf.NOTED, Shelf.NAMED, Shelf.STOUT));
    all.put("brief-measure", () -> practiceAtFour());
    all.put("brief-halt", () -> haltedAtFour());
    all.put(
        "brief-halt-lifted", () -> haltedAtFour().press("F7", "text:a short burst only", "Enter"));
    all.put("brief-bridged", () -> skipped(strongOnWeak(), 2));
    all.put("brief-cold-load", () -> practiceAtFour().press("Tab", "text:4.0"));
    all.put("brief-cold-load-kept", () -> practiceAtFour().press("Tab", "text:4.02", "Enter"));
    all.put("brief-cold-load-doubted", () -> practiceAtFour().press("Tab", "text:2.0", "Enter"));
    all.put("brief-doubt-elsewhere", () -> doubtedIdle());
    all.put("brief-cold-load-blank", () -> practiceAtFour().press("Tab"));
    all.put(
        "brief-rating-left-out",
        () -> Desk.atHome().opens(Shelf.MUSIC, Shelf.SMALL, Shelf.STOUT).press(skip()));
    all.put(
        "brief-doubted-before",
        () -> runningAtFour().press("text:1.55 V", "Enter", "Esc", "text:hot", "Enter", "Enter"));
    all.put("brief-cooled", () -> practiceAtFour().reopenedAfter(6));
    all.put(
        "brief-long-note", () -> Desk.atHome().opens(Shelf.LONG_NOTE, Shelf.NAMED, Shelf.STOUT));
    all.put(
        "help-long-note",
        () -> Desk.atHome().opens(Shelf.LONG_NOTE, Shelf.NAMED, Shelf.STOUT).press("F1"));
    all.put("brief-long-name", () -> Desk.atHome().opens(Shelf.SHORT, LONG_NAME, Shelf.STOUT));
    all.put("brief-many-steps", () -> skipped(strongOn(Shelf.LONG), 6));
    all.put("brief-refused", () -> practiceAtFour().press("text:8", "Enter"));
  }

  private static Desk haltedAtFour() {
    return skipped(strongOnWeak(), 1);
  }

  private static Desk skipped(Desk desk, int steps) {
    for (int i = 0; i < steps; i++) {
      desk.press(skip());
    }
    return desk;
  }

  private static Desk doubtedIdle() {
    return strongOnStout()
        .press("Enter", "text:13.8", "Enter", "text:60", "Enter", "F3", "text:later", "Enter");
  }

  /** The first load is driven: its brief is clear, so Enter alone starts it. */
  private static Desk drivingAtFour() {
    return practiceAtFour().press("Enter");
  }

  static Desk runningAtFour() {
    return practiceAtFour().press("text:4", "Enter");
  }

  private static void runs(Map<String, Supplier<Desk>> all) {
    all.put("running", () -> runningAtFour());
    all.put("running-typed", () -> runningAtFour().press("text:15.5 V", "Left"));
    all.put("running-idle", () -> strongOnStout().press("Enter"));
    all.put("running-doubt", () -> runningAtFour().press("text:1.55 V", "Enter"));
    all.put("running-watts", () -> runningAtFour().press("text:60 W", "Enter"));
    all.put(
        "running-music",
        () -> Desk.atHome().opens(Shelf.MUSIC, Shelf.SMALL, Shelf.STOUT).press("text:8", "Enter"));
    all.put(
        "running-two-doubts",
        () -> runningAtFour().press("text:1.55 V", "Enter", "text:1.56 V", "Enter"));
    all.put("running-filled", () -> runningAtFour().press("F8"));
    all.put("running-on-entry", () -> runningAtFour().press("F8", "Down", "text:15"));
    all.put("running-point-asked", () -> runningAtFour().press("Up", "Up", "Up", "Up"));
    all.put("running-criterion", () -> runningAtFour().press("Up", "Up", "Up", "Up", "Right"));
    all.put(
        "running-thd-off-limit",
        () -> runningAtFour().press("Down", "Down", "Down", "Down", "text:5.3", "Enter"));
    all.put("running-pair", () -> runningAtFour().press("Up", "Up", "Up", "text:13.2 V 0.8 %"));
    all.put(
        "running-pair-millivolts",
        () -> runningAtFour().press("Up", "Up", "Up", "text:13200 mV 0.8 %"));
    all.put("running-pairs-kept", () -> runningAtFour().press(twoPairs()));
    all.put(
        "running-stood-by",
        () -> runningAtFour().press("text:1.55 V", "Enter", "F7", "text:the meter", "Enter"));
    all.put(
        "running-drop",
        () -> runningOnWeak().press("Down", "Down", "text:10.1 V", "Enter", "text:18", "Enter"));
  }

  private static String[] twoPairs() {
    return new String[] {
      "Up",
      "Up",
      "Up",
      "text:13.2 V 0.8 %",
      "Enter",
      "text:13.6 1.4",
      "Enter",
      "text:volts",
      "Enter"
    };
  }

  private static Desk runningOnWeak() {
    return haltedAtFour().press("F7", "text:a short burst only", "Enter", "text:4", "Enter");
  }

  private static void warmUps(Map<String, Supplier<Desk>> all) {
    all.put("warm-up-begun", () -> practice().press("Enter", "wait:1"));
    all.put("warm-up-measured", () -> practice().press(minutes(8)).press("text:41"));
    all.put("warm-up-due", () -> practice().press(minutes(16)));
    all.put("warm-up-just-due", () -> practice().press("Enter", "wait:15"));
    all.put("warm-up-climbing", () -> climbing());
    all.put("warm-up-by-the-clock", () -> practice().press("Enter", "wait:17"));
    all.put("warm-up-early", () -> practice().press("Enter", "wait:2", "F7", "text:it is warm"));
  }

  private static Desk climbing() {
    Desk desk = practice().press("Enter", "wait:12");
    for (int celsius = 40; celsius < 46; celsius++) {
      desk.press("text:" + celsius, "Enter", "wait:1");
    }
    return desk;
  }

  /** Takes a temperature each minute of a warm-up. */
  private static String[] minutes(int count) {
    String[] script = new String[1 + 2 * count];
    script[0] = "Enter";
    for (int i = 0; i < count; i++) {
      script[1 + 2 * i] = "wait:1";
      script[2 + 2 * i] = "F8";
    }
    return script;
  }

  private static void questions(Map<String, Supplier<Desk>> all) {
    all.put("question-note", () -> runningAtFour().press("F2", "text:smells of varnish"));
    all.put("question-photo", () -> runningAtFour().press("F2", "F2", "text:a.png the fuse"));
    all.put("question-ended", () -> drivingAtFour().press("F3"));
    all.put("question-ended-refused", () -> drivingAtFour().press("F3", "text:no", "Enter"));
    all.put("question-skip", () -> drivingAtFour().press("F3", "F3"));
    all.put("question-skip-refused", () -> drivingAtFour().press("F3", "F3", "Enter"));
    all.put(
        "brief-protected-before",
        () -> runningAtFour().press("text:18 V", "Enter", "F3", "text:1 red lamp", "Enter"));
    all.put("question-lift", () -> haltedAtFour().press("F7"));
    all.put(
        "question-stand-by",
        () -> runningAtFour().press("text:1.55 V", "Enter", "F7", "text:it is so"));
    all.put("question-leave", () -> unkept().press("F10", "text:leav"));
    all.put("question-leave-typed", () -> unkept().press("F10", "text: Leave "));
    all.put("readings-none", () -> practice().press("F4"));
    all.put("readings", () -> runningAtFour().press("F8", "F4", "Down", "Down"));
    all.put("readings-doubt", () -> doubted().press("F4"));
    all.put("readings-amend", () -> doubted().press("F4", "Enter", "text:15.5", "Left"));
    all.put("readings-stand-by", () -> doubted().press("F4", "F7", "text:seen twice"));
    all.put("readings-refused", () -> doubted().press("F4", "Enter", "text:no", "Enter"));
    all.put("readings-scrolled", () -> done().press("F4").press(times("Down", 30)));
    all.put("walk-help", () -> haltedAtFour().press("F1"));
  }

  private static Desk doubted() {
    return runningAtFour().press("F8", "Down", "Down").press("text:1.55 V", "Enter");
  }

  static String[] times(String key, int count) {
    return java.util.Collections.nCopies(count, key).toArray(String[]::new);
  }

  static Desk unkept() {
    return runningAtFour().diskFails("The disk is full.").press("text:15.5 V", "Enter");
  }

  private static void holds(Map<String, Supplier<Desk>> all) {
    all.put("stop", () -> runningAtFour().press("Esc"));
    all.put("stop-reason", () -> runningAtFour().press("Esc", "text:smoke"));
    all.put("stop-no-reason", () -> runningAtFour().press("Esc", "Enter"));
    all.put("stop-not-on-disk", () -> unkept().press("Esc"));
    all.put("stop-seen-from-readings", () -> runningAtFour().press("F4", "Esc"));
    all.put("paused", () -> runningAtFour().press("F5"));
    all.put("paused-after-stop", () -> runningAtFour().press("Esc", "text:smoke", "Enter"));
    all.put("resumed", () -> runningAtFour().press("F5", "Enter"));
    all.put("not-on-disk", () -> unkept());
    all.put("not-on-disk-readings", () -> unkept().press("F4"));
  }

  static Desk done() {
    Desk desk = practiceAtFour().press("text:4", "Enter", "F8", "F9");
    desk.press("text:2", "Enter", "F8", "F9");
    desk.press("text:4", "Enter", "F8", "F9");
    return skipped(desk, 3);
  }

  private static void ends(Map<String, Supplier<Desk>> all) {
    all.put("done", () -> done());
    all.put("done-in-doubt", () -> skipped(doubtedIdle(), 2));
    all.put("measured-so-far", () -> practiceAtFour().press("text:4", "Enter", "F8", "F9"));
    all.put("measured-doubt", () -> doubted());
  }
}
