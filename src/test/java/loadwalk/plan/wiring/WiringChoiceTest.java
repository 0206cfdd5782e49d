package loadwalk.plan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import loadwalk.bench.LoadResistor;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which wiring is chosen from a drawer of resistors, and what is said and bought if none is. */
class WiringChoiceTest {
  /** Reads a stock such as "2 x 8/100, 1 x 4/50": how many, ohms, watts. */
  private static List<LoadResistor> stock(String text) {
    List<LoadResistor> kinds = new ArrayList<>();
    for (String kind : text.equals("-") ? new String[0] : text.split(", ")) {
      String[] parts = kind.split(" x |/");
      kinds.add(
          new LoadResistor(
              parts[1],
              Double.parseDouble(parts[1]),
              5,
              Double.parseDouble(parts[2]),
              Integer.parseInt(parts[0]),
              OptionalDouble.empty()));
    }
    return kinds;
  }

  private static WiringAnswer answer(String stock, int loads, double ohms, double watts) {
    return new WiringSearch(stock(stock), Parts.share(0.75))
        .find(new WiringRequest(ohms, watts, loads, 5));
  }

  /**
   * By hand. The fewest resistors win, then the closest value; 5 % either way is close enough, and
   * no resistor takes more than 75 % of its rating: 8 Ω and 8 Ω of 100 W take 150 W together.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          1 x 4/100                        ; 1 ; 4    ; 75    ; 4
          1 x 4/100, 2 x 8/100             ; 1 ; 4    ; 75    ; 4
          1 x 4/100, 2 x 8/100             ; 1 ; 4    ; 75.1  ; 8-a || 8-b
          2 x 8/100                        ; 1 ; 4    ; 150   ; 8-a || 8-b
          2 x 4/100                        ; 1 ; 8    ; 150   ; 4-a + 4-b
          4 x 4/100                        ; 1 ; 4    ; 300   ; (4-a + 4-b) || (4-c + 4-d)
          4 x 1/100                        ; 1 ; 1    ; 300   ; (1-a + 1-b) || (1-c + 1-d)
          1 x 4.2/100                      ; 1 ; 4    ; 10    ; 4.2
          1 x 3.8/100                      ; 1 ; 4    ; 10    ; 3.8
          1 x 4.21/100                     ; 1 ; 4    ; 10    ; none
          1 x 3.79/100                     ; 1 ; 4    ; 10    ; none
          1 x 4.1/100, 1 x 3.95/100        ; 1 ; 4    ; 10    ; 3.95
          1 x 3.9/100, 1 x 4.05/100        ; 1 ; 4    ; 10    ; 4.05
          1 x 4.1/100, 2 x 8/100           ; 1 ; 4    ; 10    ; 4.1
          2 x 4.1/100, 4 x 8/100           ; 2 ; 4    ; 10    ; 4.1-a, 4.1-b
          1 x 4.1/100, 2 x 8/100           ; 2 ; 4    ; 10    ; 4.1, 8-a || 8-b
          1 x 4/100, 1 x 8/100             ; 1 ; 12   ; 10    ; 4 + 8
          1 x 4/100, 1 x 8/100             ; 1 ; 2.67 ; 10    ; 4 || 8
          1 x 2/50, 1 x 8/200              ; 1 ; 10   ; 187.5 ; 2 + 8
          1 x 2/50, 1 x 8/200              ; 1 ; 10   ; 188   ; none
          1 x 2/100, 2 x 4/100             ; 1 ; 4    ; 150   ; 2 + (4-a || 4-b)
          1 x 4/100, 2 x 4.01/50           ; 1 ; 2.67 ; 110   ; 4 || (4.01-a + 4.01-b)
          2 x 4.01/50, 1 x 4/100           ; 1 ; 2.67 ; 110   ; 4 || (4.01-a + 4.01-b)
          1 x 4/100, 2 x 4.01/50           ; 1 ; 6    ; 110   ; 4 + (4.01-a || 4.01-b)
          1 x 4/100                        ; 2 ; 4    ; 10    ; none
          2 x 4/100                        ; 2 ; 4    ; 75    ; 4-a, 4-b
          3 x 4/100                        ; 2 ; 4    ; 75.1  ; none
          """)
  void wiring_ofAStock(String stock, int loads, double ohms, double watts, String formulas) {
    String told =
        answer(stock, loads, ohms, watts)
            .wired()
            .map(f -> f.loads().stream().map(Network::formula).collect(Collectors.joining(", ")))
            .orElse("none");
    assertEquals(formulas, told);
  }

  /** By hand: 1.1 || 10 is 0.991 Ω, 1 || 10 is 0.909 Ω; two ways to 2 Ω with the same three. */
  @ParameterizedTest
  @CsvSource({"1.995, 1 + (1.1 || 10)", "2.005, 1.1 + (1 || 10)"})
  void wiringsOfTheSameResistors_theClosestIsTaken(double ohms, String formula) {
    WiringRequest request = new WiringRequest(ohms, 10, 1, 1);
    WiringAnswer answer =
        new WiringSearch(stock("1 x 1/100, 1 x 1.1/100, 1 x 10/100"), Parts.share(0.75))
            .find(request);
    assertEquals(formula, answer.wired().orElseThrow().loads().get(0).formula());
  }

