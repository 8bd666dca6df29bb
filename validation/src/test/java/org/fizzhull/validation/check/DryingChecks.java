package org.fizzhull.validation.check;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.factor.DryingShapeFactor;
import org.fizzhull.drying.mix.Alcohol;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.Hydrates;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.place.Wrap;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.JarPressure;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Property;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.validation.published.Churchill1983;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Room air, sorption, wraps, and drying through the door that everybody uses. */
public final class DryingChecks extends Bindings {
    private static final double DAY = 86400;

    /** Of a dry mix with a third of citric acid, kg/kg. */
    private static final double ACID_WATER = 0.03;

    public DryingChecks() {
        super("drying");
        bind("dew-point", in -> air(in).dewPoint() - 273.15);
        bind("wet-bulb", in -> air(in).wetBulb() - 273.15);
        bind("humidity-ratio", in -> 1e3 * air(in).humidityRatio());
        bind("vapour-density", in -> 1e3 * air(in).vapourDensity());
        bind("vapour-diffusivity", in -> 1e5 * air(in).diffusivity());
        bind(
                "heated",
                in -> 100
                        * RoomAir.heated(in.celsius("outside_C"), in.number("outside_RH") / 100, in.celsius("t_C"))
                                .humidity());
        bind("sherwood", in -> Churchill1983.sherwood(in.number("Ra"), in.number("Sc")));
        bind("gab", in -> mixture(in).water(in.number("a")));
        bind(
                "salt-humidity",
                in -> 100
                        * IngredientTable.standard()
                                .require(in.word("ingredient"))
                                .ingredient()
                                .value(Property.DELIQUESCENCE));
        bind("acids-over-citric", in -> acidActivity(in.word("acids")));
        bind("mutual-deliquescence", in -> in.number("first") * saltActivity(in.word("second")));
        bind("wrap-unit", in -> in.number("gram_mil") * Wrap.GRAM_MIL * 1e16);
        bind("wrap-loss", DryingChecks::gramsADay);
        bind(
                "jar",
                in -> JarPressure.of(
                                        in.number("xi"),
                                        in.number("kg"),
                                        in.number("share"),
                                        in.number("L") / 1e3,
                                        in.celsius("t_C"))
                                .overpressure()
                        / 1e5);
        bind(
                "shape-factor",
                in -> DryingShapeFactor.of(Diffusion.shape(in), exposure(in)).orElseThrow());
        bind("crank", Diffusion::done);
        bind("profile-time", Diffusion::timeRatio);
        bind("profile-error", Diffusion::profileError);
        bind("series", Diffusion::series);
        bind("hollow-ball", Diffusion::hollowBall);
        bind("order-space", Diffusion::orderInSpace);
        bind("order-time", Diffusion::orderInTime);
        bind("water-balance", DryingChecks::balance);
        bind("practice-ready", DryingPractice::ready);
        bind("practice-stays", DryingPractice::stays);
        bind("making-loss", DryingPractice::makingLoss);
        bind("practice-direction", DryingPractice::direction);
        bind("front", DryingChecks::frontHours);
        bind("hydrate-transition", in -> in.celsius("t_C") > 0 ? Hydrates.TAKING_HUMIDITY : Double.NaN);
        bind("hydrate-bound", DryingChecks::bound);
        bind("bound-volume", DryingChecks::boundVolume);
        bind("prompt-loss", in -> {
            var mix = DryingInput.plain(1100, 0.4, in.number("water"), SorptionMixture.none(), in.number("xi"));
            return 100
                    * (1 - course(mix, in, 1, DryingParameters.standard()).at(0).fizzLeft());
        });
        bind("sealed", DryingChecks::sealed);
        bind("ready", in -> {
            var starch = SorptionMixture.of(in.number("starch"), 0.088, 20, 0.72);
            var mix = DryingInput.plain(1100, 0.4, in.number("water"), starch, 4.6);
            return DryingPractice.outside(
                    in,
                    course(mix, in, 90, DryingParameters.standard())
                                    .readyAfter()
                                    .orElseThrow()
                            / DAY);
        });
    }

    /** Largest error of the water balance, of the water at the start, over a grid of mixes, rooms, bodies and wraps. */
    private static double balance(Inputs in) {
        double worst = 0;
        double days = in.number("days");
        var wrap = Wrap.named(in.word("wrap")).orElseThrow();
        var ball = new Opening(Sphere.ofDiameter(0.065).depthProfile(DepthProfile.Exposure.ALL), 1);
        for (double water : new double[] {0.005, 0.02, 0.06}) {
            for (double starch : new double[] {0, 0.1, 0.3}) {
                for (double humidity : new double[] {0.2, 0.5, 0.7, 0.85}) {
                    var mix = DryingInput.plain(
                            1050, 0.42, water, SorptionMixture.of(starch, 0.088, 20, 0.72), in.number("xi"));
                    var open = DryingPhase.open(ball, RoomAir.of(293.15, humidity), days * DAY);
                    var course = Drying.run(
                            mix,
                            List.of(open, open.in(wrap, 0), open.stored()),
                            DryingParameters.standard(),
                            Resolution.COARSE);
                    worst = Math.max(worst, course.balanceError());
                }
            }
        }
        return worst;
    }

