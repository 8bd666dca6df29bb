package org.fizzhull.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;

class SvgTest {
    private static final String ODD = "a <b> & \"c\" d'e, 20 °C, ğ ٣ 🛁";

    /** Read back by the parser of the JDK: any text survives, wherever it stands. */
    @Test
    void anyTextSurvives() throws Exception {
        String svg =
                new Svg(100.5, 50, ODD, ODD).text(1, 2, "fill=\"#222\"", ODD).document();
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));

        for (String tag : new String[] {"title", "desc", "text"}) {
            assertThat(document.getElementsByTagName(tag).item(0).getTextContent())
                    .isEqualTo(ODD);
        }
        assertThat(document.getDocumentElement().getAttribute("viewBox")).isEqualTo("0 0 100.5 50");
    }
}
