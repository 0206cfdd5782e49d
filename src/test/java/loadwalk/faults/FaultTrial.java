package loadwalk.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts faults into one copy of the tree, one after the other, and asks the tests. */
record FaultTrial(WorkCopy copy, Path logs) {
  /** Tries one fault: the tests named first, then those of its package, then all quick ones. */
  Verdict of(Fault fault) throws IOException {
    TestRun run;
    Path log = logs.resolve(fault.name() + ".log");
    List<String> stages =
        List.of(named(fault.caughtBy()), "package " + fault.testedPackage(), "all");
    try {
      run = copy.with(fault, () -> TestRun.of(copy, stages, log));
    } catch (BadFault e) {
      return new Verdict(Verdict.Kind.BAD, e.getMessage());
    }
    if (run.hung().isPresent()) {
      return new Verdict(Verdict.Kind.HUNG, "hangs in " + run.hung().get());
    }
    if (run.failed().isPresent()) {
      return caught(fault, run);
    }
    return run.ended()
        ? new Verdict(Verdict.Kind.NOT_CAUGHT, "NOT CAUGHT")
        : new Verdict(Verdict.Kind.BAD, "the tests ended early, see " + log);
  }

  private Verdict caught(Fault fault, TestRun run) throws IOException {
    String test = run.failed().orElseThrow();
    String testClass = test.replaceAll("#.*", "");
    boolean asNamed =
        fault.caughtBy().stream()
            .anyMatch(n -> testClass.equals(n) || testClass.startsWith(n + "$"));
    String said =
        String.format(
            Locale.ROOT,
            "caught by %s, %.1f s",
            test.replaceAll("^.*\\.", "").replace('#', '.'),
            run.seconds());
    if (asNamed) {
      return new Verdict(Verdict.Kind.AS_NAMED, said);
    }
    // Nobody has held this test against the tree without a fault yet.
    return withoutFault(List.of(testClass.replaceAll("\\$.*", "")))
        .map(complaint -> new Verdict(Verdict.Kind.BAD, complaint))
        .orElse(new Verdict(Verdict.Kind.BY_ANOTHER, said + ", which is not named"));
  }

  /** Runs tests on the copy as it is; says what is wrong with them, nothing if all pass. */
  Optional<String> withoutFault(List<String> tests) throws IOException {
    if (tests.isEmpty()) {
      return Optional.empty();
    }
    Path log = Files.createTempFile(logs, "without-fault", ".log");
    TestRun run = TestRun.of(copy, List.of(named(tests)), log);
    Optional<String> failed = run.failed().or(run::hung);
    if (failed.isPresent()) {
      return Optional.of(failed.get() + " fails without any fault, see " + log);
    }
    return tests.stream()
        .filter(test -> !run.passed(test))
        .map(test -> "no test of " + test + " passed without any fault, see " + log)
        .findFirst();
  }

  private static String named(List<String> tests) {
    return "named " + String.join(" ", tests);
  }
}
