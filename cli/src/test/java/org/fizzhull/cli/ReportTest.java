package org.fizzhull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page of {@code --report}: whole, self-contained, safe, and saying what the text says. */
class ReportTest {
    private static final String LEMON = "src/doc/recipes/lemon.yaml";
    private static final String BALL = "sphere(diameter=65 mm)";

    @TempDir
    Path folder;

    static List<List<String>> lines() {
        return List.of(
                List.of("float", "--shape", "dome(diameter=80 mm)", "--mass", "128 g +- 4 g", "--samples", "128"),
                List.of("press", "--recipe", LEMON, "--shape", BALL, "--press", "firm", "--samples", "128"),
                List.of(
                        "dry",
                        "--recipe",
                        LEMON,
                        "--shape",
                        BALL,
                        "--fill",
                        "146 g",
                        "--air",
                        "21 C, 50 %",
                        "--samples",
                        "128"),
                List.of("fizz", "--recipe", LEMON, "--shape", BALL, "--mass", "138 g", "--samples", "128"),
                List.of(
                        "batch",
                        "--recipe",
                        LEMON,
                        "--shape",
                        BALL,
                        "--fill",
                        "137 g",
                        "--pieces",
                        "12",
                        "--samples",
                        "128"),
                List.of("compare", "--density", "1 g/cm3", "--moulds", "src/doc/moulds.csv", "--samples", "128"),
                List.of("shapes", "bowl(diameter=90 mm, wall=15 mm)"),
                List.of("shapes", "--explain"),
                List.of("ingredients", "kaolin"));
    }

    /** Runs a command line with more words behind it. */
    private static CommandRun with(List<String> line, String... more) {
        return CommandRun.of(Stream.concat(line.stream(), Stream.of(more)).toArray(String[]::new));
    }

    @ParameterizedTest
    @MethodSource("lines")
    void saysWhatTheTextSaysAndLoadsNothing(List<String> line) throws Exception {
        Path file = folder.resolve("page.html");
        CommandRun plain = with(line);
        CommandRun run = with(line, "--report", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).isEqualTo(plain.out());

        String page = Files.readString(file);
        assertThat(page).startsWith("<!DOCTYPE html>").contains("lang=\"en\"", "A forecast, not a test certificate.");
        assertThat(page).doesNotContain("<script", "<link", "<img", "@import", "src=", "href=", "url(");
        assertThat(page.replace("http://www.w3.org/2000/svg", "")).doesNotContain("http");

        Document document = parsed(page);
        assertThat(document.getElementsByTagName("main").getLength()).isOne();
        assertThat(document.getElementsByTagName("h1").getLength()).isOne();
        String said = flat(document.getDocumentElement().getTextContent());
        // the page draws its own boxes to tick, and has room for all rows and notes
        String told = plain.out()
                .replace("[ ] ", "")
                .replaceAll("(Note: and \\d+ more|Order of mixing, rack, shopping list): --explain.*\n", "");
        for (String word : flat(told).split(" ", -1)) {
            assertThat(said).contains(word);
        }
    }

    @Test
    void theSentencesStandWholeInTheirParagraphs() throws Exception {
        Path file = folder.resolve("page.html");
        CommandRun run = CommandRun.of(
                "float",
                "--shape",
                "dome(diameter=80 mm)",
                "--mass",
                "128 g +- 4 g",
                "--quiet",
                "--report",
                file.toString());
        String said = flat(parsed(Files.readString(file)).getDocumentElement().getTextContent());

        assertThat(said)
                .contains(flat(run.out().substring(0, run.out().indexOf("Caution")))
                        .strip());
        assertThat(said)
                .contains(
                        flat(run.out().substring(run.out().indexOf("Caution"))).strip());
    }

