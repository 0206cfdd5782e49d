package loadwalk.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The words of verdicts and slips, which stand in files and on the screen. */
class VerdictTest {
  @Test
  void verdicts_haveAWord_andTheGraverCounts() {
    assertEquals("clear", Verdict.CLEAR.word());
    assertEquals("heed", Verdict.HEED.word());
    assertEquals("halt", Verdict.HALT.word());
    assertEquals(Verdict.HALT, Verdict.HEED.graver(Verdict.HALT));
    assertEquals(Verdict.HEED, Verdict.HEED.graver(Verdict.CLEAR));
    assertEquals(Verdict.HEED, Verdict.HEED.graver(Verdict.HEED));
  }

  /** Codes stand in files: a change of one makes old journals unreadable. */
  @Test
  void slips_haveACodeForFiles_andWords() {
    assertEquals("peak-for-rms", Slip.PEAK_FOR_RMS.code());
    assertEquals("peak volts instead of rms", Slip.PEAK_FOR_RMS.words());
    long codes = List.of(Slip.values()).stream().map(Slip::code).distinct().count();
    assertEquals(Slip.values().length, codes);
  }
}
