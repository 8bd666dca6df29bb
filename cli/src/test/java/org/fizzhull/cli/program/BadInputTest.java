package org.fizzhull.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bad input: exit status 2, one line that names what was read and, in most cases, a mend, no stack trace; with --json the
 * error object. Beside each case stands what its line must say.
 */
class BadInputTest {
    private static final String BALL = "sphere(diameter=65 mm)";

    static List<Arguments> cases() {
        List<Arguments> all = new ArrayList<>();
        // commands and options
        bad(all, "unknown-command", "flaot", "flaot", "--help");
        bad(all, "unknown-option", "float --msas 138g --shape " + "x", "--msas", "--mass");
        bad(all, "unknown-option", "float -x", "-x", "--help");
        bad(all, "missing-value", "float --shape", "--shape", "value");
        bad(all, "missing-value", "float --shape --mass 138g", "--shape", "value");
        bad(all, "unexpected-word", "float " + "ball", "ball", "--");
        add(all, "repeated", List.of("twice", "once"), "float", "--mass", "138 g", "--mass", "139 g", "--shape", BALL);
        add(all, "missing-option", List.of("--shape", "sphere(diameter=65 mm)"), "float", "--mass", "138 g");
        add(all, "missing-option", List.of("--mass 138 g", "--density"), "float", "--shape", BALL);
        add(
                all,
                "conflict",
                List.of("138 g", "0.9 g/cm3"),
                "float",
                "--shape",
                BALL,
                "--mass",
                "138 g",
                "--density",
                "0.9 g/cm3");
        // quantities
        mass(all, "missing-unit", "138", "138 g");
        mass(all, "unknown-unit", "138 gx", "gx");
        mass(all, "wrong-dimension", "138 mm", "mass");
        mass(all, "comma-decimal", "138,5 g", "138.5");
        mass(all, "not-a-number", "heavy", "heavy");
        mass(all, "missing-value", "", "nothing");
        mass(all, "not-a-number", "NaN g", "NaN");
        mass(all, "not-representable", "1e400 g", "1e400");
        mass(all, "range-dash", "4-8 g", "to");
        mass(all, "out-of-range", "-5 g", "more than 0 g");
        mass(all, "out-of-range", "0 g", "more than 0 g");
        mass(all, "extra-text", "138 g g", "138 g g");
        mass(all, "unit-order", "2 oz 1 lb", "lb");
        mass(all, "negative-spread", "138 g +- -4 g", "-4");
        mass(all, "out-of-range", "138 g +- 60 g", "standard deviation");
        mass(all, "out-of-range", "1.38 kg", "138 g");
        mass(all, "out-of-range", "13.8 g", "138 g");
        mass(all, "out-of-range", "400 g", "size");
        add(all, "wrong-dimension", List.of("density"), "float", "--shape", BALL, "--density", "0.95 g");
        add(
                all,
                "out-of-range",
                List.of("0.3 g/cm3", "Did you mean 0.9 g/cm3"),
                "float",
                "--shape",
                BALL,
                "--density",
                "9 g/cm3");
        // what was measured
        timed(all, "out-of-range", "--measured-fizz", "0 s", "more than 0");
        timed(all, "missing-unit", "--measured-fizz", "4", "min");
        timed(all, "wrong-dimension", "--measured-fizz", "4 g", "duration");
        timed(all, "contradiction", "--measured-fizz", "20 s", "20 mm");
        timed(all, "out-of-range", "--measured-rise", "12 s", "20 s");
        timed(all, "out-of-range", "--measured-rise", "95 s at 400 g", "size");
        timed(all, "missing-unit", "--measured-rise", "95 s at 150", "150 g");
        timed(all, "contradiction", "--measured-rise", "95 s at 90 g", "floats at once");
        timed(all, "conflict", "--weighed", "146 g at firm", "press");
        timed(all, "unknown-word", "--weighed", "146 g at fimr", "firm");
        timed(all, "missing-value", "--weighed", "146 g", "at firm");
        timed(all, "conflict", "--measured-rise", "95 s --no-fizz", "--no-fizz");
        timed(all, "conflict", "--measured-rise", "95 s --measured-fizz 90 s", "before");
        // shapes
        shape(all, "unknown-shape", "blal(diameter=65 mm)", "ball");
        shape(all, "unknown-key", "sphere(diamter=65 mm)", "diameter");
        shape(all, "missing-key", "sphere()", "diameter");
        shape(all, "missing-unit", "sphere(diameter=65)", "65 mm");
        shape(all, "repeated-key", "sphere(diameter=65 mm, diameter=70 mm)", "diameter");
        shape(all, "unbalanced", "sphere(diameter=65 mm", ")");
        shape(all, "out-of-range", "sphere(diameter=65 m)", "65 mm");
        shape(all, "out-of-range", "bowl(diameter=90 mm, wall=48 mm)", "4.8 mm");
        shape(all, "out-of-range", "dome(diameter=80 mm, height=50 mm)", "40 mm");
        shape(all, "out-of-range", "ring(diameter=50 mm, tube=30 mm)", "tube");
        shape(all, "out-of-range", "star(points=2, diameter=80 mm, inner=45 mm, height=30 mm)", "points");
        shape(all, "comma-decimal", "sphere(diameter=6,5 cm)", "6.5 cm");
        // bath
        ball(all, "out-of-range", List.of("100 C", "100 F"), "--bath", "100 C");
        ball(all, "missing-unit", List.of("38 C"), "--bath", "38");
        ball(all, "repeated-part", List.of("depth"), "--bath", "38 C, 35 cm, 40 cm");
        ball(all, "out-of-range", List.of("35 cm"), "--bath", "38 C, 35 m");
        ball(all, "out-of-range", List.of("salt"), "--bath-salt", "500 kg");
        ball(all, "wrong-dimension", List.of("2 L"), "--bath-salt", "2 L");
        // words and numbers
        ball(all, "unknown-word", List.of("placed or dropped"), "--into-bath", "thrown");
        ball(all, "unknown-word", List.of("calipers"), "--measured", "guessed");
        ball(all, "not-a-number", List.of("4096"), "--samples", "many");
        ball(all, "out-of-range", List.of("1008"), "--samples", "1000");
        ball(all, "out-of-range", List.of("whole number"), "--samples", "-16");
        ball(all, "not-a-number", List.of("digits"), "--seed", "1.5");
        ball(all, "out-of-range", List.of("1 to"), "--threads", "0");
        ball(all, "unknown-format", List.of(".svg"), "--chart", "picture.jpg");
        ball(all, "no-folder", List.of("folder"), "--chart", "nowhere/at/all/picture.svg");
        loads(all);
        spellings(all);
        ends(all);
        return all;
    }

