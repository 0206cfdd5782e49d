package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import loadwalk.bench.LoadResistor;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import loadwalk.text.Sentence;

/** A load made of resistors in series and parallel. */
public sealed interface Network {

  /** Returns the value in ohms, with every resistor at its nominal or measured value. */
  double ohms();

  /** Returns the resistors from left to right. */
  List<Part> parts();

  /**
   * Returns the value with its uncertainty: each tolerance is rectangular (JCGM 100, 4.3.7), and
   * resistors of one kind are assumed to deviate together, as those from one batch or measured with
   * one meter do. This gives the larger uncertainty of the two possible assumptions.
   */
  Quantity value();

  /**
   * Returns the watts in each resistor, in the order of {@link #parts()}.
   *
   * @param watts the watts in the whole network, 0 or more
   */
  List<Heat> heats(double watts);

  /**
   * Returns the most watts in the whole network that keep every resistor within what it bears.
   *
   * @param bears the watts that a resistor of a kind bears
   */
  double mostWatts(ToDoubleFunction<LoadResistor> bears);

  /** Returns the network on one line: "(4R-a + 4R-b) || 8R-a". */
  String formula();

  /** Returns the formula as part of a larger one: in brackets unless it is a single resistor. */
  default String member() {
    return "(" + formula() + ")";
  }

  /** Returns the members wired in series, or the network itself if it is not a series network. */
  default List<Network> inSeries() {
    return List.of(this);
  }

  /**
   * Returns the members wired in parallel, or the network itself if it is not a parallel network.
   */
  default List<Network> inParallel() {
    return List.of(this);
  }

  /** Wires it between two nodes, resistor by resistor from left to right. */
  void wire(String from, String to, Joints joints);

  /** Draws it, resistor by resistor from left to right. */
  WiringBlock draw(WiringPicture picture);

  /**
   * Returns the resistor nearest to what it bears.
   *
   * @param watts the watts in the whole network
   * @param bears the watts that a resistor of a kind bears
   */
  default Heat hottest(double watts, ToDoubleFunction<LoadResistor> bears) {
    return heats(watts).stream()
        .max((a, b) -> Double.compare(a.share(bears), b.share(bears)))
        .orElseThrow();
  }

  /**
   * The power in one resistor.
   *
   * @param part the resistor
   * @param watts the watts in it
   */
  record Heat(Part part, double watts) {
    /** Returns the watts divided by what the resistor bears. */
    double share(ToDoubleFunction<LoadResistor> bears) {
      return watts / bears.applyAsDouble(part.kind());
    }
  }

  /**
   * One resistor.
   *
   * @param name which resistor it is: "4R-b"
   * @param kind its kind
   */
  record Part(String name, LoadResistor kind) implements Network {
    /** Checks that neither is null. */
    public Part {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(kind, "kind");
    }

    @Override
    public double ohms() {
      return kind.ohms();
    }

    @Override
    public List<Part> parts() {
      return List.of(this);
    }

    @Override
    public Quantity value() {
      double u = ohms() * kind.tolerancePercent() / 100 / Math.sqrt(3);
      return Quantity.of(ohms(), Unit.OHM, Sentence.of("tolerance of {}", kind.label()), u);
    }

    @Override
    public List<Heat> heats(double watts) {
      if (!(watts >= 0) || Double.isInfinite(watts)) {
        throw new IllegalArgumentException("watts must be a number from 0 up, got " + watts);
      }
      return List.of(new Heat(this, watts));
    }

    @Override
    public double mostWatts(ToDoubleFunction<LoadResistor> bears) {
      return bears.applyAsDouble(kind);
    }

    @Override
    public String formula() {
      return name;
    }

    @Override
    public String member() {
      return name;
    }

    @Override
    public void wire(String from, String to, Joints joints) {
      joints.resistor(from, to);
    }

