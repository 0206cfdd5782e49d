package loadwalk.numeric;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/** Reads the published check values; every file carries its own source. */
final class Reference {
  private Reference() {}

  static JsonNode json(String name) {
    try (InputStream in = open(name)) {
      return new ObjectMapper().readTree(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the columns of a CSV file with one header line; NaN where there is no number. */
  static double[][] columns(String name) {
    try (InputStream in = open(name)) {
      List<String> lines =
          new String(in.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .skip(1)
              .filter(line -> !line.isBlank())
              .toList();
      int width = lines.get(0).split(",").length;
      return IntStream.range(0, width)
          .mapToObj(c -> lines.stream().mapToDouble(l -> number(l.split(",")[c])).toArray())
          .toArray(double[][]::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static double number(String cell) {
    try {
      return Double.parseDouble(cell);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  static double[] numbers(JsonNode array) {
    return IntStream.range(0, array.size()).mapToDouble(i -> array.get(i).asDouble()).toArray();
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(
        Reference.class.getResourceAsStream("/reference/" + name), "missing " + name);
  }
}
