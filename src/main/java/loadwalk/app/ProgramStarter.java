package loadwalk.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.function.Function;
import loadwalk.app.loop.Background;
import loadwalk.app.loop.Clocks;
import loadwalk.app.loop.Farewell;
import loadwalk.app.loop.LineFeed;
import loadwalk.app.loop.PlainLoop;
import loadwalk.app.loop.ProgramRunner;
import loadwalk.app.loop.TerminalLoop;
import loadwalk.app.store.DataHome;
import loadwalk.app.store.DiskFaults;
import loadwalk.app.store.JournalFolder;
import loadwalk.app.store.SequenceFinder;
import loadwalk.app.store.WalkFinder;
import loadwalk.app.store.WalkFolder;
import loadwalk.app.store.WalkName;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;
import loadwalk.bench.BenchFiles;
import loadwalk.cli.ExitCode;
import loadwalk.cli.OwnTables;
import loadwalk.cli.World;
import loadwalk.json.Fault;
import loadwalk.json.JsonText;
import loadwalk.json.Read;
import loadwalk.plan.Rules;
import loadwalk.text.Sentence;
import loadwalk.tui.NoStty;
import loadwalk.tui.TtyTerminal;
import loadwalk.view.LastWords;
import loadwalk.view.Program;
import loadwalk.view.ProgramEvent;
import loadwalk.view.ProgramUpdate;
import loadwalk.view.canvas.Look;
import loadwalk.walk.Effect;
import loadwalk.walk.Model;
import loadwalk.walk.Walker;

/** Starts the program for a command: on the screen, as lines, or filled in to the end. */
final class ProgramStarter implements World {
  private final PrintStream out = new PrintStream(Main.OUT, true, StandardCharsets.UTF_8);
  private final PrintWriter err;
  private final Look look;

  /** Wires it for a terminal that can show only ASCII, or UTF-8. */
  ProgramStarter(boolean ascii) {
    this.err = Main.err(ascii);
    this.look = new Look(ascii);
  }

  @Override
  public int home(Surroundings around) {
    return run(around, effects -> List.of());
  }

  @Override
  public int walk(Surroundings around, NewWalk walk) {
    Function<MachineEffects, List<ProgramEvent>> start;
    if (walk.practiceSeed().isPresent()) {
      start =
          effects ->
              opened(
                  effects,
                  MachineEffects.onPracticeBench(
                      new Effect.OpenPractice(
                          walk.sequence(), walk.practiceSeed().getAsLong(), walk.speed())));
    } else if (walk.amplifier().isPresent()) {
      Optional<Amplifier> amplifier = read(walk.amplifier().get(), BenchFiles.AMPLIFIER::read);
      Optional<Bench> bench =
          walk.bench().isPresent()
              ? read(walk.bench().get(), BenchFiles.BENCH::read)
              : Optional.of(Bench.unknown());
      if (amplifier.isEmpty() || bench.isEmpty()) {
        return ExitCode.BAD_INPUT;
      }
      start =
          effects -> {
            effects.given(bench.get());
            return opened(
                effects,
                new Effect.OpenWalk(
                    walk.sequence(), amplifier.get(), bench.get(), OptionalLong.empty(), 1));
          };
    } else {
      return needsAmplifier(around, walk);
    }
    return walk.fill() ? fill(around, start) : run(around, start);
  }

  /** Without an amplifier's file the forms ask for one; they need the screen. */
  private int needsAmplifier(Surroundings around, NewWalk walk) {
    if (around.plain() || !TtyTerminal.isThere()) {
      err.println(Sentence.of("walk {} needs --amp FILE or --practice.", walk.sequence()));
      return ExitCode.BAD_INPUT;
    }
    return run(around, effects -> List.of(new ProgramEvent.FormsWanted(walk.sequence())));
  }

