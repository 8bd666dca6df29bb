package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fizzhull.shape.listing.ShapeKinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ChartTest {
    private static final Pattern PAIR = Pattern.compile("(-?[0-9.]+) (-?[0-9.]+)");
    private static final Pattern POINT = Pattern.compile("[ML](-?[0-9.]+) (-?[0-9.]+)");

    @TempDir
    Path folder;

    private String draw(String shape, String density) throws Exception {
        Path file = folder.resolve("piece.svg");
        CommandRun run = CommandRun.of(
                "float", "--shape", shape, "--density", density, "--samples", "128", "--chart", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        return Files.readString(file);
    }

    /** Analytic: a ball of half the water's density lies with its middle in the water line, so the line halves the drawing. */
    @Test
    void theWaterLineIsToScale() throws Exception {
        String svg = draw("sphere(diameter=65 mm)", "0.4964825 g/cm3");
        Document document = parse(svg);
        var path = (org.w3c.dom.Element) document.getElementsByTagName("path").item(0);
        Matcher points = POINT.matcher(path.getAttribute("d"));
        double top = 1e9;
        double bottom = -1e9;
        while (points.find()) {
            top = Math.min(top, Double.parseDouble(points.group(2)));
            bottom = Math.max(bottom, Double.parseDouble(points.group(2)));
        }
        var lines = document.getElementsByTagName("line");
        var water = (org.w3c.dom.Element) java.util.stream.IntStream.range(0, lines.getLength())
                .mapToObj(lines::item)
                .filter(line -> "#2a6f86".equals(((org.w3c.dom.Element) line).getAttribute("stroke")))
                .findFirst()
                .orElseThrow();
        assertThat(Double.parseDouble(water.getAttribute("y1"))).isCloseTo((top + bottom) / 2, within(0.1));
        assertThat(svg).containsPattern("3[23] mm under").containsPattern("3[23] mm above");
    }

    /** A heavier piece of the same shape and mix never has the better chance; the piece asked about is marked. */
    @Test
    void theChanceFallsWithTheWeight() throws Exception {
        Path file = folder.resolve("curve.svg");
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                "sphere(diameter=65 mm)",
                "--mass",
                "142 g",
                "--samples",
                "1024",
                "--chart",
                file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        Document document = parse(Files.readString(file));
        var curve =
                (org.w3c.dom.Element) document.getElementsByTagName("polyline").item(0);
        List<double[]> points = new ArrayList<>();
        for (String point : curve.getAttribute("points").split(" ", -1)) {
            String[] xy = point.split(",", -1);
            points.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
        }
        for (int i = 1; i < points.size(); i++) {
            assertThat(points.get(i)[1])
                    .as("the chance falls with the weight")
                    .isGreaterThanOrEqualTo(points.get(i - 1)[1]);
        }
        assertThat(Files.readString(file)).contains("this piece, 142 g", "chance to float to the end, %");
    }

    @Test
    void everyKindDrawsAWellFormedPictureOfItsOwn() throws Exception {
        for (var kind : ShapeKinds.all()) {
            for (String density : new String[] {"0.9 g/cm3", "1.3 g/cm3"}) {
                String svg = draw(kind.example(), density);
                Document document = parse(svg);
                assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(1);
                assertThat(document.getElementsByTagName("desc").getLength()).isEqualTo(1);
                assertThat(svg).doesNotContain("href", "url(", "<script", "NaN");
                assertThat(draw(kind.example(), density)).isEqualTo(svg);
            }
        }
    }

    /** Analytic: the upright cut of a ball, read from the pixels of the PNG, covers pi/4 of the square around it. */
    @Test
    void aPictureOfTheShapeInPixels() throws Exception {
        Path file = folder.resolve("ball.png");
        CommandRun run = CommandRun.of("shapes", "sphere(diameter=65 mm)", "--chart", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(1120);
        int filled = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                filled += (image.getRGB(x, y) & 0xffffff) == 0xe9cfa8 ? 1 : 0;
            }
        }
        // 400 pixels across, less half the outline of 3 pixels on every side
        assertThat(filled / (Math.PI / 4 * 397 * 397)).isBetween(0.99, 1.005);
    }

    private String view(String shape) throws Exception {
        Path file = folder.resolve("shape.svg");
        CommandRun run = CommandRun.of("shapes", shape, "--chart", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        return Files.readString(file);
    }

    /** Every kind is seen in less than 300 kB, the same to the byte each time. */
    @Test
    void everyKindIsShaded() throws Exception {
        for (var kind : ShapeKinds.all()) {
            String svg = view(kind.example());
            Document document = parse(svg);
            assertThat(document.getElementsByTagName("title").getLength()).isEqualTo(1);
            assertThat(document.getElementsByTagName("desc").getLength()).isEqualTo(1);
            assertThat(svg).doesNotContain("href", "url(", "<script", "NaN");
            assertThat(svg.length()).isLessThan(300_000);
            assertThat(view(kind.example())).isEqualTo(svg);
        }
    }

    /** Analytic: a ball looks like a disc from everywhere, 215 pixels across; a sharp box shows three faces in three shades. */
    @Test
    void theShadedViewIsInShape() throws Exception {
        double furthest = 0;
        for (var patch : patches(view("sphere(diameter=65 mm)"))) {
            Matcher point = PAIR.matcher(patch.getAttribute("d"));
            while (point.find()) {
                double x = Double.parseDouble(point.group(1)) - 155;
                double y = Double.parseDouble(point.group(2)) - 190;
                furthest = Math.max(furthest, Math.hypot(x, y));
            }
        }
        // a mesh of 48 sectors stays within its circle, and leaves it by less than 1 - cos(pi/48)
        assertThat(furthest).isBetween(107.5 * Math.cos(Math.PI / 48), 107.5 + 0.4);
        Set<String> shades = new HashSet<>();
        patches(view("block(length=60 mm, width=40 mm, height=30 mm)"))
                .forEach(p -> shades.add(p.getAttribute("fill")));
        assertThat(shades).hasSize(3);
    }

    /** Facets of the shaded view: paths without a fill rule. */
    private static List<Element> patches(String svg) throws Exception {
        List<Element> found = new ArrayList<>();
        var paths = parse(svg).getElementsByTagName("path");
        for (int i = 0; i < paths.getLength(); i++) {
            Element path = (Element) paths.item(i);
            if (!path.hasAttribute("fill-rule")) {
                found.add(path);
            }
        }
        assertThat(found).isNotEmpty();
        return found;
    }

    /** What a piece carries is drawn: a dashed ball of its volume, to scale, and a band for the layer. */
    @Test
    void theLoadIsDrawn() throws Exception {
        Path file = folder.resolve("piece.svg");
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                "sphere(diameter=65 mm)",
                "--mass",
                "130 g",
                "--samples",
                "0",
                "--on-top",
                "6 g coarse salt",
                "--inside",
                "8 g, 14.13717 mL",
                "--chart",
                file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        Document document = parse(Files.readString(file));
        var circle = (Element) document.getElementsByTagName("circle").item(0);
        // 30 mm of 65 mm across, which are drawn 170 pixels wide
        assertThat(Double.parseDouble(circle.getAttribute("r"))).isCloseTo(15 * 170.0 / 65, within(0.05));
        assertThat(document.getElementsByTagName("path").getLength()).isEqualTo(2);
        assertThat(Files.readString(file)).contains("coarse sea salt under water", "8 g pressed in");
    }

    private static Document parse(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
