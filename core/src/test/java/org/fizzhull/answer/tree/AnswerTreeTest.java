package org.fizzhull.answer.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.body.AnswerWriter;
import org.fizzhull.answer.body.RefusalBody;
import org.fizzhull.answer.body.Version;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;

/** A small answer of every kind of value, written by hand here: what is expected is what was put in. */
class AnswerTreeTest {
    private static final Notice NOTICE = Notice.caution("hot", "Mind the water.");

    private record Body(Consumer<AnswerWriter> what) implements AnswerBody {
        @Override
        public String command() {
            return "tower";
        }

        @Override
        public void keys(AnswerWriter to) {
            what.accept(to);
        }

        @Override
        public List<Notice> notices() {
            return List.of(NOTICE);
        }
    }

    private static AnswerTree tree() {
        return new Body(AnswerTreeTest::everyKind).tree();
    }

    private static void everyKind(AnswerWriter to) {
        to.text("name", "ball")
                .text("recipe", Optional.empty())
                .number("mass_g", 138.25)
                .number("limit_g", OptionalDouble.empty())
                .number("length_mm", OptionalDouble.of(0.065), 1e3)
                .whole("pieces", 24)
                .flag("steady", true)
                .nothing("cost")
                .interval("time_s", new Interval(95, 80, 120))
                .interval("ready_h", Optional.of(new Interval(7200, 3600, 10800)), 1 / 3600.0)
                .numbers("up", 0, 0, 1)
                .texts("with", List.of("salt", "oil"));
        to.object("bath").number("depth_cm", 35).end();
        to.array("rows");
        for (int i = 0; i < 2; i++) {
            to.object().whole("row", i).end();
        }
        to.endArray();
    }

    @Test
    void headFirstKeysInOrderNoticesLast() {
        assertThat(tree().keys())
                .containsExactly(
                        "schema",
                        "fizzhull",
                        "command",
                        "name",
                        "recipe",
                        "mass_g",
                        "limit_g",
                        "length_mm",
                        "pieces",
                        "steady",
                        "cost",
                        "time_s",
                        "ready_h",
                        "up",
                        "with",
                        "bath",
                        "rows",
                        "notices");
        assertThat(tree().text("/command")).contains("tower");
        assertThat(tree().text("/notices/0/code")).contains("hot");
    }

    @Test
    void everyValueIsFoundByItsPointer() {
        AnswerTree tree = tree();

        assertThat(tree.text("/name")).contains("ball");
        assertThat(tree.text("/recipe")).isEmpty();
        assertThat(tree.number("/mass_g")).hasValue(138.25);
        assertThat(tree.number("/limit_g")).isEmpty();
        assertThat(tree.number("/length_mm")).hasValue(65);
        assertThat(tree.number("/pieces")).hasValue(24);
        assertThat(tree.flag("/steady")).contains(true);
        assertThat(tree.value("/cost")).isNull();
        assertThat(tree.interval("/time_s")).contains(new Interval(95, 80, 120));
        assertThat(tree.interval("/ready_h")).contains(new Interval(2, 1, 3));
        assertThat(tree.number("/up/2")).hasValue(1);
        assertThat(tree.number("/bath/depth_cm")).hasValue(35);
        assertThat(tree.rows("/rows")).extracting(row -> row.number("/row")).containsExactly(number(0), number(1));
        assertThat(tree.value("")).isEqualTo(tree.toMap());
    }

    @Test
    void aKeyThatIsNotThereIsRefusedByItsName() {
        Refusal refusal = refusal(() -> tree().number("/bath/depth_mm"));

        assertThat(refusal.code()).isEqualTo("unknown-key");
        assertThat(refusal.field()).isEqualTo("/bath/depth_mm");
        assertThat(refusal.allowed()).isEqualTo("depth_cm");
        assertThat(refusal.hint()).isEqualTo("Did you mean depth_cm?");
    }

