package loadwalk.walk.fact;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import loadwalk.bench.Outcome;
import loadwalk.bench.ReadingId;
import loadwalk.forecast.Forecast;
import loadwalk.json.Words;
import loadwalk.result.Criterion;
import loadwalk.result.LimitPair;

/** The kinds of facts by their words in a journal, each with a blank fact. */
final class FactKinds {
  static final Words<Criterion> CRITERIA = Words.of(List.of(Criterion.values()), Criterion::word);

  static final Words<Outcome> OUTCOMES = Words.of(Outcome.sayable(), Outcome::word);

  private static final ReadingId VOLTS = ReadingId.OUTPUT_VOLTS;
  private static final Map<Class<?>, String> NAMES = new HashMap<>();

  static final Words<Fact> ALL =
      new Words<>(
          "is a fact this version does not know", blanks(), fact -> NAMES.get(fact.getClass()));

  static {
    ALL.all().forEach((word, blank) -> NAMES.put(blank.getClass(), word));
  }

  private FactKinds() {}

  private static Map<String, Fact> blanks() {
    Map<String, Fact> blanks = new LinkedHashMap<>();
    blanks.put("opened", new Fact.Opened("", "", null, "", null, null, OptionalLong.empty()));
    blanks.put("briefed", new Fact.Briefed("", Forecast.blank()));
    blanks.put("armed", new Fact.Armed("", "", 0));
    blanks.put("halt-lifted", new Fact.HaltLifted("", List.of(), ""));
    blanks.put("begun", new Fact.Begun(""));
    blanks.put("warmed", new Fact.Warmed("", 0));
    blanks.put(
        "entered",
        new Fact.Entered(
            "", VOLTS, "", 0, 0, List.of(), 0, Optional.empty(), OptionalDouble.empty()));
    blanks.put("captured", new Fact.Captured("", Capture.blank()));
    blanks.put("doubted", new Fact.Doubted("", VOLTS, List.of()));
    blanks.put("stood-by", new Fact.StoodBy("", VOLTS, ""));
    blanks.put("criterion-set", new Fact.CriterionSet("", Criterion.THD_LIMIT));
    blanks.put("pair-added", new Fact.PairAdded("", new LimitPair(1, 1)));
    blanks.put("ended-early", new Fact.EndedEarly("", ""));
    blanks.put("done", new Fact.Done(""));
    blanks.put("ended", new Fact.Ended("", Outcome.PROTECTED, ""));
    blanks.put("skipped", new Fact.Skipped("", ""));
    blanks.put("cooled", new Fact.Cooled("", ""));
    blanks.put("warm-again", new Fact.WarmAgain(""));
    blanks.put("noted", new Fact.Noted("", ""));
    blanks.put("controls-set", new Fact.ControlsSet(""));
    blanks.put("written-anew", new Fact.WrittenAnew("", ""));
    blanks.put("attached", new Fact.Attached("", "", "", "0".repeat(64), "image/png"));
    blanks.put("stopped", new Fact.Stopped(""));
    blanks.put("stop-explained", new Fact.StopExplained(""));
    blanks.put("paused", new Fact.Paused());
    blanks.put("resumed", new Fact.Resumed());
    return blanks;
  }
}