    /** The part of its water of crystallisation that acid holds after a long time in air, from dry. */
    private static double bound(Inputs in) {
        DryingCourse course = dampAcid(in);
        return (course.last().mass() / course.dryMass() - 1) / ACID_WATER;
    }

    /** What water that the acid binds takes of the pores, cm3/g. */
    private static double boundVolume(Inputs in) {
        DryingCourse course = dampAcid(in);
        Shape ball = Sphere.ofDiameter(in.millimetres("ball_mm"));
        Piece before = course.piece(ball, 0);
        Piece after = course.piece(ball, course.end());
        double solids = after.mass() / after.makeup().trueDensity()
                - before.mass() / before.makeup().trueDensity();
        return 1e3 * solids / (after.mass() - before.mass());
    }

    private static DryingCourse dampAcid(Inputs in) {
        var input = new DryingInput(
                1100,
                0.4,
                0.4,
                0,
                Alcohol.NONE,
                0,
                0,
                SorptionMixture.none(),
                0,
                false,
                1,
                new Hydrates(0, ACID_WATER),
                Additives.NONE);
        return course(input, in, 600, DryingParameters.standard());
    }

    private static RoomAir air(Inputs in) {
        return RoomAir.of(in.celsius("t_C"), in.number("RH") / 100);
    }

    private static SorptionMixture mixture(Inputs in) {
        return SorptionMixture.of(1, in.number("Xm"), in.number("C"), in.number("K"));
    }

    private static DepthProfile.Exposure exposure(Inputs in) {
        return DepthProfile.Exposure.valueOf(in.word("open"));
    }

    private static DryingCourse course(DryingInput mix, Inputs in, double days, DryingParameters parameters) {
        var ball = new Opening(Sphere.ofDiameter(in.millimetres("ball_mm")).depthProfile(DepthProfile.Exposure.ALL), 1);
        return Drying.run(mix, List.of(DryingPhase.open(ball, air(in), days * DAY)), parameters, Resolution.FINE);
    }

    /** Grams a day through a film over a drop of relative humidity; no boundary layer, no leak. */
    private static double gramsADay(Inputs in) {
        double kelvin = in.celsius("t_C");
        double k = Wrap.film("film", in.number("um") * 1e-6, in.number("gram_mil"), "")
                .conductance(kelvin, 0);
        double drop = in.number("drop_RH") / 100 * RoomAir.of(kelvin, 0.5).saturationDensity();
        return 1e3 * DAY * k * drop * in.number("area_m2");
    }

    /** Hours until 95 % of the removable water is gone, without sorbents and reaction. */
    private static double frontHours(Inputs in) {
        double film = in.number("a_film");
        var parameters = DryingParameters.standard()
                .but()
                .transfer(in.number("h_m"))
                .filmActivity(film)
                .startActivity(film)
                .promptYield(0)
                .filmRate(0)
                .build();
        double water = in.number("water");
        var mix = new DryingInput(
                in.number("rho"),
                in.number("eps_g") + 0.1,
                in.number("eps_g"),
                water,
                Alcohol.NONE,
                0,
                0,
                SorptionMixture.none(),
                0,
                false,
                1,
                Hydrates.NONE,
                Additives.NONE);
        return course(mix, in, 90, parameters).readyAfter().orElseThrow() / 3600;
    }

    /** Fizz lost, per cent, in a tight jar with the film reaction of order 1 alone. */
    private static double sealed(Inputs in) {
        var parameters = DryingParameters.standard()
                .but()
                .filmActivity(0.72)
                .startActivity(0.72)
                .promptYield(0)
                .filmRate(in.number("k"))
                .activationEnergy(0)
                .hydrateWaters(in.number("h"))
                .build();
        double days = in.number("days");
        var mix = DryingInput.plain(1100, 0.4, in.number("water"), SorptionMixture.none(), in.number("xi"));
        var ball = new Opening(Sphere.ofDiameter(0.065).depthProfile(DepthProfile.Exposure.ALL), 1);
        var jar = DryingPhase.open(ball, RoomAir.of(298.15, 0.5), days * DAY)
                .in(Wrap.named("jar").orElseThrow(), 0);
        return 100
                * (1
                        - Drying.run(mix, List.of(jar), parameters, new Resolution(16, 1, 1e-4))
                                .last()
                                .fizzLeft());
    }

    /** Air over the films of a mix with these acids, joined by +, over that with citric acid alone. */
    private static double acidActivity(String acids) {
        RecipeBuilder mix =
                new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL).dry("sodium bicarbonate", "200 g");
        for (String acid : acids.split("[+]", -1)) {
            mix.dry(acid + " acid", "50 g");
        }
        return Blend.of(mix.build()).saltActivity();
    }

    /** What a salt or sugar beside acid and bicarbonate leaves of the film's humidity. */
    private static double saltActivity(String second) {
        return Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                        .dry("citric acid", "100 g")
                        .dry("sodium bicarbonate", "200 g")
                        .dry(second, "50 g")
                        .build())
                .saltActivity();
    }
}
