/**
 * Walks without an operator at the keys.
 *
 * <p>{@link loadwalk.walk.rehearse.Rehearsal} takes answers written before through the walker of
 * the bench. {@link loadwalk.walk.rehearse.Replay} judges a kept walk by the rules of today and
 * lists what differs. {@link loadwalk.walk.rehearse.PracticeAnswers} reads the meters of the
 * practice bench for the current step. Open Rehearsal first: it shows how a walk is driven.
 */
package loadwalk.walk.rehearse;
