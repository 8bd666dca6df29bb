package org.fizzhull.validation.check;

import java.util.Arrays;
import java.util.Map;
import org.fizzhull.pressing.MouldDimensions;
import org.fizzhull.pressing.Pressed;
import org.fizzhull.pressing.powder.DeLarrard1999;
import org.fizzhull.pressing.powder.Janssen1895;
import org.fizzhull.pressing.powder.Powders;
import org.fizzhull.pressing.powder.Press;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.pressing.powder.WetStrength;
import org.fizzhull.pressing.powder.WindowScan;
import org.fizzhull.pressing.powder.YuStandish1991;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Units;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.recipe.RecipeChange;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.validation.table.Bindings;

/** Packing, pressing and damp strength. */
public final class PressingChecks extends Bindings {
    private static final IngredientTable TABLE = IngredientTable.standard();
    /** A litre: grams of a fill are its density in kg/m3. */
    private static final MouldDimensions LITRE = new MouldDimensions(1e-3, 1e-2, 0.1, 0.1, 0.06);

    private final DeLarrard1999 compressible = new DeLarrard1999();
    private final YuStandish1991 linear = new YuStandish1991();

    public PressingChecks() {
        super("pressing");
        worked();
        packing();
        bind(
                "kawakita",
                in -> compressible.solidFraction(
                        Powders.of(one(1), one(1e-4), one(in.number("beta")), one(in.number("K0")), 2000),
                        in.number("squeeze")));
        bind(
                "janssen",
                in -> Janssen1895.meanOverTop(
                        Janssen1895.exponent(in.number("mu"), in.number("Kr"), in.number("depth_over_width"))));
        bind(
                "saturation",
                in -> filled(
                        in.number("M"),
                        in.number("rho_s_g_per_cm3"),
                        in.number("rho_l_g_per_cm3"),
                        1 - in.number("eps")));
        bind("damp-strength", in -> WetStrength.at(in.number("S"), 0.40, 0.0728, 100e-6, 0.3, 0.8));
        bind("trade-direction", in -> direction(in.word("rule")));
        bind("damp-ball", in -> {
            Press press = Press.of(Blend.of(defaultMix()));
            MouldDimensions ball =
                    MouldDimensions.of(Sphere.ofDiameter(Units.millimetres(65)), MouldDimensions.Filling.TWO_HALVES);
            return Units.inGrams(press.press(in.number("P_kPa") * 1e3, ball).dampMass());
        });
    }

    private void worked() {
        bind(
                "worked-solid-fraction",
                in -> worked(in.number("Pk_kPa"))
                        .press(in.number("P_kPa") * 1e3, LITRE)
                        .solidFraction());
        bind(
                "worked-density",
                in -> worked(in.number("Pk_kPa"))
                                .press(in.number("P_kPa") * 1e3, LITRE)
                                .dampDensity()
                        / 1e3);
        bind(
                "worked-press-scale",
                in -> worked(90).pressScale(in.number("density_g_per_cm3"), in.number("P_kPa") * 1e3, LITRE) / 1e3);
    }

    private void packing() {
        bind("recursive", in -> {
            int n = (int) in.number("sizes");
            double alone = in.number("alone");
            double[] share = new double[n];
            double[] size = new double[n];
            for (int k = 0; k < n; k++) {
                share[k] = alone * Math.pow(1 - alone, k) / (1 - Math.pow(1 - alone, n));
                size[k] = Math.pow(1e-9, k);
            }
            return compressible.virtual(shot(share, size, alone));
        });
        bind(
                "furnas",
                in -> compressible.virtual(shot(
                        new double[] {in.number("coarse"), 1 - in.number("coarse")},
                        new double[] {1, 1e-12},
                        in.number("alone"))));
        bind(
                "linear-mixture",
                in -> linear.mixed(
                        new double[] {in.number("coarse"), 1 - in.number("coarse")},
                        new double[] {1, in.number("ratio")},
                        filled(2, in.number("alone"))));
        bind("mcgeary-linear", in -> {
            double[] sizes = list(in.word("sizes"));
            return linear.mixed(list(in.word("shares")), sizes, filled(sizes.length, in.number("alone")));
        });
        bind(
                "mcgeary-virtual",
                in -> compressible.virtual(shot(list(in.word("shares")), list(in.word("sizes")), in.number("alone"))));
    }

