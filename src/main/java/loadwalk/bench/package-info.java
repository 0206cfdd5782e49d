/**
 * Row 1: the equipment on the bench as plain records, and the data tables of wire, fuses and
 * resistors.
 *
 * <pre>
 *  amplifier file ──BenchFiles───> Amplifier, Rating
 *  bench file     ──BenchFiles───> Bench: Supply, Lead, LoadResistor, Meter
 *  data/*.csv     ──TableReader──> Tables ──> Wire, FuseCurve, ResistorDerating
 * </pre>
 *
 * <p>Out: ohms, drop, heat and permitted current of a lead, opening times of a fuse, watts a
 * resistor takes; every table value has its source. Open {@link loadwalk.bench.Bench} and {@link
 * loadwalk.bench.ReadingId} first, {@link loadwalk.bench.Tables} for the data.
 */
package loadwalk.bench;
