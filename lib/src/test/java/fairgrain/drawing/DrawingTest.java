package fairgrain.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.StringReader;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class DrawingTest {
    private static Drawing with(String words) {
        return new Paper()
                .box(Mark.Shade.WOOD, new Point(5, 5), new Point(45, 12))
                .across(5, 45, 16, words)
                .up(50, 5, 12, "7 mm")
                .drawing("a board", words + " wide", 60, 20);
    }

    private static Document parsed(Drawing drawing) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(Svg.file(drawing))));
    }

    @Property(tries = 200)
    void anyWordsStayWords(@ForAll String words) throws Exception {
        if (words.isBlank()) {
            return;
        }
        Document svg = parsed(with(words));
        NodeList texts = svg.getElementsByTagName("text");
        assertThat(texts.getLength()).isEqualTo(2);
        assertThat(svg.getElementsByTagName("script").getLength()).isZero();
    }

    @Test
    void itIsTrueToTheMillimetre() throws Exception {
        Document svg = parsed(with("40 mm"));
        assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("60mm");
        assertThat(svg.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 60 20");
        assertThat(svg.getElementsByTagName("polygon")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("points")
                        .getNodeValue())
                .isEqualTo("5,5 45,5 45,12 5,12");
        assertThat(with("40 mm").words()).isEqualTo(List.of("40 mm", "7 mm"));
        assertThat(svg.getElementsByTagName("desc").item(0).getTextContent()).isEqualTo("40 mm wide");
    }

    @Test
    void aDrawingWithoutWordsForTheBlindIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Paper().drawing("a board", " ", 60, 20))
                .withMessage("a drawing needs words for whoever cannot see it: a board");
    }

    @Test
    void wordsTooLongForThePaperAreSetSmallerAndAtLastCutShort() {
        Drawing drawing = new Paper()
                .words("a name that is long now", new Point(0, 5), Mark.Anchor.BEGINNING)
                .words(
                        "a name that is so long that no paper of this width could ever hold it",
                        new Point(0, 9),
                        Mark.Anchor.BEGINNING)
                .drawing("names", "two names", 40, 12);
        List<Mark.Words> words =
                drawing.marks().stream().map(mark -> (Mark.Words) mark).toList();
        assertThat(words.get(0).text()).isEqualTo("a name that is long now");
        assertThat(words.get(0).height()).isBetween(3.0, Paper.LETTERS - 0.05);
        assertThat(words.get(1).text()).startsWith("a name that is so long").endsWith("\u2026");
        assertThat(words)
                .allSatisfy(each -> assertThat(Paper.width(each.text()) * each.height() / Paper.LETTERS)
                        .isLessThanOrEqualTo(40 + 1e-9));
    }
}
