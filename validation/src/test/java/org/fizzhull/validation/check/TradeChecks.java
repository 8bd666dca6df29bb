package org.fizzhull.validation.check;

import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.grams;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeChange;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.validation.table.Bindings;

/** What makers say of floating and fizzing, as directions through the whole chain: common practice, no source. */
public final class TradeChecks extends Bindings {
    private static final IngredientTable TABLE = IngredientTable.standard();
    private static final Shape BALL = ShapeText.read("sphere(diameter=65 mm)");
    private static final double FIRM = 30e3;
    private static final double DAY = 86400;

    /** A direction must stand out of the noise of so many draws. */
    private static final double CLEAR = 0.01;

    private final Map<String, BooleanSupplier> rules = new LinkedHashMap<>();

    public TradeChecks() {
        super("trade");
        floating();
        fizzing();
        drying();
        bind("direction", in -> rule(in.word("rule")).getAsBoolean() ? 1 : 0);
        bind(
                "rises-later",
                in -> forecast(weighed(BALL, in.number("mass_g")), 4096)
                        .probability()
                        .orElseThrow()
                        .risesLater()
                        .orElseThrow());
        bind(
                "fizz-time",
                in -> forecast(weighed(BALL, in.number("mass_g")), 4096)
                                .fizzTime()
                                .orElseThrow()
                                .median()
                        / 60);
    }

    private BooleanSupplier rule(String name) {
        BooleanSupplier rule = rules.get(name);
        if (rule == null) {
            throw new IllegalArgumentException("no rule " + name);
        }
        return rule;
    }

    private void floating() {
        rules.put("more-packing-sinks", () -> clearly(once(weighed(BALL, 138)), once(weighed(BALL, 148))));
        rules.put("foam-same-press-floats", () -> clearly(once(pressed("slsa +26 g")), once(pressed(""))));
        rules.put("foam-same-mass-floats", () -> clearly(once(filled("slsa +26 g")), once(filled(""))));
        rules.put(
                "surface-dome",
                () -> clearly(once(like("dome(diameter=80 mm)")), once(like("sphere(diameter=65 mm)"))));
        rules.put(
                "surface-puck",
                () -> clearly(once(like("puck(diameter=70 mm, height=28 mm)")), once(like("dome(diameter=80 mm)"))));
        rules.put(
                "surface-bowl",
                () -> clearly(
                        once(like("bowl(diameter=90 mm, wall=15 mm)").into(Question.IntoBath.DROPPED)),
                        once(like("puck(diameter=70 mm, height=28 mm)"))));
        rules.put("open-bowl-floats", () -> once(at("bowl(diameter=90 mm, wall=15 mm)", 1150)) > 0.99);
        rules.put("spent-sinks", () -> clearly(once(left(4.6)), once(left(0.5))));
        rules.put("spent-a-little-sinks", () -> clearly(once(left(4.6)), once(left(3.5))));
        rules.put("gas-gone-sinks", () -> {
            // a twentieth of the gas that 138 g can give, 0.9 g, has left before the bath
            double gone = 0.05 * 4.6 * 0.044 * 138;
            return clearly(once(left(138, 4.6)), once(left(138 - gone, 0.95 * 4.6)));
        });
        rules.put("clay-sinks", () -> clearly(once(pressed("")), once(pressed("corn starch = 0 g", "kaolin +60 g"))));
        rules.put(
                "oil-same-press-sinks",
                () -> clearly(once(pressed("sweet almond oil = 0 g")), once(pressed("sweet almond oil = 41 g"))));
    }

    private void fizzing() {
        rules.put("foam-slower", () -> minutes(weighed("slsa +26 g")) > 1.02 * minutes(weighed("")));
        rules.put(
                "oil-slower",
                () -> minutes(weighed("sweet almond oil = 30 g")) > 1.02 * minutes(weighed("sweet almond oil = 0 g")));
        rules.put(
                "hot-faster",
                () -> minutes(weighed(BALL, 138).in(Bath.at(celsius(42))))
                        < 0.98 * minutes(weighed(BALL, 138).in(Bath.at(celsius(34)))));
        rules.put(
                "published-hotter",
                () -> minutes(thirtyGrams(34)) > minutes(thirtyGrams(42))
                        && minutes(thirtyGrams(20)) > minutes(thirtyGrams(34)));
        rules.put("published-starch", () -> minutes(weighed("corn starch +60 g")) > 1.02 * minutes(weighed("")));
        rules.put("looser-faster", () -> minutes(weighed(BALL, 125)) < 0.98 * minutes(weighed(BALL, 145)));
    }

