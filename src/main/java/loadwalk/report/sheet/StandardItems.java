package loadwalk.report.sheet;

import static loadwalk.report.sheet.StandardItem.Known.FAIRLY_SURE;
import static loadwalk.report.sheet.StandardItem.Known.NOT_SURE;
import static loadwalk.report.sheet.StandardItem.Known.READ;
import static loadwalk.report.sheet.StandardItem.Known.SECOND_HAND;
import static loadwalk.report.sheet.StandardItem.Known.SURE;
import static loadwalk.report.sheet.StandardItem.Standard.CFR_432;
import static loadwalk.report.sheet.StandardItem.Standard.CTA_2006;
import static loadwalk.report.sheet.StandardItem.Standard.IEC_60268;

import java.util.List;
import java.util.function.Function;
import loadwalk.report.sheet.StandardItem.Finding;
import loadwalk.report.sheet.StandardItem.Known;

/**
 * What three standards ask to be stated of an amplifier's power.
 *
 * <p>The figures of ANSI/CTA-2006 that were read come from a catalogue's abstract, two secondary
 * pages and the trade press; those of 16 CFR 432 from its sections 432.2 and 432.3 and the posted
 * summary of 89 FR 49797; the rest is from memory, as each says.
 */
final class StandardItems {
  private StandardItems() {}

  /** Returns every item, standard by standard. */
  static List<StandardItem> all() {
    return List.of(
        cta(
            "supply",
            "14.4 V DC at the amplifier's terminals",
            SECOND_HAND,
            StandardFindings.supply(14.4)),
        cta("supply tolerance", "about ±0.1 V", NOT_SURE, StandardFindings.supply(14.4)),
        cta("load", "4 Ω, resistive", READ, StandardFindings.load(4)),
        cta("distortion", "THD+N of 1 % at most", READ, StandardFindings.thdPlusNoise(1)),
        cta("THD+N bandwidth", "about 22 kHz", NOT_SURE, StandardFindings.bandwidth(22_000)),
        cta("band", "rated power from 20 Hz to 20 kHz", READ, StandardFindings::band),
        cta("channels", "all driven together", SURE, StandardFindings::channels),
        cta("duration", "15 s of continuous power", SECOND_HAND, StandardFindings.held(15)),
        cta("dynamic power", "at least 2.5 s", SECOND_HAND, sheet -> Finding.NONE),
        cta("noise", "A-weighted, against 1 W into 4 Ω", READ, sheet -> Finding.NONE),
        cta("air", "about 25 °C", NOT_SURE, StandardFindings.airNear(25)),
        cfr("supply", "the voltage disclosed", FAIRLY_SURE, StandardFindings::suppliedAt),
        cfr("load", "8 Ω", READ, StandardFindings.load(8)),
        cfr(
            "distortion",
            "THD+N of 1 % at most, from 250 mW up",
            READ,
            StandardFindings.thdPlusNoise(1)),
        cfr("band", "rated power from 20 Hz to 20 kHz", READ, StandardFindings::band),
        cfr("channels", "at least two driven together", READ, StandardFindings::channels),
        cfr("duration", "5 min at every frequency", SURE, StandardFindings.held(300)),
        cfr(
            "before the test",
            "1 h at an eighth of rated power",
            SURE,
            StandardFindings.warmUp(60)),
        cfr("air", "still, at least 25 °C", READ, StandardFindings.airFrom(25)),
        iec("supply", "the rated one", SURE, StandardFindings::ratedSupply),
        iec("supply tolerance", "about ±2 %", NOT_SURE, StandardFindings.supplyHeld(0.02)),
        iec("tone", "1 kHz", SURE, StandardFindings.tone(1000)),
        iec("controls", "their settings stated", SURE, StandardFindings::controls),
        iec(
            "before the test",
            "about 1 h at 10 dB below rated",
            NOT_SURE,
            StandardFindings.warmUp(60)),
        iec(
            "distortion-limited power",
            "power at the stated THD",
            FAIRLY_SURE,
            StandardFindings::atLimit),
        iec(
            "short-term power",
            "after 1 s of bursts, 10 times",
            FAIRLY_SURE,
            sheet -> Finding.NONE),
        iec("long-term power", "1 min on, 2 min off, 10 times", FAIRLY_SURE, sheet -> Finding.NONE),
        iec(
            "power limited by heat",
            "for as long as nothing is too hot",
            FAIRLY_SURE,
            sheet -> Finding.NONE),
        iec("source impedance", "from two loads", SURE, StandardFindings::source),
        iec("regulation", "volts without and with load, dB", SURE, StandardFindings::regulation));
  }

  private static StandardItem cta(
      String item, String asks, Known known, Function<Sheet, Finding> found) {
    return new StandardItem(CTA_2006, item, asks, known, found);
  }

  private static StandardItem cfr(
      String item, String asks, Known known, Function<Sheet, Finding> found) {
    return new StandardItem(CFR_432, item, asks, known, found);
  }

  private static StandardItem iec(
      String item, String asks, Known known, Function<Sheet, Finding> found) {
    return new StandardItem(IEC_60268, item, asks, known, found);
  }
}
