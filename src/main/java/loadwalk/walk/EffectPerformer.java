package loadwalk.walk;

/**
 * Performs effects in the outside world: one method for each {@link Effect}, so that none can be
 * forgotten.
 *
 * @param <R> the result of an effect
 * @param <X> what is thrown if an effect fails
 */
public interface EffectPerformer<R, X extends Exception> {

  R appendJournal(Effect.AppendJournal asked) throws X;

  R writeAnew(Effect.WriteAnew asked) throws X;

  R keepPhoto(Effect.KeepPhoto asked) throws X;

  R bell() throws X;

  R openWalk(Effect.OpenWalk asked) throws X;

  R openPractice(Effect.OpenPractice asked) throws X;

  R resumeWalk(Effect.ResumeWalk asked) throws X;

  R showPlan(Effect.ShowPlan asked) throws X;

  R showPlanSoFar() throws X;

  R showSheet(Effect.ShowSheet asked) throws X;

  R showLedger(Effect.ShowLedger asked) throws X;

  R compare(Effect.Compare asked) throws X;

  R stopWork() throws X;

  R fillStep() throws X;

  R readCapture(Effect.ReadCapture asked) throws X;

  R confirmCautions() throws X;

  R takeCapture(Effect.TakeCapture asked) throws X;

  R listen(Effect.Listen asked) throws X;

  R hold(Effect.Hold asked) throws X;

  R keepHeld(Effect.KeepHeld asked) throws X;

  R connectMeters() throws X;

  R closeWalk() throws X;

  R leave() throws X;
}
