package loadwalk.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DialogueTest {
  private static final String IDN = "Halvorsen & Pike,Loopback 6,0,1.0\n";

  private Dialogue state;
  private final List<Act> acts = new ArrayList<>();

  private void on(Signal signal) {
    Dialogue.Turn turn = state.on(signal);
    state = turn.next();
    acts.clear();
    acts.addAll(turn.acts());
  }

  private void asked() {
    state = Dialogue.begin(List.of(Connections.VOLTS), 0).next();
    on(new Signal.Opened(10));
    assertEquals(List.of(new Act.Send("*IDN?")), acts);
    on(new Signal.Received(IDN, 20));
    assertEquals(List.of(new Act.Identified(Connections.WHO), new Act.Send("MEAS:VOLT:AC?")), acts);
  }

  private MeterReading heard() {
    return assertInstanceOf(Act.Heard.class, acts.get(0)).reading();
  }

  @Test
  void reply_inTwoPieces_isOneReading() {
    asked();
    on(new Signal.Received("+1.370", 30));
    assertEquals(List.of(), acts);
    on(new Signal.Received("00E+01\r\n", 200));
    assertEquals(13.7, assertInstanceOf(MeterReading.Value.class, heard()).value(), 1e-12);
    assertEquals(Dialogue.Phase.RESTING, state.phase());
    on(new Signal.Clock(200 + Dialogue.REST_MILLIS));
    assertEquals(List.of(new Act.Send("MEAS:VOLT:AC?")), acts);
  }

  @Test
  void lateReply_isDroppedBeforeTheNextQuestion() {
    asked();
    on(new Signal.Clock(20 + Connections.PATIENCE));
    assertInstanceOf(MeterReading.Silent.class, heard());
    assertEquals(new Act.Send("*IDN?"), acts.get(1));
    on(new Signal.Received("+1.37000E+01\n", 600));
    assertInstanceOf(MeterReading.Late.class, heard());
    on(new Signal.Received(IDN, 610));
    assertEquals(new Act.Send("SYST:ERR?"), acts.get(1));
    on(new Signal.Received("0,\"No error\"\n", 620));
    assertEquals(List.of(), acts);
    on(new Signal.Clock(620 + Dialogue.REST_MILLIS));
    on(new Signal.Received("+9.00000E+00\n", 900));
    assertEquals(9, assertInstanceOf(MeterReading.Value.class, heard()).value());
  }

  @Test
  void lateReplyAndIdentity_inOnePiece_areToldApart() {
    asked();
    on(new Signal.Received("+1.3", 400));
    on(new Signal.Clock(20 + Connections.PATIENCE));
    on(new Signal.Received("7000E+01\n" + IDN, 600));
    assertEquals(new MeterReading.Late("+1.37000E+01"), heard());
    assertEquals(new Act.Send("SYST:ERR?"), acts.get(2));
  }

  @Test
  void unknownQuery_isExplainedByTheMetersOwnError() {
    asked();
    on(new Signal.Clock(20 + Connections.PATIENCE));
    on(new Signal.Received(IDN, 600));
    on(new Signal.Received("-113,\"Undefined header\"\n", 620));
    MeterReading.Garbage told = assertInstanceOf(MeterReading.Garbage.class, heard());
    assertTrue(told.sentence().contains("-113,\"Undefined header\""), told.sentence());
    assertTrue(told.refusal("DMM").contains("MEAS:VOLT:AC?"), told.refusal("DMM"));
  }

  @Test
  void meterWithoutIdentity_isAskedAllTheSame_andOpenedAnewWhenItFallsSilent() {
    state = Dialogue.begin(List.of(Connections.VOLTS), 0).next();
    on(new Signal.Opened(10));
    on(new Signal.Clock(10 + Connections.PATIENCE));
    assertEquals(List.of(new Act.Send("MEAS:VOLT:AC?")), acts);
    on(new Signal.Received("13.7\n", 600));
    assertEquals(13.7, assertInstanceOf(MeterReading.Value.class, heard()).value());
    on(new Signal.Clock(900));
    on(new Signal.Clock(900 + Connections.PATIENCE));
    assertTrue(acts.contains(new Act.Close()), acts.toString());
    assertEquals(Dialogue.Phase.CLOSED, state.phase());
    on(new Signal.Received("13.7\n", 1500));
    assertEquals(List.of(), acts);
  }

  @Test
  void lateIdentity_doesNotPassForAReading() {
    state = Dialogue.begin(List.of(Connections.VOLTS), 0).next();
    on(new Signal.Opened(10));
    on(new Signal.Clock(10 + Connections.PATIENCE));
    on(new Signal.Received(IDN, 600));
    assertEquals(new Act.Identified(Connections.WHO), acts.get(0));
    assertEquals(Dialogue.Phase.ASKING, state.phase());
    on(new Signal.Received("13.7\n", 610));
    assertEquals(13.7, assertInstanceOf(MeterReading.Value.class, heard()).value());
  }

  @Test
  void pulledCable_isToldForEveryQuestion_andTriedAgainMoreAndMoreSeldom() {
    state = Dialogue.begin(List.of(Connections.VOLTS, Connections.AMPS), 0).next();
    List<Long> pauses = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      on(new Signal.Lost("connection refused", 1000));
      assertEquals(3, acts.size(), acts.toString());
      pauses.add(state.wakeMillis() - 1000);
      on(new Signal.Clock(state.wakeMillis()));
      assertEquals(List.of(new Act.Open()), acts);
    }
    assertEquals(List.of(1000L, 2000L, 4000L, 8000L, 15_000L, 15_000L, 15_000L, 15_000L), pauses);
  }

  @Test
  void endlessReply_isCutOff() {
    asked();
    on(new Signal.Received("x".repeat(5000), 30));
    MeterReading.Garbage garbage = assertInstanceOf(MeterReading.Garbage.class, heard());
    assertTrue(garbage.raw().length() <= ScpiReply.LONGEST + 1, garbage.raw());
    assertTrue(state.partial().isEmpty());
  }

  @Test
  void questions_areAskedInTurn() {
    state = Dialogue.begin(List.of(Connections.VOLTS, Connections.AMPS), 0).next();
    on(new Signal.Opened(0));
    on(new Signal.Received(IDN, 1));
    assertTrue(acts.contains(new Act.Send("MEAS:VOLT:AC?")), acts.toString());
    on(new Signal.Received("13.7\n", 2));
    on(new Signal.Clock(300));
    assertEquals(List.of(new Act.Send("MEAS:CURR:DC?")), acts);
    on(new Signal.Received("16\n", 301));
    assertEquals(1, assertInstanceOf(Act.Heard.class, acts.get(0)).question());
  }
}
