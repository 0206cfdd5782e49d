package loadwalk.view.screen;

import java.util.List;

/** The help texts, no line wider than the smallest terminal shows. */
public final class Help {
  private Help() {}

  /** Returns the help of a walk. */
  public static List<String> walk() {
    return List.of(
        "Esc   STOP, at once, from anywhere: output down, supply off. Why comes after.",
        "",
        "A brief says what to connect, what the readings should be, and what to heed.",
        "CLEAR  nothing special is known: Enter starts the step.",
        "HEED   read the cautions, then type the load in ohms that is really connected.",
        "HALT   do not connect this. A typed reason alone lifts it (F7); it is printed.",
        "",
        "Readings are typed as meters show them: 13,4   13.4 V   950m   1/2   1k2   45 W",
        "Volts and watts stand for each other. Enter keeps a reading; Up and Down move.",
        "Beside each reading stand its forecast and a bar; the reading lands on it.",
        "",
        "A doubt names the likeliest slip. Three answers: enter the same reading again",
        "(kept if it falls in range), enter the corrected one, or F7 to stand by it and",
        "say why. The first value is never erased. A doubt without an answer holds every",
        "heavy step.",
        "",
        "F1  this help                     F6  the sheet so far; F6 there: charts",
        "F2  a note; F2 again: a photo     F7  what needs a reason: lift a halt, stand",
        "F3  skip the step, and say why        by a reading, end a warm-up, warm again",
        "F4  all readings, amend any       F8  fill this step in from the meters",
        "F5  pause, and go on              F9  finish the step",
        "F10 leave; the walk is kept       F12 the plan of the bench, measured so far",
        "F11 or Ctrl-R: the field in focus from its meter; held, stale or overload is",
        "               told only",
        "Ctrl-W volts and THD from a captured wave, a WAV or a scope's CSV file",
        "Ctrl-L the sound input, live      Ctrl-T hold it; it holds itself at the limit",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice are first.");
  }

  /** Returns the help of the home screen. */
  public static List<String> home() {
    return List.of(
        "Loadwalk walks one amplifier through a sequence of loads: identity, warm-up,",
        "gentle stereo loads, harsher ones, bridged loads, recheck, sheet.",
        "",
        "Practice: a simulated amplifier on a simulated bench. Start here.",
        "New walk: choose a sequence, describe amplifier and bench, or take earlier.",
        "Go on: an open walk goes on exactly where it was left.",
        "Ledger: all walks side by side; Esc stops reading them.",
        "",
        "Up and Down choose, Enter takes, Esc or F10 goes back.",
        "",
        "Every reading is on disk before the screen calls it kept. The folder is shown",
        "below the menu; a walk is one file in its sessions folder.",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice are first.");
  }
}