    /** What lies on top and what is pressed in. */
    private static void loads(List<Arguments> all) {
        top(all, "unknown-ingredient", "6 g corse salt", "coarse salt");
        top(all, "ambiguous-ingredient", "6 g bath salt", "coarse sea salt");
        top(all, "forbidden-ingredient", "6 g borax", "borax");
        top(all, "fizzing-topping", "6 g citric acid", "recipe");
        top(all, "wet-topping", "5 g cocoa butter", "dry and loose");
        top(all, "unreadable", "coarse salt 6 g", "amount comes first");
        top(all, "unreadable", "6 g", "Say what it is");
        top(all, "unreadable", "6 g coarse salt,", "comma");
        top(all, "unreadable", "", "nothing");
        top(all, "unreadable", "NaN g coarse salt", "NaN");
        top(all, "missing-unit", "6 coarse salt", "6 g");
        top(all, "wrong-dimension", "6 mm coarse salt", "length");
        top(all, "comma-decimal", "6,5 g coarse salt", "6.5 g");
        top(all, "spread-not-allowed", "6 g +- 1 g coarse salt", "--mass");
        top(all, "spread-not-allowed", "4 to 6 g coarse salt", "one amount");
        top(all, "out-of-range", "-6 g coarse salt", "more than 0 g");
        top(all, "out-of-range", "0 g coarse salt", "more than 0 g");
        top(all, "out-of-range", "600 g coarse salt", "thicker");
        top(all, "not-representable", "1e400 g coarse salt", "1e400");
        thing(all, "missing-part", "8 g", "volume");
        thing(all, "missing-part", "25 mL", "scale");
        thing(all, "missing-value", "", "nothing");
        thing(all, "missing-unit", "8 g, 25", "25 g");
        thing(all, "unreadable", "8 g, 25 mL, 20 mm", "20 mm up or 20 mm aside");
        thing(all, "out-of-range", "8 g, 25 mL, 90 mm up", "such as 33 mm up");
        thing(all, "out-of-range", "8 g, 25 mL, 40 mm aside", "material");
        thing(all, "out-of-range", "8 g, 250 mL", "143.793 mL");
        thing(all, "out-of-range", "8 kg, 25 mL", "625 g");
        thing(all, "out-of-range", "0 g, 25 mL", "more than 0 g");
        thing(all, "out-of-range", "8 g, 0 mL", "more than 0 mL");
        thing(all, "repeated-part", "8 g, 8 g, 2 mL", "one of the two");
        thing(all, "spread-not-allowed", "8 g +- 1 g, 25 mL", "without a spread");
        thing(all, "comma-decimal", "8,5 g, 25 mL", "8.5 g");
        thing(all, "extra-text", "8 g, 25 mL, 20 mm down", "down");
        thing(all, "wrong-dimension", "8 g, 25 C", "temperature");
        thing(all, "unreadable", "NaN g, 25 mL", "NaN");
        thing(all, "unreadable", "plastic duck 12 g, 25 mL", "write 12 g");
        add(
                all,
                "out-of-range",
                List.of("whole piece", "14 g of it"),
                "float",
                "--shape",
                BALL,
                "--mass",
                "38 g",
                "--on-top",
                "6 g coarse salt",
                "--inside",
                "8 g, 25 mL");
        add(
                all,
                "conflict",
                List.of("closed top"),
                "float",
                "--shape",
                "bowl(diameter=90 mm, wall=15 mm)",
                "--mass",
                "150 g",
                "--on-top",
                "6 g coarse salt");
        add(
                all,
                "out-of-range",
                List.of("29 mm aside"),
                "float",
                "--shape",
                "ring(diameter=90 mm, tube=30 mm)",
                "--mass",
                "118 g",
                "--inside",
                "8 g, 5 mL");
        add(
                all,
                "conflict",
                List.of("leave out the place"),
                "float",
                "--shape",
                "filled(water=143 g, like=figure)",
                "--mass",
                "120 g",
                "--inside",
                "3 g, 2 mL, 7 mm up");
        bad(all, "unknown-option", "press --on-top 6g", "--on-top", "float");
        bad(all, "unknown-option", "ingredients --inside 8g", "press --inside");
    }