  @Override
  public int resume(Surroundings around, Optional<String> walk, OptionalInt speed) {
    WalkFolder folder = folder(around);
    Optional<WalkName> name = walk.isPresent() ? named(folder, walk.get()) : newestOpen(folder);
    if (name.isEmpty()) {
      return ExitCode.BAD_INPUT;
    }
    int code =
        run(
            around,
            effects -> {
              speed.ifPresent(effects::pace);
              return effects.resume(name.get());
            });
    return code != ExitCode.DONE && folder.isDamaged(name.get()) ? ExitCode.DAMAGED : code;
  }

  private Optional<WalkName> named(WalkFolder folder, String typed) {
    try {
      return Optional.of(new WalkFinder(folder.store()).find(typed));
    } catch (IOException none) {
      err.println(DiskFaults.sentence(none));
      return Optional.empty();
    }
  }

  /** Finds the newest open walk; where there is none, says so and what could not be looked at. */
  private Optional<WalkName> newestOpen(WalkFolder folder) {
    List<WalkName> names;
    try {
      names = folder.store().list().walks().stream().map(JournalFolder.Listed::name).toList();
    } catch (IOException unreadable) {
      err.println(DiskFaults.sentence(unreadable));
      return Optional.empty();
    }
    Optional<WalkName> open =
        names.stream()
            .filter(name -> folder.peek(name).filter(w -> !w.state().isFinished()).isPresent())
            .findFirst();
    if (open.isEmpty()) {
      names.forEach(name -> folder.refusal(name).ifPresent(err::println));
      err.println("There is no open walk to resume.");
    }
    return open;
  }

  private static List<ProgramEvent> opened(MachineEffects effects, Effect.OpenWalk asked) {
    try {
      return effects.open(asked);
    } catch (IOException fault) {
      return List.of(new ProgramEvent.Told(DiskFaults.sentence(fault)));
    }
  }

  private <T> Optional<T> read(Path file, Reader<T> reader) {
    if (Files.isDirectory(file)) {
      err.println(Sentence.of("{} is a folder, not a file.", file));
      return Optional.empty();
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      // A reader of it might wait without end.
      err.println(Sentence.of("{} is a pipe or a device, not a file.", file));
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      Read<T> read = reader.read(in.readNBytes(JsonText.LARGEST + 1), file.toString());
      for (Fault fault : read.faults()) {
        err.println(fault.text());
      }
      return read.found();
    } catch (NoSuchFileException none) {
      err.println(Sentence.of("{}: there is no such file.", file));
      return Optional.empty();
    } catch (IOException e) {
      err.println(Sentence.of("{}: the file cannot be read: {}.", file, DiskFaults.reason(e)));
      return Optional.empty();
    }
  }

  private interface Reader<T> {
    Read<T> read(byte[] bytes, String file);
  }

  private int run(Surroundings around, Function<MachineEffects, List<ProgramEvent>> start) {
    boolean screen = !around.plain() && TtyTerminal.isThere();
    return screen ? onScreen(around, start) : asLines(around, start);
  }

  private int onScreen(Surroundings around, Function<MachineEffects, List<ProgramEvent>> start) {
    Rules rules = rules(around);
    MachineEffects effects = effects(around, rules, () -> out.print('\u0007'));
    ProgramRunner runner = runner(around, rules, effects);
    boolean colour = System.getenv("NO_COLOR") == null;
    TerminalLoop loop = new TerminalLoop(runner, look, colour, Clocks.MACHINE);
    Thread.setDefaultUncaughtExceptionHandler((thread, fault) -> loop.broke(fault));
    effects.nudging(loop::metersSpoke);
    effects.workingIn(Background.threads(loop::offer));
    try {
      start.apply(effects).forEach(runner::accept);
      loop.run(
          () ->
              background(
                  () -> {
                    loop.offer(library(effects));
                    rules.prepare();
                  }),
          () -> LastWords.of(runner.program()).forEach(line -> out.println(look.text(line))));
      effects.close();
      boolean lost = runner.program().walk().filter(Model::isWriting).isPresent();
      return lost ? ExitCode.BAD_INPUT : ExitCode.DONE;
    } catch (NoStty missing) {
      err.println(missing.getMessage());
      return ExitCode.BAD_INPUT;
    } catch (IOException fault) {
      err.println(
          Sentence.of("The terminal cannot be used: {}. Try --plain.", DiskFaults.reason(fault)));
      return ExitCode.BAD_INPUT;
    }
  }

