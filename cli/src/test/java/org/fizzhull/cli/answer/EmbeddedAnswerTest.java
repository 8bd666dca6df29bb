package org.fizzhull.cli.answer;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.DryAnswer;
import org.fizzhull.answer.body.DryReport;
import org.fizzhull.answer.body.FizzAnswer;
import org.fizzhull.answer.body.FloatAnswer;
import org.fizzhull.answer.body.IngredientsAnswer;
import org.fizzhull.answer.body.PressAnswer;
import org.fizzhull.answer.body.PressReport;
import org.fizzhull.answer.body.ShapeAnswer;
import org.fizzhull.answer.tree.AnswerTree;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.fizzhull.cli.floating.NextText;
import org.fizzhull.cli.text.JsonSink;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FizzPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.PressPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.change.ExampleRecipes;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/**
 * What an embedder gets from the library equals what the command line prints for the same question. The two come by
 * different doors: the embedder asks the library and writes maps with a JSON library of its own, the command line reads its
 * options and streams.
 */
class EmbeddedAnswerTest {
    private static final ObjectMapper OTHER = new ObjectMapper();
    private static final Sampling FEW = new Sampling(1, 128);
    private static final Scale GRAM_SCALE = new Scale(Units.grams(1));
    private static final String BALL = "sphere(diameter=65 mm)";

    /** A piece near its limit, for which a measurement is proposed. */
    private static final String NEAR = "filled(water=143 g, like=shell)";

    private static final String BOWL = "bowl(diameter=90 mm, wall=15 mm)";

    @Test
    void floatByteForByteWithTheSameWords() {
        CommandRun run = CommandRun.of("float", "--shape", NEAR, "--mass", "148 g", "--samples", "128", "--json");
        Question question =
                Question.weighed(ShapeText.read(NEAR), Units.grams(148)).on(GRAM_SCALE);
        FloatAnswer answer = new FloatAnswer(
                FloatPredictor.standard().with(FEW).forecast(question),
                NextText.words("fizzhull float --shape \"" + NEAR + "\" --mass \"148 g\""));

        assertThat(written(answer.tree())).isEqualTo(run.out());
    }

    /** Nothing is proposed where nothing is drawn: then no key needs words. */
    @Test
    void floatOfCentralValuesByteForByteWithoutWords() {
        CommandRun run = CommandRun.of("float", "--shape", BALL, "--mass", "138 g", "--samples", "0", "--json");
        Question question =
                Question.weighed(ShapeText.read(BALL), Units.grams(138)).on(GRAM_SCALE);
        FloatAnswer answer = FloatAnswer.of(
                FloatPredictor.standard().with(new Sampling(1, 0)).forecast(question));

        assertThat(written(answer.tree())).isEqualTo(run.out());
    }

    @Test
    void floatByMapsAndAnotherLibraryWithoutWords() throws IOException {
        CommandRun run = CommandRun.of("float", "--shape", NEAR, "--mass", "148 g", "--samples", "128", "--json");
        Question question =
                Question.weighed(ShapeText.read(NEAR), Units.grams(148)).on(GRAM_SCALE);
        FloatAnswer answer = FloatAnswer.of(FloatPredictor.standard().with(FEW).forecast(question));

        assertSame(run, answer, "/measure_next/what", "/measure_next/type");
    }

    @Test
    void press() throws IOException {
        CommandRun run = CommandRun.of(
                "press", "--recipe", "src/doc/recipes/sea-foam.yaml", "--shape", BALL, "--samples", "128", "--json");
        PressPredictor predictor = PressPredictor.standard().with(FEW);
        PressReport report =
                new PressReport(predictor.forecast(foam(), ShapeText.read(BALL)), true, Optional.empty(), false);

        assertSame(run, new PressAnswer(report));
    }

