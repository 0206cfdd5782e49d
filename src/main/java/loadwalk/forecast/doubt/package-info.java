/**
 * Doubts: which entry of a step is more likely a slip than an honest reading, and which slip.
 *
 * <pre>
 *  entries ──StepJudge──┬─ LoadedSearch: LoadedJudge, EarlierSlips ─┐
 *                       └─ one reading alone, LoadSlip ─────────────┴─DoubtWords──> Doubt
 *  Hypotheses: weighed; SlipCandidate: what may be meant; SlipPriors: how often
 * </pre>
 *
 * <p>In: the entries of one step and the models of {@code loadwalk.forecast.model}. Out: doubts, in
 * words. Open {@link loadwalk.forecast.doubt.StepJudge} first, then {@link
 * loadwalk.forecast.doubt.Hypotheses}.
 */
package loadwalk.forecast.doubt;