    @Test
    void anotherKindARowTooFarAndNoPointerAreRefused() {
        assertThat(refusal(() -> tree().text("/mass_g")).read()).isEqualTo("a number");
        assertThat(refusal(() -> tree().number("/name")).read()).isEqualTo("a text");
        assertThat(refusal(() -> tree().interval("/up")).read()).isEqualTo("an array");
        assertThat(refusal(() -> tree().rows("/up")).read()).isEqualTo("an array of a number");
        assertThat(refusal(() -> tree().value("/rows/2")).allowed()).isEqualTo("an index below 2");
        assertThat(refusal(() -> tree().value("/rows/01")).allowed()).isEqualTo("an index below 2");
        assertThat(refusal(() -> tree().value("/name/x")).read()).isEqualTo("a text above it");
        assertThat(refusal(() -> tree().value("name")).allowed()).contains("JSON pointer");
    }

    @Test
    void equalByKeysAndValues() {
        AnswerTree swapped = new Body(to -> to.whole("b", 2).whole("a", 1)).tree();
        AnswerTree straight = new Body(to -> to.whole("a", 1).whole("b", 2)).tree();

        assertThat(tree()).isEqualTo(tree()).hasSameHashCodeAs(tree());
        assertThat(swapped).isEqualTo(straight).hasSameHashCodeAs(straight);
        assertThat(straight).isNotEqualTo(new Body(to -> to.whole("a", 1)).tree());
        assertThat(straight).isNotEqualTo(new Body(to -> to.whole("a", 1).nothing("b")).tree());
    }

    @Test
    void mapsOfTheBodyItselfInItsOrder() {
        Map<String, Object> expected = new LinkedHashMap<>();
        expected.put("schema", (long) AnswerWriter.SCHEMA);
        expected.put("fizzhull", Version.TEXT);
        expected.put("command", "tower");
        expected.put("none", null);
        expected.put("up", Arrays.asList(0.0, 1.5));
        expected.put("notices", List.of(Map.of("code", "hot", "text", "Mind the water.")));

        Map<String, Object> map = new Body(to -> to.nothing("none").numbers("up", -0.0, 1.5))
                .tree()
                .toMap();

        assertThat(map).isEqualTo(expected);
        assertThat(map.keySet()).containsExactlyElementsOf(expected.keySet());
    }

    @Test
    void nothingCanBeChanged() {
        Map<String, Object> map = tree().toMap();

        assertThatThrownBy(() -> map.put("more", 1)).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> ((Map<?, ?>) Objects.requireNonNull(map.get("bath"))).clear())
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> ((List<?>) Objects.requireNonNull(map.get("rows"))).remove(0))
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void whatIsNoNumberIsRefusedByTheNameOfItsKey() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatExceptionOfType(IllegalArgumentException.class)
                    .isThrownBy(() -> new Body(to -> to.number("spare_g", bad)).tree())
                    .withMessageContaining("spare_g is " + bad);
            assertThatExceptionOfType(IllegalArgumentException.class)
                    .isThrownBy(() -> new Body(to -> to.numbers("up", 0, bad)).tree())
                    .withMessageContaining("up is " + bad);
        }
    }

    @Test
    void aKeyStandsOnce() {
        assertThatThrownBy(() -> new Body(to -> to.whole("a", 1).whole("a", 2)).tree())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a stands twice");
    }

    /** The tree walks itself as the body walked: what a second builder makes of it is the same, order and all. */
    @Test
    void theTreeWalksAsTheBodyDid() {
        TreeBuilder again = new TreeBuilder();
        tree().write(again);

        assertThat(again.root().toString()).isEqualTo(tree().toString());
        assertThat(again.root()).isEqualTo(tree().toMap());
    }

    @Test
    void aRefusalHasAnErrorAndNoNotices() {
        Refusal refusal = new Refusal("missing-unit", "mass", "138", "a weight", "Write 138 g.").at("recipe.yaml", 3);
        AnswerTree tree = new RefusalBody("float", refusal).tree();

        assertThat(tree.keys()).containsExactly("schema", "fizzhull", "command", "error");
        assertThat(tree.text("/error/code")).contains("missing-unit");
        assertThat(tree.text("/error/file")).contains("recipe.yaml");
        assertThat(tree.number("/error/line")).hasValue(3);
        assertThat(tree.rows("/error/others")).isEmpty();
    }

    private static OptionalDouble number(double value) {
        return OptionalDouble.of(value);
    }

    private static Refusal refusal(org.assertj.core.api.ThrowableAssert.ThrowingCallable call) {
        return catchThrowableOfType(Refusal.class, call);
    }
}