    private static void top(List<Arguments> all, String code, String text, String says) {
        ball(all, code, List.of("--on-top: read", says), "--on-top", text);
    }

    private static void thing(List<Arguments> all, String code, String text, String says) {
        ball(all, code, List.of("--inside: read", says), "--inside", text);
    }

    /** Words that stand in the wrong place, or are near to a right one. */
    private static void spellings(List<Arguments> all) {
        bad(all, "unexpected-word", "float sphere(diameter=65mm) --mass 138g", "Write --shape before it");
        bad(all, "unexpected-word", "float @file", "@file");
        bad(all, "unexpected-word", "--version x", "--version alone");
        bad(all, "unknown-option", "shapes --shape sphere(diameter=65mm)", "--shape", "shapes \"sphere(");
        bad(all, "unknown-option", "shapes --samples 8", "--samples");
        bad(all, "unknown-command", "Float", "Did you mean float?");
        bad(all, "unknown-command", "--jsn", "--jsn", "--help");
        bad(all, "unknown-command", "help fly", "fly", "float");
        add(all, "unknown-command", List.of("nothing", "float"), "");
        ball(all, "unexpected-word", List.of("extra"), "--quiet", "extra");
        ball(all, "unexpected-value", List.of("--no-fizz alone"), "--no-fizz=false");
        ball(all, "unexpected-value", List.of("--explain alone"), "--explain=yes");
        ball(all, "missing-value", List.of("--bath"), "--bath", "-h");
        ball(all, "unknown-option", List.of("-x"), "-x");
        ball(all, "repeated", List.of("--bath", "once"), "--bath", "38 C", "--bath=36 C");
        ball(all, "not-yet", List.of("--coated", "yet"), "--coated=30 %");
        ball(all, "unknown-word", List.of("Dropped", "placed or dropped"), "--into-bath", "Dropped");
        ball(all, "unknown-word", List.of("nothing", "calipers"), "--measured", "");
        mass(all, "not-a-number", "'138 g'", "'138 g'");
        mass(all, "unknown-unit", "138\ngrains of\nsalt", "138 grains of salt");
        shape(all, "not-a-shape", "65 mm", "sphere(diameter=65 mm)");
        shape(all, "extra-text", "sphere(diameter=65 mm) dome(diameter=80 mm)", "dome");
        shape(all, "missing-value", "", "sphere(diameter=65 mm)");
    }

