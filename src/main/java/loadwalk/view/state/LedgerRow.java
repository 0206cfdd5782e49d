package loadwalk.view.state;

/**
 * One walk as the ledger's screen lists it.
 *
 * @param walk the walk's name
 * @param amplifier the amplifier's name, marked where it is a practice amplifier
 * @param way the letter of the way it was done; walks of one letter can be set side by side
 * @param most the most power it gave and into what
 * @param honesty the least of measured over rated
 * @param perFuseAmp watts per ampere of fuse
 * @param efficiency the best efficiency
 */
public record LedgerRow(
    String walk,
    String amplifier,
    String way,
    String most,
    String honesty,
    String perFuseAmp,
    String efficiency) {}
