package loadwalk.app;

import java.io.IOException;
import java.util.List;
import loadwalk.app.meter.MetersOfWalk;
import loadwalk.app.store.PhotoBox;
import loadwalk.app.store.WalkName;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.walk.Effect;
import loadwalk.walk.EffectPerformer;
import loadwalk.walk.fact.WalkState;

/**
 * Does each effect on the machine, for the program as it stands when it is asked.
 *
 * @param machine what holds the open walk, its meters and its sound input
 * @param program the program
 */
record ProgramEffects(MachineEffects machine, Program program)
    implements EffectPerformer<List<ProgramEvent>, IOException> {
  private static final String READING_WALKS = "Reading walks. Esc stops.";

  @Override
  public List<ProgramEvent> appendJournal(Effect.AppendJournal asked) {
    WalkState state = program.walk().orElseThrow().state();
    return List.of(new ProgramEvent.OfWalk(machine.kept(asked, state)));
  }

  @Override
  public List<ProgramEvent> writeAnew(Effect.WriteAnew asked) {
    return machine.writtenAnew(asked, program.walk().orElseThrow().state());
  }

  @Override
  public List<ProgramEvent> keepPhoto(Effect.KeepPhoto asked) {
    PhotoBox box = new PhotoBox(machine.home());
    return List.of(new ProgramEvent.OfWalk(box.keep(asked)));
  }

  @Override
  public List<ProgramEvent> bell() {
    machine.ring();
    return List.of();
  }

  @Override
  public List<ProgramEvent> openWalk(Effect.OpenWalk asked) throws IOException {
    return machine.open(asked);
  }

  @Override
  public List<ProgramEvent> openPractice(Effect.OpenPractice asked) throws IOException {
    return machine.open(MachineEffects.onPracticeBench(asked));
  }

  @Override
  public List<ProgramEvent> resumeWalk(Effect.ResumeWalk asked) {
    return machine.resume(new WalkName(asked.walk()));
  }

  @Override
  public List<ProgramEvent> showPlan(Effect.ShowPlan asked) throws IOException {
    return List.of(machine.texts().plan(machine.sequences(), asked));
  }

  @Override
  public List<ProgramEvent> showPlanSoFar() {
    return List.of(machine.texts().planSoFar(program));
  }

  @Override
  public List<ProgramEvent> showSheet(Effect.ShowSheet asked) {
    return List.of(machine.texts().sheet(machine.walks(), asked.walk(), program));
  }

  @Override
  public List<ProgramEvent> showLedger(Effect.ShowLedger asked) {
    LedgerForScreen ledger = machine.ledger();
    return machine.background().answering(READING_WALKS, task -> ledger.show(asked, task));
  }

  @Override
  public List<ProgramEvent> compare(Effect.Compare asked) {
    LedgerForScreen ledger = machine.ledger();
    return machine.background().answering(READING_WALKS, task -> ledger.compare(asked, task));
  }

  @Override
  public List<ProgramEvent> stopWork() {
    machine.background().stop();
    return List.of();
  }

  @Override
  public List<ProgramEvent> fillStep() {
    return machine.meters().fill(program);
  }

  @Override
  public List<ProgramEvent> readCapture(Effect.ReadCapture asked) {
    return machine.capture(asked, program);
  }

  @Override
  public List<ProgramEvent> confirmCautions() {
    return List.of(new ProgramEvent.CautionRead());
  }

  @Override
  public List<ProgramEvent> takeCapture(Effect.TakeCapture asked) {
    return machine.taken(program.state().waves().found(), asked.step());
  }

  @Override
  public List<ProgramEvent> listen(Effect.Listen asked) {
    MetersOfWalk meters = machine.meters();
    return machine.live().listen(asked.on(), program, meters.practice(), meters.nudge());
  }

  @Override
  public List<ProgramEvent> hold(Effect.Hold asked) {
    return machine.live().hold(asked.on());
  }

  @Override
  public List<ProgramEvent> keepHeld(Effect.KeepHeld asked) {
    return machine.live().keep(asked.step(), program, machine.background());
  }

  @Override
  public List<ProgramEvent> connectMeters() {
    return machine.connectMeters(program.walk().orElseThrow().state().opened());
  }

  @Override
  public List<ProgramEvent> closeWalk() throws IOException {
    return machine.leave(false);
  }

  @Override
  public List<ProgramEvent> leave() throws IOException {
    return machine.leave(true);
  }
}
