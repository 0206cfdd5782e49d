package loadwalk.forecast;

import java.util.List;
import loadwalk.json.Words;

/** The words for verdicts and slips in files. */
final class ForecastWords {
  static final Words<Verdict> VERDICTS = Words.of(List.of(Verdict.values()), Verdict::word);
  static final Words<Slip> SLIPS = Words.of(List.of(Slip.values()), Slip::code);

  private ForecastWords() {}
}
