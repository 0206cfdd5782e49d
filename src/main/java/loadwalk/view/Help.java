package loadwalk.view;

import java.util.List;

/** The help texts. */
final class Help {
  private Help() {}

  static List<String> walk() {
    return List.of(
        "Esc   STOP, at once, from anywhere: output down, supply off. The reason is asked after.",
        "",
        "A brief says what to connect, what the readings should be, and what to heed.",
        "CLEAR  nothing special is known: Enter starts the step.",
        "HEED   read the cautions, then type the load in ohms that is really connected.",
        "HALT   do not connect this. Only a typed reason lifts it (F7); it is printed on the sheet.",
        "",
        "Readings are typed as the meter shows them: 13,4   13.4 V   950m   .5   1/2   1k2   45.5 W",
        "Volts and watts stand for each other. Enter keeps a reading; Up and Down move.",
        "Beside each reading stand its forecast range and a bar; the reading lands on it.",
        "",
        "A doubt names the likeliest slip. Three answers: enter the same reading again (it is kept",
        "if it falls in range), enter the corrected one, or F7 to stand by it and say why.",
        "The first value is never erased. A doubt without an answer holds every heavy step.",
        "",
        "F1  this help                     F6  the sheet so far; F6 there: its charts",
        "F2  a note; F2 again: a photo     F7  what needs a reason: lift a halt, stand by a",
        "F3  skip the step, with a reason      reading, end a warm-up early, warm again",
        "F4  all readings, amend any       F8  fill this step's readings in from the meters",
        "F5  pause, and go on              F9  finish the step",
        "F11 or Ctrl-R: the field in focus from its meter; held, stale or overload is told only",
        "Ctrl-W volts and THD from a captured wave, a WAV or a scope's CSV file",
        "Ctrl-L the sound input, live     Ctrl-T hold it; at the limit it holds by itself",
        "F10 leave; the walk is kept           F12 the plan of the bench, measured so far",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice come first.");
  }

  static List<String> home() {
    return List.of(
        "Loadwalk walks one amplifier through a sequence of loads: identity, warm-up, gentle stereo",
        "loads, harsher ones, bridged loads, recheck, sheet.",
        "",
        "Practice: a simulated amplifier on a simulated bench. Start here.",
        "New walk: choose a sequence, describe amplifier and bench, or take earlier ones.",
        "Go on: an open walk goes on exactly where it was left.",
        "Ledger: all walks side by side; Esc stops reading them.",
        "",
        "Up and Down choose, Enter takes, Esc or F10 goes back.",
        "",
        "Every reading is on disk before the screen calls it kept. The folder is shown below the",
        "menu; a walk is one file in its sessions folder.",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice come first.");
  }
}