  private static ProgramEvent library(MachineEffects effects) {
    try {
      return effects.libraryRead();
    } catch (IOException unreadable) {
      return new ProgramEvent.Told(DiskFaults.sentence(unreadable));
    }
  }

  private static void background(Runnable task) {
    Thread thread = new Thread(task, "library");
    thread.setDaemon(true);
    thread.start();
  }

  private int asLines(Surroundings around, Function<MachineEffects, List<ProgramEvent>> start) {
    Rules rules = rules(around);
    MachineEffects effects = effects(around, rules, () -> out.print('\u0007'));
    ProgramRunner runner = runner(around, rules, effects);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    Farewell farewell = Farewell.ifSignalled(() -> LastWords.of(runner.program()), this::tell);
    try (LineFeed lines = new LineFeed(in)) {
      effects.nudging(lines::metersSpoke);
      start.apply(effects).forEach(runner::accept);
      if (runner.program().walk().isEmpty()) {
        return withoutWalk(runner);
      }
      return closed(effects, new PlainLoop(runner, out, look, Clocks.MACHINE).run(lines));
    } catch (IOException fault) {
      err.println(Sentence.of("The input cannot be read: {}.", DiskFaults.reason(fault)));
      return ExitCode.BAD_INPUT;
    } finally {
      farewell.callOff();
    }
  }

  /** Closes the walk and returns the exit code, another one where it could not be closed. */
  private int closed(MachineEffects effects, int code) {
    try {
      effects.close();
      return code;
    } catch (IOException fault) {
      err.println(Sentence.of("The walk could not be closed: {}.", DiskFaults.reason(fault)));
      return ExitCode.BAD_INPUT;
    }
  }

  private void tell(String line) {
    err.println(look.text(line));
  }

  /** Shows a walk that another Loadwalk holds, or says why there is none. */
  private int withoutWalk(ProgramRunner runner) {
    String missing = "The home screen needs a terminal. For the commands, see loadwalk --help.";
    err.println(look.text(runner.program().state().notice().orElse(missing)));
    List<String> watched = runner.program().text();
    watched.forEach(line -> out.println(look.text(line)));
    return watched.isEmpty() ? ExitCode.BAD_INPUT : ExitCode.HELD;
  }

  private int fill(Surroundings around, Function<MachineEffects, List<ProgramEvent>> start) {
    Rules rules = rules(around);
    MachineEffects effects = effects(around, rules, () -> {});
    ProgramRunner runner = runner(around, rules, effects);
    start.apply(effects).forEach(runner::accept);
    if (runner.program().walk().isEmpty()) {
      return withoutWalk(runner);
    }
    return closed(effects, new PlainLoop(runner, out, look, Clocks.MACHINE).fill());
  }

  private static DataHome dataHome(Surroundings around) {
    return DataHome.choose(DataHome.Surroundings.ofThisProcess(around.home()));
  }

  private static WalkFolder folder(Surroundings around) {
    return new WalkFolder(new JournalFolder(dataHome(around)));
  }

  private MachineEffects effects(Surroundings around, Rules rules, Runnable bell) {
    return new MachineEffects(
        folder(around),
        new SequenceFinder(dataHome(around)),
        new TextsForScreen(rules, look.ascii()),
        Clocks.MACHINE,
        bell);
  }

  /** Reads the user's own tables at once, so that faults in them are told before any painting. */
  private static Rules rules(Surroundings around) {
    return OwnTables.rules(dataHome(around).root());
  }

  private static ProgramRunner runner(Surroundings around, Rules rules, MachineEffects effects) {
    ProgramUpdate loop = new ProgramUpdate(new Walker(rules));
    return new ProgramRunner(
        loop, effects, Program.atHome(dataHome(around).root().toString(), rules));
  }
}