    /** What a person typed or wrote into a recipe is text on the page, never a part of the page. */
    @Test
    void whatWasTypedIsText() throws Exception {
        Path recipe = Files.writeString(
                folder.resolve("recipe.yaml"),
                "recipe: <script>alert(1)</script> & \"more\"\ndry:\n  citric acid: 100 g\n  sodium bicarbonate: 200 g\n");
        Path file = folder.resolve("page.html");
        CommandRun run = CommandRun.of(
                "batch",
                "--recipe",
                recipe.toString(),
                "--shape",
                BALL,
                "--fill",
                "137 g",
                "--pieces",
                "3",
                "--samples",
                "128",
                "--report",
                file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        String page = Files.readString(file);

        assertThat(page).doesNotContain("<script").contains("&lt;script&gt;alert(1)");
        assertThat(parsed(page).getElementsByTagName("script").getLength()).isZero();
    }

    /** A batch is told once: its steps as boxes to tick, beside them the rack, not the whole sheet of {@code --chart}. */
    @Test
    void aBatchStandsOnItsPageOnce() throws Exception {
        Path file = folder.resolve("page.html");
        List<String> batch = List.of(
                "batch", "--recipe", LEMON, "--shape", BALL, "--press", "light", "--pieces", "24", "--samples", "128");
        CommandRun run = with(batch, "--report", file.toString());
        assertThat(run.status()).as(run.err()).isZero();
        CommandRun sheet = with(batch, "--explain");
        Document page = parsed(Files.readString(file));

        int steps = 0;
        NodeList items = page.getElementsByTagName("li");
        for (int i = 0; i < items.getLength(); i++) {
            steps += ((Element) items.item(i)).getAttribute("class").equals("step") ? 1 : 0;
        }
        assertThat(steps)
                .isEqualTo(
                        sheet.out().lines().filter(line -> line.contains("[ ]")).count())
                .isPositive();
        assertThat(page.getElementsByTagName("svg").getLength()).isOne();
        assertThat(page.getElementsByTagName("svg").item(0).getTextContent())
                .contains("The rack from above")
                .doesNotContain("Weigh in");
    }

    /** On a telephone a table of moulds is moved sideways: their names lead, are the headers of the rows, and stay. */
    @Test
    void aRowOfMouldsIsHeadedByItsName() throws Exception {
        Path file = folder.resolve("page.html");
        List<String> moulds = List.of(
                "compare", "--shape", BALL, "--shape", "dome(diameter=80 mm)", "--recipe", LEMON, "--samples", "128");
        assertThat(with(moulds, "--press", "light", "--report", file.toString()).status())
                .isZero();
        String page = Files.readString(file);

        assertThat(page).containsPattern("<thead>\\s*<tr><th scope=\"col\">mould</th>");
        assertThat(Pattern.compile("<tr><th scope=\"row\">(80 mm dome|65 mm ball)")
                        .matcher(page)
                        .results())
                .hasSize(2);
        assertThat(page).containsPattern("\\.grid th:first-child \\{[^}]*sticky");
    }

    /** Contrast of text, light and dark: at least 4.5 to 1, WCAG 2.1, success criterion 1.4.3, by its own formula. */
    @Test
    void textStandsOutFromThePaper() throws IOException {
        Path file = folder.resolve("page.html");
        CommandRun.of("shapes", "--report", file.toString());
        Matcher scheme = Pattern.compile(
                        "--paper: (#\\w+); --ink: (#\\w+); --soft: (#\\w+); --rule: #\\w+; --mark: (#\\w+); --tint: (#\\w+)")
                .matcher(Files.readString(file));
        int schemes = 0;
        while (scheme.find()) {
            schemes++;
            for (int paper : new int[] {1, 5}) {
                for (int ink = 2; ink <= 4; ink++) {
                    double one = luminance(scheme.group(paper));
                    double other = luminance(scheme.group(ink));
                    double ratio = (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
                    assertThat(ratio)
                            .as(scheme.group(ink) + " on " + scheme.group(paper))
                            .isGreaterThanOrEqualTo(4.5);
                }
            }
        }
        assertThat(schemes).isEqualTo(3);
    }

    @Test
    void isRefusedBeforeAnythingIsAnswered() throws IOException {
        for (String name : List.of("page.htm", folder + "/none/page.html", folder.toString() + ".html/")) {
            CommandRun run = CommandRun.of(
                    "float", "--shape", BALL, "--mass", "138 g", "--samples", "0", "--json", "--report", name);
            assertThat(run.status()).as(name).isEqualTo(2);
            JsonNode error = AnswerJson.read(run.out()).get("error");
            assertThat(error.get("field").asText()).isEqualTo("--report");
        }
    }

    private static Document parsed(String page) throws Exception {
        // what is written is well-formed XML but for the elements that HTML leaves open
        String xml = page.replace("<!DOCTYPE html>", "")
                .replaceAll("<(meta[^>]*)>", "<$1/>")
                .replace("<br>", "<br/>");
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private static double luminance(String colour) {
        String hex = colour.length() == 4 ? colour.replaceAll("([0-9a-f])", "$1$1") : colour;
        double[] part = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            part[i] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * part[0] + 0.7152 * part[1] + 0.0722 * part[2];
    }
}
