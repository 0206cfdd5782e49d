/**
 * Row 2: framed append-only records and their recovery; independent of amplifiers.
 *
 * <pre>
 *  body ──Framing──> a line ──JournalWriter──> Storage: write, force ──> KeepResult
 *  bytes ──Recovery──> Recovered: the records, and what follows them
 * </pre>
 *
 * <p>Open {@link loadwalk.journal.Recovery} first; {@code Row} is its table of cases.
 *
 * <h2>The journal format, version 1</h2>
 *
 * <p>A journal is a UTF-8 text file of lines, each ending in one line feed (byte 0A; no carriage
 * return, no byte order mark). Every line is one JSON object written in exactly this form, with no
 * space outside the body:
 *
 * <pre>{"seq":N,"crc":"xxxxxxxx","body":{...}}</pre>
 *
 * <ul>
 *   <li>{@code N} counts 1, 2, 3, … without a gap, in decimal, with no leading zero and at most 15
 *       digits.
 *   <li>{@code xxxxxxxx} is a CRC-32C (Castagnoli, as in RFC 3720 appendix B.4) in eight lower case
 *       hexadecimal digits. It covers the digits of {@code N}, one colon, and the bytes of the body
 *       exactly as in the line. For {@code N} = 7 and the body {@code {"a":1}} it covers the bytes
 *       <code>7:{"a":1}</code>.
 *   <li>The body is one JSON object, at most {@value loadwalk.journal.Framing#BODY_BYTES_MAX}
 *       bytes, with no control character (bytes 00 to 1F) and no repeated key. Its meaning is up to
 *       the program that writes it.
 *   <li>The body of record 1 has a key {@code "format"} whose value is {@code
 *       "loadwalk-journal/1"}. A later version may change everything else, but it frames its first
 *       line as described here, so that an older program can tell that the file is newer.
 *   <li>A record counts once its whole line, with the line feed, has been forced to the disk. A
 *       reader takes records from the start as long as they can be read, pass their checksum and
 *       are numbered in order; {@link loadwalk.journal.Recovery} defines the outcome for what comes
 *       after them.
 * </ul>
 */
package loadwalk.journal;