    /** What makers say as directions: 1 where the model goes that way, 0 where not. */
    private static double direction(String rule) {
        MouldDimensions ball =
                MouldDimensions.of(Sphere.ofDiameter(Units.millimetres(65)), MouldDimensions.Filling.TWO_HALVES);
        Recipe mix = defaultMix();
        Recipe clay = changed(changed(mix, "corn starch = 0 g"), "kaolin = 60 g");
        Press press = Press.of(Blend.of(mix));
        double firm = press.press(30e3, ball).dampMass();
        boolean so = switch (rule) {
            case "clay-heavier" -> Press.of(Blend.of(clay)).press(30e3, ball).dampMass() > firm;
            case "clay-thirstier" -> thirst(clay, ball) > thirst(mix, ball);
            case "bentonite-thirstier" ->
                thirst(changed(changed(mix, "corn starch = 0 g"), "bentonite = 60 g"), ball) > thirst(mix, ball);
            case "harder-heavier" -> press.press(100e3, ball).dampMass() > firm;
            case "common-batch-holds" -> press.press(30e3, ball).feel() == Pressed.Feel.HOLDS;
            case "dry-crumbles" -> press.withLiquid(0).press(30e3, ball).feel() == Pressed.Feel.CRUMBLES;
            case "much-more-water-too-wet" ->
                Press.of(Blend.of(changed(mix, "water +60 g")))
                                .press(30e3, ball)
                                .feel()
                        == Pressed.Feel.TOO_WET;
            case "batch-400-25" -> holds(400, 12, 13, ball);
            case "batch-450-22" -> holds(450, 11, 11, ball);
            case "batch-500-20" -> holds(500, 10, 10, ball);
            case "barely-filled-no-grip" -> press.fill(0.090, ball).meanPressure() == 0;
            case "barely-filled-crumbles" -> press.fill(0.090, ball).feel() == Pressed.Feel.CRUMBLES;
            default -> throw new IllegalArgumentException(rule);
        };
        return so ? 1 : 0;
    }

    /** A common mix, 5:2.5:1, of that much powder, g, with that much oil and water, mL. */
    private static boolean holds(double powder, double oil, double water, MouldDimensions ball) {
        Recipe mix = new RecipeBuilder(TABLE, Measures.US_LEGAL)
                .dry("sodium bicarbonate", powder * 10 / 17 + " g")
                .dry("citric acid", powder * 5 / 17 + " g")
                .dry("corn starch", powder * 2 / 17 + " g")
                .wet("sweet almond oil", oil + " mL")
                .wet("water", water + " mL")
                .build();
        return Press.of(Blend.of(mix)).press(30e3, ball).feel() == Pressed.Feel.HOLDS;
    }

    /** Saturation of one powder filled to a solid fraction. */
    private static double filled(double liquid, double solid, double liquidDensity, double fraction) {
        Recipe recipe = new RecipeBuilder(TABLE, Measures.US_LEGAL)
                .own(
                        "beach dust",
                        Map.of(
                                "true density", solid + " g/cm3",
                                "loose density", 0.4 * solid + " g/cm3",
                                "tapped density", 0.75 * solid + " g/cm3"))
                .own(
                        "beach liquid",
                        Map.of("role", "water", "liquid density", liquidDensity + " g/cm3", "water share", "100 %"))
                .dry("beach dust", "100 g")
                .wet("beach liquid", 100 * liquid + " g")
                .build();
        Blend blend = Blend.of(recipe);
        Press press = Press.of(blend, Powders.of(blend), bare(90));
        return press.fill(fraction * solid * (1 + liquid), LITRE).saturation();
    }

    private static double thirst(Recipe recipe, MouldDimensions mould) {
        return WindowScan.of(Press.of(Blend.of(recipe)), 30e3, mould).low();
    }

    private static Recipe changed(Recipe recipe, String change) {
        return RecipeChange.read(change, Measures.US_LEGAL).applyTo(recipe, TABLE);
    }

    private static Press worked(double pressScale) {
        RecipeBuilder builder = new RecipeBuilder(TABLE, Measures.US_LEGAL);
        Recipe recipe = builder.own("invented acid", InventedPowders.CITRIC)
                .own("invented base", InventedPowders.BICARBONATE)
                .own("invented starch", InventedPowders.STARCH)
                .own("invented water", InventedPowders.WATER)
                .dry("invented acid", "30 g")
                .dry("invented base", "60 g")
                .dry("invented starch", "10 g")
                .wet("invented water", "4 g")
                .build();
        Blend blend = Blend.of(recipe);
        return Press.of(blend, Powders.of(blend).withOnePressScale(), bare(pressScale));
    }

    /** Without bulking, spring-back and friction; press scale in kPa. */
    private static PressingParameters bare(double pressScale) {
        return new PressingParameters(pressScale * 1e3, 0, 0, 20e3, 0, 0, 0, 0.3, 0.8, 0.4, 0.3e-6);
    }

    /** The mix that checks of pressing and of the trade start from. */
    static Recipe defaultMix() {
        return new RecipeBuilder(TABLE, Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g")
                .dry("citric acid", "150 g")
                .dry("corn starch", "60 g")
                .wet("sweet almond oil", "10.2 g")
                .wet("water", "8.16 g")
                .build();
    }

    private static Powders shot(double[] share, double[] size, double alone) {
        return Powders.of(share, size, filled(share.length, alone), filled(share.length, 4), 7800);
    }

    private static double[] filled(int n, double value) {
        double[] column = new double[n];
        Arrays.fill(column, value);
        return column;
    }

    private static double[] one(double value) {
        return new double[] {value};
    }

    private static double[] list(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
