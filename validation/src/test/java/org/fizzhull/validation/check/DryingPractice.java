package org.fizzhull.validation.check;

import java.util.Optional;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.place.Standing;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.forecast.DryForecast;
import org.fizzhull.forecast.DryPredictor;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.making.Moulded;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.validation.table.Inputs;

/**
 * What makers say of drying, asked as the command {@code dry} asks it: a recipe, 146 g damp in a 65 mm ball, a room, a
 * forecast. Two parts of bicarbonate, one of acid, some starch; grams of the liquid per 510 g of powder.
 */
final class DryingPractice {
    private static final double DAY = 86400;
    /** The median of what is ready late is known to a few per cent from so many. */
    private static final Sampling DRAWS = new Sampling(1, 2048);

    private static final Sampling CENTRAL = new Sampling(1, 0);
    private static final Sphere BALL = Sphere.ofDiameter(Units.millimetres(65));

    private DryingPractice() {}

    /** Days by which the median time until ready, open on a rack, lies outside what makers say; below 0 it is too short. */
    static double ready(Inputs in) {
        DryingConditions open = open(in.word("air"), 3);
        return outside(
                in,
                forecast(in.word("liquid"), "", open, DRAWS)
                                .ready()
                                .orElseThrow()
                                .median()
                        / DAY);
    }

    /** How far days lie outside the range {@code from_d} to {@code to_d} of a row, without {@code to_d} from there on. */
    static double outside(Inputs in, double days) {
        double least = in.number("from_d");
        double most = in.has("to_d") ? in.number("to_d") : Double.POSITIVE_INFINITY;
        return days < least ? days - least : Math.max(0, days - most);
    }

    /** Grams of a liquid that are still in after so many days. */
    static double stays(Inputs in) {
        DryingCourse course = course(in.word("liquid"), open(in.word("air"), in.number("days")), "");
        return Units.inGrams(course.last().mass() - course.dryMass()) / Units.inGrams(course.dryMass()) * 510;
    }

    /** lg of the loss of fizz from mixing to the bath, median of the draws, over a published one. */
    static double makingLoss(Inputs in) {
        double lost = forecast(in.word("liquid"), "", open(in.word("air"), in.number("days")), DRAWS)
                .fizzLost()
                .median();
        return Math.log10(100 * lost / in.number("published_percent"));
    }

    /** 1 where the model goes the makers' way. */
    static double direction(Inputs in) {
        String room = "20 C, 50 %";
        boolean so = switch (in.word("rule")) {
            case "alcohol-is-fast" ->
                alcoholGone(course("isopropanol 91 % 10 g", open(room, 10), "")) < 0.5 * readyAfter("water 10 g", room);
            case "alcohol-starts-the-reaction" ->
                lost("isopropanol 91 % 10 g", open(room, 3)) > lost("isopropanol 99 % 10 g", open(room, 3));
            case "thinner-alcohol-more" ->
                lost("isopropanol 70 % 10 g", open(room, 3)) > lost("isopropanol 91 % 10 g", open(room, 3));
            case "less-beside-an-oil" ->
                lost("isopropanol 70 % 10 g + sweet almond oil 10 g", open(room, 3))
                        < lost("isopropanol 70 % 10 g", open(room, 3));
            case "more-water-loses-more" -> lost("water 20 g", open(room, 7)) > lost("water 10 g", open(room, 7));
            case "humid-air-brings-weight" -> gain("", "20 C, 80 %") > 1e-3;
            case "dry-air-does-not" -> Math.abs(gain("", "20 C, 45 %")) < 1e-4;
            case "salt-brings-weight" ->
                gain("table salt", "20 C, 65 %") > 1e-3
                        && gain("", "20 C, 65 %") < 0.5 * gain("table salt", "20 C, 65 %");
            case "wrap-finishes" ->
                course("water 10 g", wrapped("shrink film"), "").readyAfter().orElseThrow() <= 4.5 * DAY;
            case "glycerin-keeps-damp" -> stillIn("water 10 g + glycerin 10 g") > stillIn("water 10 g");
            default -> throw new IllegalArgumentException(in.word("rule"));
        };
        return so ? 1 : 0;
    }

    private static double alcoholGone(DryingCourse course) {
        for (int i = 0; i < course.steps(); i++) {
            DryingCourse.State state = course.at(course.time(i));
            if (state.alcohol() <= 0.05 * course.at(0).alcohol()) {
                return state.time();
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double readyAfter(String liquid, String air) {
        return course(liquid, open(air, 30), "").readyAfter().orElseThrow();
    }

    /** Share of the fizz lost at the end. */
    private static double lost(String liquid, DryingConditions conditions) {
        return 1 - course(liquid, conditions, "").last().fizzLeft();
    }

    /** Water per dry mix at the end of a week. */
    private static double stillIn(String liquid) {
        DryingCourse course = course(liquid, open("20 C, 50 %", 7), "");
        return (course.last().mass() - course.stays()) / course.dryMass();
    }

    /** Weight taken up in a store of that air in ten days after three open days at 45 %, of its own. */
    private static double gain(String salt, String air) {
        DryingConditions dried = open("20 C, 45 %", 3);
        DryingConditions stored = new DryingConditions(
                dried.air(),
                Optional.empty(),
                Standing.RACK,
                false,
                dried.open(),
                Wrap.NONE,
                0,
                Optional.of(new DryingConditions.Storage(10 * DAY, RoomAir.parse("air", air))));
        DryingCourse course = course("water 10 g", stored, salt);
        return course.last().mass() / course.at(3 * DAY).mass() - 1;
    }

    private static DryingConditions open(String air, double days) {
        return DryingConditions.open(RoomAir.parse("air", air), days * DAY);
    }

    /** A day and a half open at 60 %, then three days in a wrap. */
    private static DryingConditions wrapped(String wrap) {
        DryingConditions open = open("20 C, 60 %", 1.5);
        return new DryingConditions(
                open.air(),
                Optional.empty(),
                Standing.RACK,
                false,
                open.open(),
                Wrap.named(wrap).orElseThrow(),
                3 * DAY,
                Optional.empty());
    }

    private static DryingCourse course(String liquid, DryingConditions conditions, String salt) {
        return forecast(liquid, salt, conditions, CENTRAL).course();
    }

    private static DryForecast forecast(String liquid, String salt, DryingConditions conditions, Sampling draws) {
        RecipeBuilder recipe = new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .name("Lighthouse")
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid anhydrous", "150 g");
        recipe = salt.isEmpty()
                ? recipe.dry("corn starch", "60 g")
                : recipe.dry("corn starch", "30 g").dry(salt, "30 g");
        for (String part : liquid.split("[+]", -1)) {
            // the amount is the last two words
            String text = part.strip();
            int unit = text.lastIndexOf(' ');
            int amount = text.lastIndexOf(' ', unit - 1);
            recipe = recipe.wet(text.substring(0, amount), text.substring(amount + 1));
        }
        var making = new Moulded.Filled(Blend.of(recipe.build()), 0.146, Optional.empty(), conditions.plan(BALL));
        return DryPredictor.standard().with(draws).forecast(BALL, making);
    }
}
