package loadwalk.plan.wiring;

import java.util.ArrayList;
import java.util.List;
import loadwalk.bench.Figures;
import loadwalk.text.Sentence;

/**
 * Draws a network in plain ASCII and lists its connections.
 *
 * <p>Resistors are called R1, R2 and so on from left to right; each has a left and a right
 * terminal.
 */
public final class WiringPicture {
  private int drawn;

  private WiringPicture() {}

  /**
   * Returns the drawing, one string for each line, with the amplifier's two terminals at its ends.
   */
  public static List<String> lines(Network network, String leftTerminal, String rightTerminal) {
    WiringBlock block = network.draw(new WiringPicture());
    List<String> out = new ArrayList<>();
    String left = leftTerminal + " --";
    for (int i = 0; i < block.lines().size(); i++) {
      boolean wire = i == 0;
      String line =
          (wire ? left : " ".repeat(left.length()))
              + block.lines().get(i)
              + (wire ? "-- " + rightTerminal : "");
      out.add(line.stripTrailing());
    }
    return out;
  }

  /** Returns which resistor each R stands for, one string each: "R1 = 4R-a, 4 Ω 100 W". */
  public static List<String> legend(Network network) {
    List<String> out = new ArrayList<>();
    List<Network.Part> parts = network.parts();
    for (int i = 0; i < parts.size(); i++) {
      Network.Part part = parts.get(i);
      out.add(
          Sentence.of(
              "R{} = {}, {} Ω {} W",
              i + 1,
              part.name(),
              Figures.three(part.ohms()),
              Figures.three(part.kind().watts())));
    }
    return out;
  }

  /** Returns the joints, one string each: "L+ to R1 left, R3 left". */
  public static List<String> joints(Network network, String leftTerminal, String rightTerminal) {
    Joints joints = new Joints(leftTerminal, rightTerminal);
    network.wire(leftTerminal, rightTerminal, joints);
    return joints.words();
  }

  /** Draws the next resistor. */
  WiringBlock resistor() {
    drawn++;
    return new WiringBlock(List.of("[R" + drawn + "]"));
  }
}