    @Test
    void dry() throws IOException {
        CommandRun run = CommandRun.of(
                "dry",
                "--recipe",
                "src/doc/recipes/sea-foam.yaml",
                "--shape",
                BALL,
                "--fill",
                "137 g",
                "--air",
                "21 C, 50 %",
                "--dry-for",
                "2 d",
                "--samples",
                "128",
                "--json");
        Shape ball = ShapeText.read(BALL);
        DryingPlan plan = DryingConditions.open(RoomAir.of(Units.celsius(21), 0.5), 2 * 86400)
                .plan(ball);
        Making making = new Moulded.Filled(foam(), Units.grams(137), Optional.empty(), plan);
        DryPredictor predictor = DryPredictor.standard()
                .with(FEW)
                .with(Factors.standard().with(GRAM_SCALE.reading()).with(GRAM_SCALE.offset()));
        DryReport report = new DryReport(predictor.forecast(ball, making), Optional.empty(), Optional.empty());

        assertSame(run, DryAnswer.of(report), "/verdict");
    }

    @Test
    void fizz() throws IOException {
        CommandRun run = CommandRun.of(
                "fizz",
                "--recipe",
                "src/doc/recipes/sea-foam.yaml",
                "--shape",
                BALL,
                "--mass",
                "150 g",
                "--samples",
                "128",
                "--json");
        Making making = new Making.Weighed(Units.grams(150), Optional.empty(), Optional.of(foam()));
        Question question = Question.of(ShapeText.read(BALL), making).on(GRAM_SCALE);

        assertSame(run, new FizzAnswer(FizzPredictor.standard().with(FEW).forecast(question)));
    }

    @Test
    void shapesAndIngredients() throws IOException {
        assertSame(CommandRun.of("shapes", BOWL, "--json"), new ShapeAnswer(ShapeText.read(BOWL)));
        assertSame(
                CommandRun.of("ingredients", "--json"),
                new IngredientsAnswer(IngredientTable.standard().all(), List.of()));
    }

    /** The mix of src/doc/recipes/sea-foam.yaml, as the library has it. */
    private static Blend foam() {
        return Blend.of(ExampleRecipes.seaFoam(IngredientTable.standard()));
    }

    /** The tree through the sink of the command line. */
    private static String written(AnswerTree tree) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonSink sink = JsonSink.pretty(out)) {
            tree.write(sink);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /** Maps through another library, all digits; leaf by leaf the same to the six digits of the command line. */
    private static void assertSame(CommandRun run, AnswerBody body, String... unworded) throws IOException {
        JsonNode told = AnswerJson.read(run.out());
        ObjectNode tree =
                (ObjectNode) OTHER.readTree(OTHER.writeValueAsBytes(body.tree().toMap()));
        ArrayNode notices = (ArrayNode) tree.get("notices");
        if (unworded.length > 0) {
            JsonNode last = notices.remove(notices.size() - 1);
            assertThat(last.get("code").asText()).isEqualTo("no-words");
        }
        Set<String> differ = new TreeSet<>();
        differences("", told, tree, differ);
        assertThat(differ).containsExactlyInAnyOrder(unworded);
        for (String pointer : unworded) {
            assertThat(told.at(pointer).isTextual()).isTrue();
            assertThat(tree.at(pointer).isNull()).isTrue();
        }
    }

    private static void differences(String at, JsonNode told, JsonNode tree, Set<String> differ) {
        if (told.isObject() && tree.isObject()) {
            assertThat(names(tree)).as("keys of " + at).isEqualTo(names(told));
            for (String name : names(told)) {
                differences(at + '/' + name, told.get(name), tree.get(name), differ);
            }
        } else if (told.isArray() && tree.isArray() && told.size() == tree.size()) {
            for (int i = 0; i < told.size(); i++) {
                differences(at + '/' + i, told.get(i), tree.get(i), differ);
            }
        } else if (told.isNumber() && tree.isNumber()) {
            BigDecimal six = new BigDecimal(tree.doubleValue()).round(new MathContext(6, RoundingMode.HALF_EVEN));
            if (tree.isIntegralNumber() ? !tree.equals(told) : six.compareTo(told.decimalValue()) != 0) {
                differ.add(at);
            }
        } else if (!told.equals(tree)) {
            differ.add(at);
        }
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
