package loadwalk.view.screen;

import java.util.List;

/** The help texts, no line wider than the smallest terminal shows. */
public final class Help {
  private Help() {}

  /** Returns the help of a walk. */
  public static List<String> walk() {
    return List.of(
        "Esc   STOP, at once, from anywhere: output down, supply off. Say why later.",
        "Ctrl-C is STOP too while a step runs; once more within two seconds leaves.",
        "A brief says what to connect, what the readings should be, and what to heed.",
        "CLEAR  nothing special is known: Enter starts the step.",
        "HEED   read the cautions, then type the load really connected, in ohms.",
        "HALT   do not connect this. Only a typed reason lifts it (F7); it is printed.",
        "",
        "Type readings as the meter shows them: 13,4   13.4 V   950m   1/2   1k2   45 W",
        "Type volts or watts; the other is worked out. Enter keeps it; Up and Down move.",
        "Beside each reading is its forecast and a bar that shows where the reading is.",
        "",
        "A doubt names the likeliest slip. Answer it in one of three ways: enter the",
        "same reading again (kept if it falls in range), enter the right one, or press",
        "F7 to stand by it and say why. The first value is never erased. No heavy step",
        "starts while a doubt has no answer.",
        "",
        "F1  this help                     F6  the sheet so far; F6 there: charts",
        "F2  a note; F2 again: a photo;    F7  give a reason: lift a halt, stand by a",
        "    once more: gain, controls         reading, end a warm-up, warm again",
        "F3  skip the step, and say why;   F8  fill this step in from the meters",
        "    or how it ended; again: skip  F9  finish, or write a held walk anew",
        "F4  all readings, amend any       F10 leave; the walk is kept",
        "F5  pause or resume               F12 the bench plan, with results so far",
        "F11 or Ctrl-R: fill the field in focus from its meter; a reading that is held,",
        "               stale or in overload is not entered",
        "Ctrl-W a captured wave, WAV or scope's CSV; paths start in the current folder",
        "Ctrl-L the sound input, live      Ctrl-T hold it; it holds itself at the limit",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice go first.");
  }

  /** Returns the help of the home screen. */
  public static List<String> home() {
    return List.of(
        "Loadwalk walks one amplifier through a sequence of loads: identity, warm-up,",
        "gentle stereo loads, harsher ones, bridged loads, recheck, sheet.",
        "",
        "Practice: a simulated amplifier on a simulated bench. Start here.",
        "New walk: choose a sequence, then describe amplifier and bench or reuse them.",
        "Resume: an open walk goes on exactly where you left it.",
        "Ledger: all walks side by side; Esc stops reading them.",
        "",
        "Up and Down move, Enter chooses, Esc or F10 goes back.",
        "",
        "Every reading is on disk before the screen calls it kept. The folder is shown",
        "below the menu; a walk is one file in its sessions folder.",
        "",
        "Loadwalk controls nothing on the bench and never says that something is safe.",
        "safety-notes.md lists the dangers; local codes and licensed practice go first.");
  }
}
