package loadwalk.result;

import static loadwalk.result.Readings.says;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loadwalk.bench.Bench;
import loadwalk.bench.Lead;
import loadwalk.bench.Supply;
import loadwalk.quantity.Quantity;
import loadwalk.quantity.Unit;
import org.junit.jupiter.api.Test;

class LeadDropTest {
  private static final Lead PLUS = new Lead("plus", new Lead.Awg(4), 2, 1);
  private static final Lead MINUS = new Lead("minus", new Lead.Awg(4), 2, 1);
  private static final Quantity AMPS = Quantity.exact(50, Unit.AMPERE);

  @Test
  void leadsAlone_giveTheDropOfTheirCopper() {
    List<Remark> remarks = new ArrayList<>();
    double drop = drop(List.of(), List.of(PLUS, MINUS), 14, remarks).orElseThrow().value();
    // AWG 4: 0.8152 mOhm/m at 20 °C (ASTM B258 geometry, IACS copper); warm copper has more, by
    // 0.393 %/K: from 20 °C to 105 °C by a third.
    double cold = 50 * 4 * 0.8152e-3;
    assertTrue(drop > cold && drop < 1.34 * cold, "drop " + drop + " V, cold " + cold + " V");
    assertTrue(says(remarks, "lead-drop-computed"));
  }

  @Test
  void dropFarAboveCopper_isToldWithItsWatts() {
    List<Remark> remarks = new ArrayList<>();
    Quantity drop =
        drop(List.of(new Supply(14.4, 60)), List.of(PLUS, MINUS), 13.2, remarks).orElseThrow();
    assertEquals(1.2, drop.value(), 1e-9);
    Remark excess =
        remarks.stream().filter(r -> r.code().equals("lead-drop-excess")).findFirst().orElseThrow();
    assertTrue(excess.text().contains("1.2 V"), excess.text());
    assertTrue(excess.text().matches(".*the other (4[89]|5[0-2]) W in a joint.*"), excess.text());
  }

  @Test
  void dropOfAboutTheCopper_isNotTold() {
    List<Remark> remarks = new ArrayList<>();
    drop(List.of(new Supply(14.4, 60)), List.of(PLUS, MINUS), 14.2, remarks);
    assertFalse(says(remarks, "lead-drop-excess"));
  }

  @Test
  void neitherSuppliesNorLeads_giveNoDrop() {
    assertEquals(Optional.empty(), drop(List.of(), List.of(), 14, new ArrayList<>()));
  }

  private static Optional<Quantity> drop(
      List<Supply> supplies, List<Lead> leads, double terminal, List<Remark> remarks) {
    Bench bench =
        new Bench(
            "North bench", supplies, leads, OptionalDouble.empty(), List.of(), List.of(), 0.9);
    return new LeadDrop(bench, Readings.WIRE, remarks)
        .of(Quantity.exact(terminal, Unit.VOLT), AMPS);
  }
}