    @Override
    public WiringBlock draw(WiringPicture picture) {
      return picture.resistor();
    }
  }

  /**
   * Networks in series: the same current flows through all.
   *
   * @param members two or more networks
   */
  record Series(List<Network> members) implements Network {
    /** Copies the members. */
    public Series {
      members = several(members);
    }

    @Override
    public double ohms() {
      return members.stream().mapToDouble(Network::ohms).sum();
    }

    @Override
    public List<Part> parts() {
      return members.stream().flatMap(m -> m.parts().stream()).toList();
    }

    @Override
    public Quantity value() {
      return members.stream().map(Network::value).reduce(Quantity::plus).orElseThrow();
    }

    @Override
    public List<Heat> heats(double watts) {
      double whole = ohms();
      List<Heat> heats = new ArrayList<>();
      members.forEach(m -> heats.addAll(m.heats(watts * m.ohms() / whole)));
      return Collections.unmodifiableList(heats);
    }

    @Override
    public double mostWatts(ToDoubleFunction<LoadResistor> bears) {
      double ampsSquared =
          members.stream().mapToDouble(m -> m.mostWatts(bears) / m.ohms()).min().orElseThrow();
      return ampsSquared * ohms();
    }

    @Override
    public String formula() {
      return joined(members, " + ");
    }

    @Override
    public List<Network> inSeries() {
      return members;
    }

    @Override
    public void wire(String from, String to, Joints joints) {
      String left = from;
      for (int i = 0; i < members.size(); i++) {
        String right = i == members.size() - 1 ? to : joints.node();
        members.get(i).wire(left, right, joints);
        left = right;
      }
    }

    @Override
    public WiringBlock draw(WiringPicture picture) {
      return WiringBlock.row(members.stream().map(member -> member.draw(picture)).toList());
    }
  }

  /**
   * Networks in parallel: the same volts are across all.
   *
   * @param members two or more networks
   */
  record Parallel(List<Network> members) implements Network {
    /** Copies the members. */
    public Parallel {
      members = several(members);
    }

    @Override
    public double ohms() {
      return 1 / members.stream().mapToDouble(m -> 1 / m.ohms()).sum();
    }

    @Override
    public List<Part> parts() {
      return members.stream().flatMap(m -> m.parts().stream()).toList();
    }

    @Override
    public Quantity value() {
      double whole = ohms();
      Quantity sum = new Quantity(whole, Unit.OHM, Map.of());
      for (Network member : members) {
        double part = whole / member.ohms();
        sum = sum.plus(member.value().mapped(0, part * part, Unit.OHM));
      }
      return sum;
    }

    @Override
    public List<Heat> heats(double watts) {
      double whole = ohms();
      List<Heat> heats = new ArrayList<>();
      members.forEach(m -> heats.addAll(m.heats(watts * whole / m.ohms())));
      return Collections.unmodifiableList(heats);
    }

    @Override
    public double mostWatts(ToDoubleFunction<LoadResistor> bears) {
      double voltsSquared =
          members.stream().mapToDouble(m -> m.mostWatts(bears) * m.ohms()).min().orElseThrow();
      return voltsSquared / ohms();
    }

    @Override
    public String formula() {
      return joined(members, " || ");
    }

    @Override
    public List<Network> inParallel() {
      return members;
    }

    @Override
    public void wire(String from, String to, Joints joints) {
      members.forEach(member -> member.wire(from, to, joints));
    }

    @Override
    public WiringBlock draw(WiringPicture picture) {
      return WiringBlock.stack(members.stream().map(member -> member.draw(picture)).toList());
    }
  }

  private static List<Network> several(List<Network> members) {
    if (members.size() < 2) {
      throw new IllegalArgumentException("a network joins two or more, got " + members.size());
    }
    return List.copyOf(members);
  }

  private static String joined(List<Network> members, String sign) {
    return members.stream().map(Network::member).collect(Collectors.joining(sign));
  }
}
