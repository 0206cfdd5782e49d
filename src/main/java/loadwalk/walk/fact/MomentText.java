package loadwalk.walk.fact;

import java.time.LocalDate;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;

/**
 * Reads the one form of a time that {@link FactText} writes, {@code 2026-01-31T09:30:00.123Z} with
 * or without its milliseconds. A parser for all of ISO 8601 would cost more time than the rest of a
 * record.
 */
final class MomentText {
  private static final String FORM = "0000-00-00T00:00:00.000Z";
  private static final int WITHOUT_MILLIS = 19;

  /** The number of days that every month has. */
  private static final int SURE_DAYS = 28;

  private MomentText() {}

  /**
   * Returns milliseconds since 1970; empty if the text has another form or names a day or an hour
   * that needs a calendar.
   */
  static OptionalLong millis(String text) {
    boolean whole = text.length() == FORM.length();
    boolean seconds = text.length() == WITHOUT_MILLIS + 1 && text.charAt(WITHOUT_MILLIS) == 'Z';
    if (!(whole || seconds) || !fits(text, seconds ? WITHOUT_MILLIS : FORM.length())) {
      return OptionalLong.empty();
    }
    int month = number(text, 5, 7);
    int day = number(text, 8, 10);
    int hour = number(text, 11, 13);
    int minute = number(text, 14, 16);
    int second = number(text, 17, 19);
    boolean sure = month >= 1 && month <= 12 && day >= 1 && day <= SURE_DAYS;
    if (!sure || hour > 23 || minute > 59 || second > 59) {
      return OptionalLong.empty();
    }
    long days = LocalDate.of(number(text, 0, 4), month, day).toEpochDay();
    long ofDay = TimeUnit.HOURS.toSeconds(hour) + TimeUnit.MINUTES.toSeconds(minute) + second;
    long millis = whole ? number(text, 20, 23) : 0;
    return OptionalLong.of(
        TimeUnit.DAYS.toMillis(days) + TimeUnit.SECONDS.toMillis(ofDay) + millis);
  }

  private static boolean fits(String text, int end) {
    for (int i = 0; i < end; i++) {
      char c = text.charAt(i);
      char form = FORM.charAt(i);
      if (form == '0' ? c < '0' || c > '9' : c != form) {
        return false;
      }
    }
    return true;
  }

  private static int number(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      number = 10 * number + text.charAt(i) - '0';
    }
    return number;
  }
}