    /** Numbers at and beyond the ends. */
    private static void ends(List<Arguments> all) {
        mass(all, "not-representable", "1e300 kg", "--mass: read 1e300 kg");
        mass(all, "not-representable", "4.9e-324 kg", "too small");
        mass(all, "out-of-range", "100 to 300 g", "300 g");
        mass(all, "range-order", "140 to 130 g", "smaller end first");
        mass(all, "missing-unit", "138 g +- 4", "4 g");
        add(
                all,
                "out-of-range",
                List.of("--density: read 9.5 g/cm3"),
                "float",
                "--shape",
                BALL,
                "--density",
                "9.5 g/cm3");
        ball(all, "out-of-range", List.of("--bath-salt", "1 kg"), "--bath-salt", "-1 kg");
        ball(all, "comma-decimal", List.of("38.5"), "--bath", "38,5 C");
        ball(all, "comma-decimal", List.of("Write 62.5 s, with"), "--measured-rise", "62,5 s, 40 mm left");
        ball(all, "spread-not-allowed", List.of("one value"), "--bath", "36 to 38 C");
        ball(all, "not-a-number", List.of("digits"), "--samples", "\u0664\u0660\u0669\u0666");
        ball(all, "not-a-number", List.of("digits"), "--samples", "1e4");
        ball(all, "not-a-number", List.of("nothing", "4096"), "--samples", "");
        ball(all, "out-of-range", List.of("--samples", "1048576"), "--samples", "2000000000");
        ball(all, "out-of-range", List.of("too many digits"), "--seed", "99999999999999999999");
        ball(all, "out-of-range", List.of("1 to 1024"), "--threads", "2000");
        ball(all, "unknown-format", List.of("Write ball.png"), "--chart", "ball.PNG");
        ball(all, "unknown-format", List.of("Write ball.svg"), "--chart", "ball.SVG");
        ball(all, "unknown-format", List.of("Write ball.svg"), "--chart", "ball");
        ball(all, "unknown-format", List.of("nothing", ".svg"), "--chart", "");
        ball(all, "unknown-format", List.of("Write dome.svg"), "--chart", ".");
        ball(all, "unknown-format", List.of("Write batch.html"), "--report", "pages/");
        ball(
                all,
                "several-readings",
                List.of("145 g after 5 s", "again", "then"),
                "--measured-lift",
                "145 g after 5 s, 149 g after 4 s");
        ball(all, "several-readings", List.of("145 g after 5 s", "again"), "--measured-lift", "145 g after 5 s, 149 g");
        ball(all, "several-readings", List.of("4 min", "comma"), "--measured-fizz", "4 min, 10 s");
        ball(
                all,
                "out-of-range",
                List.of("4 s, then 2 s", "order"),
                "--measured-lift",
                "145 g after 4 s then 149 g after 2 s");
        ball(all, "several-readings", List.of("again"), "--measured-result", "sank at 150 g, floated at 138 g");
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource("cases")
    void isRefusedWithOneHelpfulLine(String code, List<String> says, List<String> words) throws IOException {
        CommandRun plain = CommandRun.of(words.toArray(new String[0]));
        assertThat(plain.status()).isEqualTo(2);
        assertThat(plain.out()).isEmpty();
        assertThat(plain.err().lines()).hasSize(1);
        assertThat(plain.err()).startsWith("fizzhull: ").doesNotContain("Exception", "\tat ");
        for (String said : says) {
            assertThat(plain.err()).contains(said);
        }
        List<String> withJson = new ArrayList<>(words);
        withJson.add("--json");
        if (words.get(words.size() - 1).equals("--shape")) {
            return; // the last word is the option that wants a value
        }
        CommandRun json = CommandRun.of(withJson.toArray(new String[0]));
        assertThat(json.status()).isEqualTo(2);
        assertThat(AnswerJson.faults("error", json.out())).isEmpty();
        Map<String, String> error = error(json.out());
        assertThat(error.keySet()).containsExactly("allowed", "code", "field", "file", "hint", "line", "read");
        assertThat(error.get("code")).isEqualTo(code);
        assertThat(error.get("field")).isNotEqualTo("null").isNotBlank();
        assertThat(error.get("allowed")).isNotBlank();
        assertThat(error).containsEntry("file", "null").containsEntry("line", "null");
    }

    /** The members of the error object; fails where standard output is not exactly one JSON object. */
    private static Map<String, String> error(String text) throws IOException {
        Map<String, String> members = new TreeMap<>();
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            assertThat(parser.nextToken()).isEqualTo(JsonToken.START_OBJECT);
            int depth = 1;
            boolean inError = false;
            while (depth > 0) {
                JsonToken token = parser.nextToken();
                if (token.isStructStart()) {
                    depth++;
                    inError = "error".equals(parser.currentName());
                } else if (token.isStructEnd()) {
                    depth--;
                } else if (inError && token.isScalarValue()) {
                    members.put(parser.currentName(), parser.getText());
                }
            }
            assertThat(parser.nextToken()).isNull();
        }
        return members;
    }

    private static void bad(List<Arguments> all, String code, String line, String... says) {
        all.add(Arguments.of(code, List.of(says), List.of(line.split(" "))));
    }

    private static void add(List<Arguments> all, String code, List<String> says, String... words) {
        all.add(Arguments.of(code, says, List.of(words)));
    }

    private static void timed(List<Arguments> all, String code, String option, String text, String says) {
        List<String> words = new ArrayList<>(List.of("float", "--shape", BALL, "--mass", "142 g", "--samples", "128"));
        words.add(option);
        words.addAll(List.of(text.split(" ")));
        add(all, code, List.of(option, says), words.toArray(new String[0]));
    }

    private static void mass(List<Arguments> all, String code, String text, String says) {
        add(all, code, List.of(says), "float", "--shape", BALL, "--mass", text);
    }

    private static void shape(List<Arguments> all, String code, String text, String says) {
        add(all, code, List.of(says), "shapes", text);
    }

    private static void ball(List<Arguments> all, String code, List<String> says, String... more) {
        List<String> words = new ArrayList<>(List.of("float", "--shape", BALL, "--mass", "138 g"));
        words.addAll(Arrays.asList(more));
        all.add(Arguments.of(code, says, words));
    }
}