  /** Two wirings of the same resistors and value: the one that bears more watts is kept. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1 x 4/100, 1 x 4/50, 1 x 4/51 ; 2.667 ; 112",
        "1 x 4/51, 1 x 4/50, 1 x 4/100 ; 2.667 ; 112",
        "1 x 4/50, 1 x 4/100, 1 x 4/51 ; 6 ; 112"
      })
  void wiringsOfTheSameValue_theOneThatBearsMoreIsTaken(String stock, double ohms, double watts) {
    List<LoadResistor> kinds = new ArrayList<>();
    for (LoadResistor kind : stock(stock)) {
      String label = kind.watts() + " W";
      kinds.add(new LoadResistor(label, kind.ohms(), 5, kind.watts(), 1, OptionalDouble.empty()));
    }
    WiringAnswer answer =
        new WiringSearch(kinds, Parts.share(0.75)).find(new WiringRequest(ohms, watts, 1, 5));
    WiringSearchTest.assertHolds(kinds, answer.wired().orElseThrow(), stock);
  }

  /** Large loads are grids of equal resistors, which share the watts evenly. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          16 x 8/100            ; 1 ; 8   ; 1200 ; 16
          32 x 8/100            ; 2 ; 8   ; 1200 ; 32
          16 x 8/100, 9 x 4/100 ; 1 ; 8   ; 1200 ; 16
          9 x 4/100, 16 x 8/100 ; 1 ; 4   ; 675  ; 9
          100 x 1/50            ; 1 ; 1   ; 3750 ; 100
          20 x 8/100            ; 1 ; 0.4 ; 1500 ; 20
          12 x 1/100            ; 1 ; 12  ; 900  ; 12
          """)
  void wiring_ofALargeStock_sharesTheWatts(
      String stock, int loads, double ohms, double watts, int resistors) {
    WiringAnswer.Found found = answer(stock, loads, ohms, watts).wired().orElseThrow();
    assertEquals(resistors, found.loads().stream().mapToInt(load -> load.parts().size()).sum());
    WiringSearchTest.assertHolds(stock(stock), found, stock);
  }

  /**
   * Loads that need every resistor of the stock at 75 % of its rating, so that only a wiring that
   * works all of them equally will do. By hand: 2 × 4 of 8 Ω are 4 Ω and take √(600/4) A, as 2 × 2
   * of 2 Ω do, which are 2 Ω; 8 of 8 Ω side by side take √(600 · 1) V, as two rows of 2 + 2 Ω do.
   * The last three join two kinds side by side, or in a row, with a third.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          8 x 8/100, 4 x 2/100            ; 1 ; 6      ; 900    ; 12
          4 x 2/100, 8 x 8/100            ; 1 ; 6.31   ; 900    ; 12
          8 x 8/100, 4 x 2/100            ; 1 ; 5.72   ; 900    ; 12
          8 x 8/100, 4 x 2/100            ; 1 ; 0.6667 ; 900    ; 12
          4 x 2/100, 8 x 8/100            ; 1 ; 0.701  ; 900    ; 12
          8 x 8/100, 4 x 2/100            ; 1 ; 0.636  ; 900    ; 12
          16 x 8/100, 8 x 2/100           ; 2 ; 6      ; 900    ; 24
          5 x 8/100, 4 x 4/200, 3 x 16/50 ; 1 ; 0.5517 ; 1087.5 ; 12
          5 x 8/100, 4 x 4/50, 3 x 16/200 ; 1 ; 104    ; 975    ; 12
          7 x 8/100, 6 x 4/200            ; 1 ; 0.4211 ; 1425   ; 13
          7 x 8/100, 6 x 4/50             ; 1 ; 80     ; 750    ; 13
          4 x 8/100, 2 x 4/200, 6 x 4.5/100 ; 1 ; 1.75  ; 1050   ; 12
          6 x 4.5/100, 2 x 4/200, 4 x 8/100 ; 1 ; 1.75  ; 1050   ; 12
          4 x 2/100, 2 x 4/200, 6 x 3.56/100 ; 1 ; 9.148 ; 1049  ; 12
          5 x 8/100, 3 x 4/200, 7 x 3.23/100 ; 1 ; 1.1887 ; 1348 ; 15
          7 x 3.23/100, 3 x 4/200, 5 x 8/100 ; 1 ; 1.1887 ; 1348 ; 15
          12 x 8/100, 11 x 4/200, 7 x 16/50 ; 1 ; 0.2133 ; 2812.5 ; 30
          12 x 8/100, 11 x 4/50, 7 x 16/200 ; 1 ; 252   ; 2362.5 ; 30
          """)
  void wiring_ofAllThereIs_worksAllEqually(
      String stock, int loads, double ohms, double watts, int resistors) {
    wiring_ofALargeStock_sharesTheWatts(stock, loads, ohms, watts, resistors);
  }

  /** By hand,. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          -           ; 1 ; 4   ; 75    ; The bench lists no load resistors. ; 1 x 4/100
          -           ; 1 ; 4   ; 76    ; The bench lists no load resistors. ; 2 x 2/100
          -           ; 2 ; 4   ; 75    ; The bench lists no load resistors. ; 2 x 4/100
          -           ; 1 ; 0.5 ; 10    ; The bench lists no load resistors. ; 1 x 0.5/100
          -           ; 1 ; 1   ; 10    ; The bench lists no load resistors. ; 1 x 1/100
          -           ; 1 ; 8   ; 10    ; The bench lists no load resistors. ; 1 x 8/100
          -           ; 1 ; 10  ; 10    ; The bench lists no load resistors. ; 1 x 10/100
          -           ; 1 ; 16  ; 10    ; The bench lists no load resistors. ; 1 x 16/100
          -           ; 1 ; 4   ; 15000 ; The bench lists no load resistors. ; 200 x 2/100
          -           ; 1 ; 4   ; 15001 ; The bench lists no load resistors. ; nothing
          -           ; 2 ; 4   ; 7350  ; The bench lists no load resistors. ; 196 x 2/100
          2 x 8/100   ; 1 ; 1   ; 600   ; All resistors together bear 150 W. The step needs 600 W. ; 6 x 8/100
          1 x 4/100   ; 2 ; 4   ; 10    ; Two loads need at least two resistors. ; 1 x 4/100
          1 x 4/50    ; 1 ; 4   ; 38    ; All resistors together bear 37.5 W. The step needs 38 W. ; 2 x 2/50
          2 x 4/50    ; 2 ; 4   ; 40    ; All resistors together bear 75 W. The step needs 80 W. ; 3 x 2/50
          2 x 8/100   ; 1 ; 2   ; 50    ; No wiring of these resistors makes 2 Ω within 5 %, 50 W. ; 1 x 2/100
          2 x 8/100   ; 2 ; 4   ; 50    ; No wiring of these resistors makes two loads of 4 Ω within 5 %, 50 W each. ; 1 x 4/100
          3 x 8/100   ; 2 ; 4   ; 100   ; No wiring of these resistors makes two loads of 4 Ω within 5 %, 100 W each. ; 1 x 8/100
          """)
  void noWiring_saysWhyAndWhatToBuy(
      String stock, int loads, double ohms, double watts, String sentence, String purchase) {
    WiringAnswer.None none = answer(stock, loads, ohms, watts).lacking().orElseThrow();
    assertEquals(sentence, none.sentence());
    assertEquals(
        purchase,
        none.purchase()
            .map(
                kind -> kind.count() + " x " + (kind.ohms() + "/" + kind.watts()).replace(".0", ""))
            .orElse("nothing"));
    none.purchase().ifPresent(bought -> assertEnough(stock, bought, loads, ohms, watts));
  }

  /** What is bought makes the load possible, and one resistor less does not. */
  private static void assertEnough(
      String stock, LoadResistor bought, int loads, double ohms, double watts) {
    WiringRequest request = new WiringRequest(ohms, watts, loads, 5);
    for (int fewer = 0; fewer <= 1; fewer++) {
      List<LoadResistor> larger = new ArrayList<>(stock(stock));
      if (bought.count() > fewer) {
        larger.add(
            new LoadResistor(
                "bought",
                bought.ohms(),
                bought.tolerancePercent(),
                bought.watts(),
                bought.count() - fewer,
                bought.ppmPerKelvin()));
      }
      assertEquals(
          fewer == 0,
          new WiringSearch(larger, Parts.share(0.75)).find(request).wired().isPresent(),
          stock + bought);
    }
  }

