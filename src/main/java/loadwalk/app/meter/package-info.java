/**
 * Connected meters: one thread an instrument, and the practice bench that stands in for them.
 *
 * <pre>
 *  TcpPort, SerialScpiPort &lt;──> MeterLink (a thread, a Dialogue) ──> MeterReplies ──> MetersOfWalk
 *                                                                                      │
 *  loadwalk meters ──> MeterTrial ──> MeterServer (simulated instruments)              v
 *                                                                     what the meters show
 * </pre>
 *
 * <p>In: the bench, which says where each meter is. Out: the newest reading of each meter, never
 * waited for by the event loop. Open {@link loadwalk.app.meter.MetersOfWalk} first, then {@link
 * loadwalk.app.meter.MeterLink}; what is said on a line is decided in {@code loadwalk.meter}.
 */
package loadwalk.app.meter;
