package loadwalk.faults;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** All deliberate faults, in the order of their lists. */
record FaultList(List<Fault> faults) {
  static final Path FOLDER = Path.of("src/test/faults");

  FaultList {
    faults = List.copyOf(faults);
    Set<String> names = new HashSet<>();
    for (Fault fault : faults) {
      if (!names.add(fault.name())) {
        throw new BadFault(fault.area() + ".faults: a second fault is called " + fault.name());
      }
    }
  }

  /** Reads every list of a tree. */
  static FaultList of(Path tree) throws IOException {
    List<Fault> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(tree.resolve(FOLDER))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".faults")).sorted().toList()) {
        String area = file.getFileName().toString().replace(".faults", "");
        found.addAll(FaultReader.read(area, Files.readString(file)));
      }
    }
    return new FaultList(found);
  }

  /** Returns those that are named, or stand in an area that is; all of them for no name. */
  FaultList named(List<String> namesAndAreas) {
    for (String wanted : namesAndAreas) {
      if (faults.stream().noneMatch(fault -> fault.isCalled(wanted))) {
        throw new BadFault("no fault and no area is called " + wanted);
      }
    }
    return new FaultList(
        faults.stream()
            .filter(f -> namesAndAreas.isEmpty() || namesAndAreas.stream().anyMatch(f::isCalled))
            .toList());
  }

  /** Returns some of them, the same for the same commit. */
  FaultList drawn(int count, String commit) {
    List<Fault> shuffled = new ArrayList<>(faults);
    Collections.shuffle(shuffled, new Random(new BigInteger(commit, 16).longValue()));
    return new FaultList(shuffled.subList(0, Math.min(count, shuffled.size())));
  }

  /** Returns the tests that are named to catch any of them, each once. */
  List<String> tests() {
    return faults.stream().flatMap(fault -> fault.caughtBy().stream()).distinct().sorted().toList();
  }
}
