package loadwalk.view.home;

import java.util.List;
import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;

/**
 * A new walk while it is being put together.
 *
 * @param amplifierLines the amplifier's form as it was left; empty where it was not opened
 * @param benchLines the bench's form as it was left; empty where it was not opened
 */
record NewWalk(
    Optional<String> sequence,
    Optional<Amplifier> amplifier,
    Optional<Bench> bench,
    List<String> amplifierLines,
    List<String> benchLines) {

  static NewWalk empty() {
    return new NewWalk(Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());
  }

  NewWalk on(String name) {
    return new NewWalk(Optional.of(name), amplifier, bench, amplifierLines, benchLines);
  }

  NewWalk with(Amplifier chosen) {
    return new NewWalk(sequence, Optional.of(chosen), bench, amplifierLines, benchLines);
  }

  NewWalk with(Bench chosen) {
    return new NewWalk(sequence, amplifier, Optional.of(chosen), amplifierLines, benchLines);
  }

  NewWalk withAmplifierLines(List<String> typed) {
    return new NewWalk(sequence, amplifier, bench, typed, benchLines);
  }

  NewWalk withBenchLines(List<String> typed) {
    return new NewWalk(sequence, amplifier, bench, amplifierLines, typed);
  }
}
