package loadwalk.report.sheet;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import loadwalk.plan.StockRules;
import loadwalk.report.Hostile;
import loadwalk.report.Photos;
import loadwalk.report.page.Picture;
import loadwalk.report.page.Sheets;
import loadwalk.report.page.Walks;
import loadwalk.text.Sha256;
import loadwalk.text.Visible;
import loadwalk.walk.fact.WalkState;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

/** Photos on sheets: shown where a format can, named where it cannot, inert everywhere. */
public class SheetPhotosTest {
  public static final SheetOptions AT_HAND =
      new SheetOptions(
          false,
          Stream.of(Photos.png(), Photos.jpeg())
              .map(file -> Picture.of(file).orElseThrow())
              .collect(Collectors.toMap(p -> Sha256.of(p.bytes()), p -> p)));

  private static final WalkState WALK = Walks.photographed().state();
  private static final Sheet SHEET = Sheet.of(WALK, AT_HAND, StockRules.RULES);
  private static final Sheet NOT_AT_HAND = Sheet.of(WALK, SheetOptions.DEFAULT, StockRules.RULES);

  @Test
  void html_holdsThePicturesThemselves_withoutTheirMetadata() {
    String html = Sheets.html(SHEET);
    Matcher image =
        Pattern.compile("<img src=\"data:(image/(?:png|jpeg));base64,([^\"]*)\" alt=\"([^\"]*)\">")
            .matcher(html);
    List<String> types = new ArrayList<>();
    while (image.find()) {
      byte[] bytes = Base64.getDecoder().decode(image.group(2));
      assertArrayEquals(bytes, Picture.of(bytes).orElseThrow().bytes());
      assertFalse(new String(bytes, StandardCharsets.ISO_8859_1).contains(Photos.SECRET));
      assertFalse(image.group(3).isEmpty());
      types.add(image.group(1));
    }
    assertEquals(List.of("image/png", "image/jpeg"), types);
    assertEquals(2, html.split("<img", -1).length - 1, "an image that is not ours");
    assertFalse(html.contains("<script"));
    assertTrue(html.contains("the bench, loads to the left</figcaption>"));
  }

  @Test
  void html_withoutThePictures_saysWhereTheyAre() {
    String html = Sheets.html(NOT_AT_HAND);
    assertFalse(html.contains("<img"));
    assertTrue(html.contains("(sessions/test.photos/bench.png; not shown here)"), html);
  }

  @Test
  void markdown_linksToTheFiles_andNowhereElse() {
    List<String> found = new ArrayList<>();
    Parser parser = Parser.builder().extensions(List.of(TablesExtension.create())).build();
    parser
        .parse(Sheets.markdown(SHEET))
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Image image) {
                StringBuilder alt = new StringBuilder();
                for (var n = image.getFirstChild(); n != null; n = n.getNext()) {
                  alt.append(n instanceof Text text ? text.getLiteral() : n.toString());
                }
                found.add(image.getDestination() + " " + alt);
              }
            });
    String harm = Visible.sentence(Hostile.MARKUP + Hostile.LINK + Hostile.TURNING);
    assertEquals(
        List.of(
            "sessions/test.photos/bench.png the bench, loads to the left",
            "sessions/test.photos/a%20b%281%29.jpg " + harm),
        found);
    assertFalse(Sheets.markdown(NOT_AT_HAND).contains("!["));
  }

  @Test
  void json_listsThem_byItsSchema() throws Exception {
    JsonNode json = new ObjectMapper().readTree(SheetJson.text(SHEET));
    JsonNode photo = json.at("/photos/1");
    WalkState.Attachment kept = WALK.attachments().get(1);
    assertEquals(kept.path(), photo.get("path").asText());
    assertEquals(kept.caption(), photo.get("caption").asText());
    assertEquals(kept.sha256(), photo.get("sha256").asText());
    assertEquals("image/jpeg", photo.get("mediaType").asText());
    var schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(getClass().getResourceAsStream("/loadwalk/schema/sheet.schema.json"));
    assertEquals(Set.of(), schema.validate(json));
  }

  @Test
  void csvAndText_nameThem() throws Exception {
    Map<String, String> captions =
        CSVFormat.RFC4180.parse(new StringReader(SheetCsv.text(SHEET))).stream()
            .filter(row -> row.get(0).equals("photo"))
            .collect(Collectors.toMap((CSVRecord row) -> row.get(2), row -> row.get(6)));
    assertEquals("the bench, loads to the left", captions.get("sessions/test.photos/bench.png"));
    assertEquals(2, captions.size());
    String text = String.join(" ", Sheets.lines(SHEET, 80, false));
    assertTrue(text.replaceAll("\\s+", " ").contains("(sessions/test.photos/bench.png)"), text);
  }
}