  /** As many kinds as the search can tell apart: one more of any is not tried, but grids are. */
  @Test
  void purchase_forADrawerOfManyKinds_isOfOneKindAlone() {
    String drawer =
        IntStream.range(0, 31)
            .mapToObj(k -> "1 x " + (4 + k) + "/100")
            .collect(Collectors.joining(", "));
    WiringAnswer.None none = answer(drawer, 1, 0.05, 10).lacking().orElseThrow();
    assertEquals(
        "No wiring was found for 0.05 Ω within 5 %, 10 W. Not all were" + " tried.",
        none.sentence());
    LoadResistor bought = none.purchase().orElseThrow();
    assertEquals(0.5, bought.ohms());
    assertEquals(10, bought.count());
  }

  @Test
  void purchase_ofAResistorOneOwns_isThatResistor() {
    LoadResistor own = new LoadResistor("mine", 8, 1, 60, 1, OptionalDouble.of(50));
    WiringRequest request = new WiringRequest(4, 80, 1, 5);
    LoadResistor bought =
        new WiringSearch(List.of(own), Parts.share(0.75))
            .find(request)
            .lacking()
            .orElseThrow()
            .purchase()
            .orElseThrow();
    assertEquals(own, bought);
    LoadResistor shop =
        new WiringSearch(List.of(), Parts.share(0.75))
            .find(request)
            .lacking()
            .orElseThrow()
            .purchase()
            .orElseThrow();
    assertEquals("2R", shop.label());
    assertEquals(5, shop.tolerancePercent(), "a shop's resistor is taken as rough");
  }