    private void drying() {
        rules.put("longer-drying-floats", () -> clearly(once(dried(2 * DAY, "")), once(dried(0, ""))));
        rules.put(
                "undried-surface-floats",
                () -> clearly(
                        once(undried("bowl(diameter=90 mm, wall=15 mm)")), once(undried("sphere(diameter=65 mm)"))));
        rules.put("wetter-loses-fizz", () -> lost("water = 15 g") > 1.1 * lost("water = 4 g"));
        rules.put(
                "wetter-sinks",
                () -> clearly(once(dried(2 * DAY, "water = 4 g")), once(dried(2 * DAY, "water = 15 g"))));
        rules.put("humid-slower", () -> ready(0.65) > 1.1 * ready(0.40));
    }

    private static boolean clearly(double more, double less) {
        return more > less + CLEAR;
    }

    private static Forecast forecast(Question question, int samples) {
        return FloatPredictor.standard().with(new Sampling(1, samples)).forecast(question);
    }

    private static double once(Question question) {
        boolean costly = !(question.making() instanceof Making.Weighed);
        return forecast(question, costly ? 512 : 1024)
                .probability()
                .orElseThrow()
                .floatsAtOnce();
    }

    private static double minutes(Question question) {
        return forecast(question, 512).fizzTime().orElseThrow().median();
    }

    private static Question weighed(Shape shape, double grams) {
        return Question.weighed(shape, grams(grams));
    }

    /** 138 g of the default recipe with changes, weighed. */
    private static Question weighed(String... changes) {
        return Question.of(BALL, new Making.Weighed(grams(138), Optional.empty(), Optional.of(blend(changes))));
    }

    /** A ball of 30 g and 1 g/cm3 in water of a temperature, C. */
    private static Question thirtyGrams(double warmth) {
        return weighed(ShapeText.read("sphere(diameter=38.5 mm)"), 30).in(Bath.at(celsius(warmth)));
    }

    /** Of 1040 kg/m3 and as many cubic centimetres as it has. */
    private static Question like(String shape) {
        return at(shape, 1040);
    }

    private static Question at(String text, double density) {
        Shape shape = ShapeText.read(text);
        return Question.weighed(shape, density * shape.volume());
    }

    private static Question left(double capacity) {
        return left(142, capacity);
    }

    /** A piece of the default recipe that still has so much gas, mol/kg. */
    private static Question left(double grams, double capacity) {
        Piece.Makeup makeup = new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, capacity);
        return Question.of(
                BALL, new Making.Weighed(grams(grams), Optional.empty(), Optional.of(blend("")), Optional.of(makeup)));
    }

    private static Question pressed(String... changes) {
        return Question.of(
                BALL,
                new Moulded.Pressed(blend(changes), FIRM, 1.6, MouldDimensions.Filling.TWO_HALVES, DryingPlan.none()));
    }

    private static Question filled(String... changes) {
        return Question.of(BALL, fill(143, DryingPlan.none(), changes));
    }

    private static Making fill(double grams, DryingPlan plan, String... changes) {
        return new Moulded.Filled(blend(changes), grams(grams), Optional.empty(), plan);
    }

    /** 148 g damp, after so many seconds open at 20 C and 50 %. */
    private static Question dried(double seconds, String change) {
        DryingPlan plan = seconds == 0 ? DryingPlan.none() : plan(BALL, 0.50, seconds);
        return Question.of(BALL, fill(148, plan, change));
    }

    /** 1040 kg/m3 damp, after three hours open. */
    private static Question undried(String text) {
        Shape shape = ShapeText.read(text);
        return Question.of(shape, fill(1040 * shape.volume() * 1e3, plan(shape, 0.50, 3 * 3600.0), ""))
                .into(Question.IntoBath.DROPPED);
    }

    private static double lost(String change) {
        return DryPredictor.standard()
                .with(new Sampling(1, 0))
                .forecast(BALL, fill(148, plan(BALL, 0.50, 2 * DAY), change))
                .fizzLost()
                .median();
    }

    private static double ready(double humidity) {
        return DryPredictor.standard()
                .with(new Sampling(1, 0))
                .forecast(BALL, fill(148, plan(BALL, humidity, 4 * DAY), ""))
                .ready()
                .orElseThrow()
                .median();
    }

    private static DryingPlan plan(Shape shape, double humidity, double seconds) {
        RoomAir air = RoomAir.of(celsius(20), humidity);
        return DryingConditions.open(air, seconds).plan(shape);
    }

    private static Blend blend(String... changes) {
        Recipe recipe = PressingChecks.defaultMix();
        for (String change : changes) {
            if (!change.isEmpty()) {
                recipe = RecipeChange.read(change, Measures.US_LEGAL).applyTo(recipe, TABLE);
            }
        }
        return Blend.of(recipe);
    }
}
