/**
 * Room of plan: how to wire a load from the resistors on the bench.
 *
 * <pre>
 *  WiringRequest ─┐                 ┌─ ExactSearch: every network, for small stocks
 *                 ├─ WiringSearch ──┤                                  ──> WiringAnswer
 *  resistors ─────┘                 └─ GridSearch: grids and pairs, for large ones
 *
 *  WiringAnswer ──> Network ──> WiringSummary, WiringPicture      (found)
 *             └───> Purchase                                      (none: what to buy)
 * </pre>
 *
 * <p>In: a load in ohms and watts, and the stock of resistors. Out: the network with the fewest
 * resistors, none overloaded, with its drawing, joints and heat; or the reason why there is none
 * and what to buy. {@link loadwalk.plan.wiring.WiringLoadBank} answers for a whole bench and
 * remembers its answers; {@link loadwalk.plan.wiring.WireBackCheck} compares the expected loss of
 * the supply leads with the measured loss. Open {@link loadwalk.plan.wiring.WiringSearch} first.
 */
package loadwalk.plan.wiring;