  /** Not all networks of a large stock are tried, and that is said. */
  @Test
  void noWiringFound_inALargeStock_claimsNoProof() {
    WiringAnswer.None none = answer("20 x 8/100, 20 x 4.7/100", 2, 500, 10).lacking().orElseThrow();
    assertEquals(
        "No wiring was found for two loads of 500 Ω within 5 %, 10 W each."
            + " Not all were tried.",
        none.sentence());
    WiringAnswer.Found found = answer("40 x 8/100, 40 x 4.7/100", 2, 2, 900).wired().orElseThrow();
    assertTrue(!found.fewest(), "nor is it claimed that a large wiring is the smallest");
  }

  @ParameterizedTest
  @CsvSource({"200, 4, found", "201, 4, the stock holds 201 resistors"})
  void stock_ofMoreThan200_isRefused(int count, double ohms, String told) {
    assertEquals(told, refusal(count + " x " + ohms + "/100", ohms).replaceAll(" and the .*", ""));
  }

  /** Thirty-one kinds of one resistor each can be told apart. */
  @ParameterizedTest
  @CsvSource({"31, found", "32, the stock holds 32 kinds of resistor"})
  void stock_ofTooManyKinds_isRefused(int kinds, String told) {
    StringBuilder stock = new StringBuilder("1 x 4/100");
    for (int kind = 1; kind < kinds; kind++) {
      stock.append(", 1 x ").append(4 + kind).append("/100");
    }
    assertEquals(told, refusal(stock.toString(), 4).replaceAll(", more than .*", ""));
  }

  private static String refusal(String stock, double ohms) {
    try {
      return answer(stock, 1, ohms, 10).wired().map(f -> "found").orElse("none");
    } catch (IllegalArgumentException refused) {
      return refused.getMessage();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0, 10, 1, 5, 'a load must be a number of ohms above 0, got 0.0'",
    "Infinity, 10, 1, 5, 'a load must be a number of ohms above 0, got Infinity'",
    "4, -1, 1, 5, 'watts must be a number from 0 up, got -1.0'",
    "4, Infinity, 1, 5, 'watts must be a number from 0 up, got Infinity'",
    "4, 10, 0, 5, 'there are 1 or 2 loads, got 0'",
    "4, 10, 3, 5, 'there are 1 or 2 loads, got 3'",
    "4, 10, 1, -1, 'the tolerance of a load must lie from 0 up to below 100 %, got -1.0'",
    "4, 10, 1, 100, 'the tolerance of a load must lie from 0 up to below 100 %, got 100.0'"
  })
  void request_thatCannotBeMeant_isRefused(
      double ohms, double watts, int loads, double tolerance, String sentence) {
    assertEquals(
        sentence,
        assertThrows(
                IllegalArgumentException.class,
                () -> new WiringRequest(ohms, watts, loads, tolerance))
            .getMessage());
  }

  /** Without any tolerance only the exact value will do. */
  @Test
  void request_withoutTolerance_isForTheExactValue() {
    WiringRequest exact = new WiringRequest(4, 0, 1, 0);
    assertEquals(
        "8-a || 8-b",
        new WiringSearch(stock("1 x 4.01/100, 2 x 8/100"), Parts.share(0.75))
            .find(exact)
            .wired()
            .orElseThrow()
            .loads()
            .get(0)
            .formula());
  }
}
