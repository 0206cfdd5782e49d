package loadwalk.view.state;

/**
 * One walk as the ledger's screen lists it.
 *
 * @param walk the walk's name
 * @param amplifier the amplifier's name, marked where it is a practice amplifier
 * @param rank its place, such as "A 2", in the list A of walks ranked among each other
 * @param most the most power it gave and into what, behind what is to be known of it first
 * @param honesty the least of measured over rated
 * @param perFuseAmp watts per ampere of fuse
 * @param efficiency the best efficiency
 * @param standing in one line, what is to be known of its power and its rank
 */
public record LedgerRow(
    String walk,
    String amplifier,
    String rank,
    String most,
    String honesty,
    String perFuseAmp,
    String efficiency,
    String standing) {}
