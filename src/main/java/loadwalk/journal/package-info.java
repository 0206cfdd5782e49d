/**
 * Row 2: framed append-only records and their recovery; independent of amplifiers.
 *
 * <pre>
 *  body ──Framing──> a line ──JournalWriter──> Storage: write, force ──> KeepResult
 *                                         └──> WitnessFile: where the journal ends
 *  bytes, Witness ──Recovery──> Recovered: the records, and what follows them ──> Soundness
 * </pre>
 *
 * <p>Open {@link loadwalk.journal.Recovery} first; {@code Row} is its table of cases.
 *
 * <h2>The journal format, version 2</h2>
 *
 * <p>A journal is a UTF-8 text file of lines, each ending in one line feed (byte 0A; no carriage
 * return, no byte order mark). Every line is one JSON object written in exactly this form, with no
 * space outside the body. The first record, and every other one:
 *
 * <pre>
 * {"seq":1,"crc":"xxxxxxxx","body":{...}}
 * {"seq":N,"after":"yyyyyyyy","crc":"xxxxxxxx","body":{...}}
 * </pre>
 *
 * <ul>
 *   <li>{@code N} counts 1, 2, 3, … without a gap, in decimal, with no leading zero and at most 15
 *       digits.
 *   <li>{@code yyyyyyyy} is the {@code crc} of the record before it. So a record cannot be taken
 *       out, exchanged or brought in from another journal unseen.
 *   <li>{@code xxxxxxxx} is a CRC-32C (Castagnoli, as in RFC 3720 appendix B.4) in eight lower case
 *       hexadecimal digits. It covers the digits of {@code N}, one colon, {@code yyyyyyyy} and one
 *       more colon where the record has them, and the bytes of the body exactly as in the line. For
 *       {@code N} = 7 and the body {@code {"a":1}} it covers the bytes <code>7:yyyyyyyy:{"a":1}
 *       </code>.
 *   <li>The body is one JSON object, at most {@value loadwalk.journal.Framing#BODY_BYTES_MAX}
 *       bytes, with no control character (bytes 00 to 1F) and no repeated key. Its meaning is up to
 *       the program that writes it.
 *   <li>The body of record 1 has a key {@code "format"} whose value is {@code
 *       "loadwalk-journal/2"}. A later version may change everything else, but it frames its first
 *       line as described here, so that an older program can tell that the file is newer.
 *   <li>A record counts once its whole line, with the line feed, has been forced to the disk. A
 *       reader takes records from the start as long as they can be read, pass their checksum, are
 *       numbered in order and name the one before; {@link loadwalk.journal.Recovery} defines the
 *       outcome for what comes after them.
 *   <li>After the last record there may be what one interrupted write leaves: the beginning of the
 *       line due, in which whole sectors may read as zeros. Anything else is damage. Lines that all
 *       end in 0D 0A were copied by a program that changes line ends: they are read without the 0D.
 * </ul>
 *
 * <p>In version 1 the format is {@code "loadwalk-journal/1"} and no record names the one before;
 * its journals are read, and continued in their own form.
 *
 * <h2>The witness</h2>
 *
 * <p>That records are missing at the end no record can tell. So a file beside the journal says
 * where it ends, in one line with its line feed and always as many bytes:
 *
 * <pre>{"first":"xxxxxxxx","last":"yyyyyyyy","seq":"000000000000042","crc":"zzzzzzzz"}</pre>
 *
 * <p>They are the {@code crc} of the first record, that of the last record that counts, its number,
 * and a CRC-32C of everything before {@code ,"crc"}. It is written after that record was forced,
 * and forced itself when the journal is closed, so it never says more than the journal held. A
 * witness of another first record says nothing. Without one, an empty one or one of zeros, the end
 * is not known, unless the last record says that it is the last: what a program writes into a body.
 */
package loadwalk.journal;
