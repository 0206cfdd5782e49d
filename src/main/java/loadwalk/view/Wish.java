package loadwalk.view;

import java.util.List;
import java.util.OptionalLong;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.wave.CaptureSetup;

/** What a screen asks of the outside world. */
public sealed interface Wish {

  /**
   * Open a new walk.
   *
   * @param sequence the sequence's name
   * @param amplifier the amplifier
   * @param bench the bench
   * @param practiceSeed the seed of the practice amplifier, where it is one
   * @param speed how many warm-up seconds pass in one second
   */
  record OpenWalk(
      String sequence, Amplifier amplifier, Bench bench, OptionalLong practiceSeed, int speed)
      implements Wish {}

  /** Open the practice amplifier of a seed. */
  record OpenPractice(String sequence, long seed, int speed) implements Wish {}

  /** Go on with a kept walk. */
  record ResumeWalk(String walk) implements Wish {}

  /** Show the plan of the bench for a sequence before anything is connected. */
  record ShowPlan(String sequence, Amplifier amplifier, Bench bench) implements Wish {}

  /** Show the plan of the bench for the open walk, with what has been measured so far. */
  record ShowPlanSoFar() implements Wish {}

  /** Show the sheet of the walk that is open, or of a kept one. */
  record ShowSheet(String walk) implements Wish {}

  /**
   * Show all walks side by side.
   *
   * @param sort the index of the order, counted around
   * @param filter words that each walk shown must hold
   */
  record ShowLedger(int sort, String filter) implements Wish {}

  /** Compare two to four walks, by name. */
  record Compare(List<String> walks) implements Wish {
    /** Copies the list. */
    public Compare {
      walks = List.copyOf(walks);
    }
  }

  /** End early whatever is being read in the background. */
  record StopWork() implements Wish {}

  /** Let the simulated operator answer the current step. */
  record FillStep() implements Wish {}

  /**
   * Read a captured wave from a file.
   *
   * @param file its path
   * @param setup what its samples stand for
   * @param take whether what it shows enters the current step at once
   */
  record ReadCapture(String file, CaptureSetup setup, boolean take) implements Wish {}

  /** Note that the cautions of a capture were read and hold. */
  record ConfirmCautions() implements Wish {}

  /** Let what the last wave read shows enter a step. */
  record TakeCapture(String step) implements Wish {}

  /** Begin to listen to the sound input, or end it. */
  record Listen(boolean on) implements Wish {}

  /** Hold what the sound input shows, or go on. */
  record Hold(boolean on) implements Wish {}

  /** Keep the held wave as a file, to be taken into a step. */
  record KeepHeld(String step) implements Wish {}

  /** Set the speed of the practice bench. */
  record SetSpeed(int speed) implements Wish {}

  /** Close the open walk and go home; it stays on disk. */
  record CloseWalk() implements Wish {}

  /** Leave Loadwalk; an open walk stays on disk. */
  record Leave() implements Wish {}
}
