package loadwalk.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import loadwalk.json.JsonOut;
import loadwalk.report.page.Block;
import loadwalk.report.page.Block.Column;
import loadwalk.report.page.Block.Paragraph;
import loadwalk.report.page.Block.Table;
import loadwalk.report.page.Page.Section;
import loadwalk.report.sheet.StandardItem.Finding;
import loadwalk.report.sheet.StandardItem.Standard;
import loadwalk.text.Sentence;

/** Sets a walk beside published standards, in words and as JSON; conformity is never claimed. */
final class StandardSection {
  private StandardSection() {}

  static Section of(Sheet sheet) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Paragraph(
            "What three standards ask to be stated, beside what this walk recorded. This sheet"
                + " claims conformity to none of them. Each figure says how it is known here; the"
                + " standard's own text decides."));
    for (Standard standard : Standard.values()) {
      blocks.add(table(standard, sheet));
    }
    return new Section("standards", "Beside published standards", blocks, true);
  }

  private static Table table(Standard standard, Sheet sheet) {
    List<List<String>> rows = new ArrayList<>();
    for (StandardItem item : StandardItems.all()) {
      if (item.standard() == standard) {
        rows.add(
            List.of(
                item.item(), item.asks(), words(item.found().apply(sheet)), item.known().word()));
      }
    }
    return new Table(
        Sentence.of("{} ({})", standard.label(), standard.scope()),
        List.of(
            Column.words("Item"),
            Column.words("Asked"),
            Column.words("This walk"),
            Column.words("Known")),
        rows);
  }

  private static String words(Finding finding) {
    return finding.value().isEmpty()
        ? finding.outcome().word()
        : Sentence.of("{}: {}", finding.outcome().word(), finding.value());
  }

  static void write(JsonGenerator out, Sheet sheet) throws IOException {
    JsonOut.objects(
        out,
        "standards",
        StandardItems.all(),
        item -> {
          Finding finding = item.found().apply(sheet);
          out.writeStringField("standard", item.standard().label());
          out.writeStringField("item", item.item());
          out.writeStringField("asks", item.asks());
          out.writeStringField("known", item.known().word());
          out.writeStringField("outcome", finding.outcome().word());
          out.writeStringField("recorded", finding.value());
        });
  }
}
