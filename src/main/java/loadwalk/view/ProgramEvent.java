package loadwalk.view;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Meter;
import loadwalk.chart.Chart;
import loadwalk.text.Sentence;
import loadwalk.view.canvas.Key;
import loadwalk.view.home.NewWalkScreen;
import loadwalk.view.screen.TextScreen;
import loadwalk.view.state.ConnectedMeters;
import loadwalk.view.state.LedgerRows;
import loadwalk.view.state.Library;
import loadwalk.view.state.Live;
import loadwalk.view.state.ProgramState;
import loadwalk.view.state.WaveFound;
import loadwalk.view.walk.NewMetersScreen;
import loadwalk.walk.Effect;
import loadwalk.walk.Event;
import loadwalk.walk.Model;
import loadwalk.wave.file.CaptureSetup;

/** Something that reaches the program from outside. */
public sealed interface ProgramEvent {

  /** Returns the program after this event and its effects. */
  ProgramNext reach(Program program, ProgramUpdate update);

  /** Tells whether a hand at the keyboard did it, which knows what its own keys bring up. */
  default boolean isByHand() {
    return false;
  }

  /** Something that only changes what the program knows or shows; nothing follows from it. */
  sealed interface News extends ProgramEvent {
    /** Returns the program that knows it. */
    Program toldTo(Program program);

    @Override
    default ProgramNext reach(Program program, ProgramUpdate update) {
      return ProgramNext.quiet(toldTo(program));
    }
  }

  /** A key was pressed. */
  record Pressed(Key key) implements ProgramEvent {
    @Override
    public ProgramNext reach(Program program, ProgramUpdate update) {
      return update.pressed(program.sayingOfKeys(Optional.empty()), key);
    }

    @Override
    public boolean isByHand() {
      return true;
    }
  }

  /** Text was pasted; line breaks in it press nothing. */
  record Pasted(String text) implements ProgramEvent {
    @Override
    public ProgramNext reach(Program program, ProgramUpdate update) {
      return ProgramUpdate.pasted(program.sayingOfKeys(Optional.empty()), text);
    }

    @Override
    public boolean isByHand() {
      return true;
    }
  }

  /** Something reached the open walk. */
  record OfWalk(Event event) implements ProgramEvent {
    @Override
    public ProgramNext reach(Program program, ProgramUpdate update) {
      return update.walked(ProgramUpdate.aged(program, event), List.of(event));
    }
  }

  /** A walk was opened or read back. */
  record WalkReady(Model model) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.opened(model);
    }
  }

  /** The open walk was closed. */
  record WalkClosed() implements News {
    @Override
    public Program toldTo(Program program) {
      return program.closed();
    }
  }

  /** The library was read. */
  record LibraryRead(Library library) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.knowing(program.state().with(library));
    }
  }

  /** The practice bench's meters were read. */
  record PracticeRead(Optional<ProgramState.Practice> practice) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.knowing(program.state().practising(practice));
    }
  }

  /** The connected meters of the bench have said something. */
  record MetersRead(ConnectedMeters meters) implements ProgramEvent {
    @Override
    public ProgramNext reach(Program program, ProgramUpdate update) {
      return ProgramUpdate.metered(program, meters);
    }
  }

  /**
   * The bench of the walk just opened names meters at addresses that may be opened only if asked.
   */
  record MetersAsked(List<Meter> meters) implements News {
    /** Copies the list. */
    public MetersAsked {
      meters = List.copyOf(meters);
    }

    @Override
    public Program toldTo(Program program) {
      return program.on(new NewMetersScreen(meters, program.screen()));
    }
  }

  /** The cautions of a capture were read and confirmed. */
  record CautionRead() implements News {
    @Override
    public Program toldTo(Program program) {
      return program.knowing(program.state().capturing(program.state().waves().confirmed()));
    }
  }

  /**
   * A captured wave was read, or could not be.
   *
   * @param asked what this answers
   * @param found what was read
   */
  record CaptureRead(Effect.ReadCapture asked, WaveFound found) implements News {
    /** One that nobody waits for any more must not take the place of the one that is shown. */
    @Override
    public Program toldTo(Program program) {
      return program.screen().awaits(asked)
          ? program
              .knowing(program.state().capturing(program.state().waves().after(found)))
              .saying(Optional.empty())
              .on(program.screen().afterCapture(found))
          : program;
    }
  }

  /** The live input has something new. */
  record LiveHeard(Live live) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.knowing(program.state().hearing(live));
    }
  }

  /** It is known what the live input's samples stand for. */
  record InputKnown(CaptureSetup setup) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.knowing(program.state().capturing(program.state().waves().calibrated(setup)));
    }
  }

  /** The held wave of a step is in a file: that step offers it, elsewhere a notice names it. */
  record HeldKept(String step, String file) implements News {
    @Override
    public Program toldTo(Program program) {
      return program
          .screen()
          .withHeld(step, file, program.state())
          .map(wave -> program.on(wave).saying(Optional.empty()))
          .orElse(program.saying(Optional.of(Sentence.of("The held wave is kept in {}.", file))));
    }
  }

  /**
   * A text came in, to be shown on its own screen.
   *
   * @param title what it is
   * @param lines its lines
   * @param charts its charts, each to be shown as large as the screen
   */
  record TextReady(String title, List<String> lines, List<Chart> charts) implements News {
    /** Copies the lists. */
    public TextReady {
      lines = List.copyOf(lines);
      charts = List.copyOf(charts);
    }

    /** Shows a text without charts. */
    public TextReady(String title, List<String> lines) {
      this(title, lines, List.of());
    }

    @Override
    public Program toldTo(Program program) {
      return program.on(new TextScreen(title, lines, charts, 0, program.screen()));
    }
  }

  /** Keys did not do what they seem to; shows on every screen until the next key. */
  record KeysTold(String sentence) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.sayingOfKeys(Optional.of(sentence));
    }
  }

  /** A comparison of walks was made: shown where it was asked for, dropped once that was left. */
  record ComparisonReady(TextReady text) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.screen().comparesWalks() ? text.toldTo(program) : program;
    }
  }

  /** A notice came in. */
  record Told(String sentence) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.saying(Optional.of(sentence));
    }
  }

  /** A new walk on a sequence is wanted, its amplifier and bench not described yet. */
  record FormsWanted(String sequence) implements News {
    @Override
    public Program toldTo(Program program) {
      return program.on(NewWalkScreen.on(sequence));
    }
  }

  /** The ledger was read. */
  record LedgerReady(LedgerRows ledger) implements News {
    @Override
    public Program toldTo(Program program) {
      return program
          .screen()
          .withLedger(ledger)
          .map(screen -> program.on(screen).saying(Optional.empty()))
          .orElse(program);
    }
  }
}
