/**
 * Row 2: SCPI meters: the meaning of replies, the order of questions, the scatter of readings.
 *
 * <pre>
 *  Signal (a line, a tick, a loss) ──Dialogue──> Act (open, send, close) and MeterReading
 *                                                MeterReading ──MeterWatch──> Scatter
 * </pre>
 *
 * <p>Everything here is pure; sockets, serial ports, clocks and threads live in {@code
 * loadwalk.app}. Only questions are ever sent. Open {@link loadwalk.meter.Dialogue} first.
 *
 * <p>Two example benches, with a bench meter on the network and a 10 mV/A clamp on a serial port:
 *
 * <pre>{@code
 * {"format":"loadwalk-bench/1","meters":[
 *   {"label":"bench DMM","reads":"outputVolts","percent":0.1,"digits":2,"resolution":0.001,
 *    "connection":{"tcp":"192.0.2.10:5025","query":"MEAS:VOLT:AC?"}}]}
 *
 * {"format":"loadwalk-bench/1","meters":[
 *   {"label":"clamp on the DMM","reads":"supplyAmps","percent":1.5,"digits":2,"resolution":0.1,
 *    "connection":{"serial":"/dev/ttyUSB0","baud":9600,"query":"MEAS:VOLT:DC?","unit":"V",
 *                  "scale":100}}]}
 * }</pre>
 */
package loadwalk.meter;
