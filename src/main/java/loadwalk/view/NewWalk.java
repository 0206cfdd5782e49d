package loadwalk.view;

import java.util.Optional;
import loadwalk.bench.Amplifier;
import loadwalk.bench.Bench;

/** A new walk while it is being put together. */
record NewWalk(Optional<String> sequence, Optional<Amplifier> amplifier, Optional<Bench> bench) {
  static NewWalk empty() {
    return new NewWalk(Optional.empty(), Optional.empty(), Optional.empty());
  }

  NewWalk on(String name) {
    return new NewWalk(Optional.of(name), amplifier, bench);
  }

  NewWalk with(Amplifier chosen) {
    return new NewWalk(sequence, Optional.of(chosen), bench);
  }

  NewWalk withoutBench() {
    return new NewWalk(sequence, amplifier, Optional.empty());
  }

  NewWalk with(Bench chosen) {
    return new NewWalk(sequence, amplifier, Optional.of(chosen));
  }
}
