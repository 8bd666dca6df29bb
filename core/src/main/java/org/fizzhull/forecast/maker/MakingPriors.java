package org.fizzhull.forecast.maker;

import static org.fizzhull.uncertainty.Priors.cutNormal;
import static org.fizzhull.uncertainty.Priors.lognormal;
import static org.fizzhull.uncertainty.Priors.normal;
import static org.fizzhull.uncertainty.Priors.uniform;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Source;
import org.fizzhull.evidence.Source.Seen;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.forecast.making.FilledMould;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.making.PressedMould;
import org.fizzhull.forecast.making.Weighed;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Makeup;
import org.fizzhull.pressing.powder.EarlyReaction;
import org.fizzhull.pressing.powder.PressingParameters;
import org.fizzhull.quantity.Allowed;
import org.fizzhull.quantity.Given;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Moles;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;

/**
 * The default priors of everything before the bath, each with its reason: recipe and powders, press, drying, and the
 * makeup of a piece that is only weighed. Medians are the standard parameters. The table with its sources is
 * docs/physics/uncertainty.md, 2. Factors of one sigma stand for lognormal priors, deviations for normal ones, cut at
 * physical limits. Stateless.
 */
public final class MakingPriors {
    /** Makeup of a piece of which no recipe is known. */
    private static final Source USUAL =
            assumed("usual-mix", "No recipe: two parts bicarbonate, one part citric acid, some starch");
    /** Spread of the fill across a batch. */
    private static final Source HAND = assumed("hand", "The spread entered with the weight");
    /** One press against the next. */
    private static final Source AGAIN =
            assumed("press-repeat", "One press of the same hand, or gauge, against the next");
    /** Amounts that the recipe gives as a range. */
    private static final Source AMOUNTS = assumed("amounts", "The ranges and spreads written in the recipe");
    /** Densities of the powders. */
    private static final Source TABLE =
            assumed("densities", "Spread of the ingredient table; half shared, half each powder's own");
    /** Makeup of a weighed piece of a recipe. */
    private static final Source RECIPE =
            assumed("recipe", "From the recipe; what it lost before the bath is not known");
    /** Makeup of a weighed piece whose drying is known. */
    private static final Source DRIED =
            assumed("dried", "From the recipe and its drying by the central values; fizz lost is very unsure");
    /** Error of the packing model. */
    private static final Source MODEL = assumed("packing-model", "Difference between two packing models");
    /** How a mix answers to pressing. */
    private static final Source PRESSING =
            assumed("pressing", "No press constants below 1 MPa were found for these powders");
    /** How much looser damp powders stand. */
    private static final Source DAMP = assumed("bulking", "Damp powders stand looser until they are pressed");
    /** Strength of the liquid bridges between grains. */
    private static final Source BRIDGES = assumed("bridges", "Real grains reach a part of the ideal bridge strength");
    /** Saturation at which bridges merge, and friction on the mould. */
    private static final Source WET =
            new Source("damp-powder", "Limits of saturation and wall friction of damp powders", Seen.MEMORY);
    /** Air of the drying room. */
    private static final Source ROOM =
            new Source("hygrometer", "A cheap hygrometer and thermometer", Seen.COMMON_PRACTICE);
    /** Diffusion of vapour in the pores. */
    private static final Source PORES =
            new Source("pores", "Millington and Quirk's law of diffusion in dry pores", Seen.MEMORY);
    /** Mass transfer from the skin to the air. */
    private static final Source SKIN = new Source("skin", "Free convection at a 65 mm ball", Seen.COMPUTED);
    /** Water of hydrated salts. */
    private static final Source HYDRATES = assumed("hydrates", "Where hydrates settle is known, how fast is not");
    /** Water activity of the film solution. */
    private static final Source FILM = assumed("film", "Product of the humidities over citric acid and bicarbonate");
    /** Reaction before the bath. */
    private static final Source REACTION =
            assumed("reaction", "Solubility argument; rates of damp mixes are not published");

    /** Makeup of a weighed piece whose recipe is not known: true density within 3 %, fizz within 12 %. */
    private static final List<Factor> USUAL_MAKEUP =
            List.copyOf(makeup(Makeup.USUAL_TRUE_DENSITY, 0.03, Makeup.USUAL_GAS_CAPACITY, 0.12, USUAL));

    private MakingPriors() {}

    /**
     * {@return the rows of a making, those that are settled before the bath first}
     *
     * @param making how the piece came to be
     * @param scale on which the piece or the fill was weighed
     */
    public static List<Factor> of(Making making, Scale scale) {
        Given.all("making, scale", making, scale);
        List<Factor> rows = new ArrayList<>();
        if (making instanceof PressedMould pressed) {
            rows.addAll(powders(pressed.blend()));
            rows.addAll(amounts(pressed.blend()));
            rows.addAll(pressing(pressed.pressSpread()));
            rows.addAll(drying(pressed.blend(), pressed.plan()));
        } else if (making instanceof FilledMould filled) {
            rows.addAll(grains(filled.blend()));
            rows.addAll(amounts(filled.blend()));
            rows.add(scale.reading());
            rows.add(scale.offset());
            filled.hand().ifPresent(spread -> rows.add(hand(spread)));
            rows.addAll(drying(filled.blend(), filled.plan()));
        } else if (making instanceof Weighed weighed) {
            rows.addAll(makeup(weighed));
            rows.add(scale.reading());
            rows.add(scale.offset());
            weighed.hand().ifPresent(spread -> rows.add(hand(spread)));
        }
        return rows;
    }

    /** Makeup of a weighed piece, from what is known of it. */
    private static List<Factor> makeup(Weighed weighed) {
        if (weighed.blend().isEmpty()) {
            return USUAL_MAKEUP;
        }
        Blend blend = weighed.blend().get();
        return weighed.dried().isPresent() ? makeup(blend, weighed.dried().get()) : makeup(blend);
    }

    /**
     * {@return the row of the mass that the hand leaves in the mould}
     *
     * @param spread spread around 0, kg
     */
    public static Factor hand(Prior spread) {
        Given.all("spread", spread);
        return new Factor(Input.HAND, spread, HAND);
    }

    /**
     * Makeup of a weighed piece of a recipe: what stays of the liquid fills pores, the prompt reaction is done, and
     * what else it lost is not known (6 % of the fizz).
     */
    static List<Factor> makeup(Blend blend) {
        double staying = blend.liquid().staying();
        double solid = blend.trueDensity();
        double filled = (1 + staying) / (1 / solid + staying / blend.liquid().density());
        double gas = blend.moles().gas() - EarlyReaction.standard(blend).prompt(blend);
        return makeup(filled, blend.trueDensitySigma(0.5), gas / driedPerPowder(blend), 0.06, RECIPE);
    }

    /**
     * {@return the mass of a dry piece per mass of its powder: with the liquid that stays, without the gas of the
     * prompt reaction}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static double driedPerPowder(Blend blend) {
        double prompt = EarlyReaction.standard(blend).prompt(blend);
        return 1 + blend.liquid().staying() - Moles.CO2 * prompt;
    }

    /** Makeup of a weighed piece whose drying is known; how much fizz it lost is a wide guess (10 %). */
    static List<Factor> makeup(Blend blend, Makeup dried) {
        return makeup(dried.trueDensity(), blend.trueDensitySigma(0.5), dried.gasCapacity(), 0.10, DRIED);
    }

    /**
     * The two rows of a makeup; a mix without fizz has none in every draw.
     *
     * @param density of the solids with the liquid that stays, kg/m3
     * @param densitySigma relative standard deviation of it
     * @param capacity carbon dioxide still obtainable, mol per kg of piece
     * @param sigma relative standard deviation of it
     * @param why source of both
     */
    private static List<Factor> makeup(double density, double densitySigma, double capacity, double sigma, Source why) {
        List<Factor> rows = new ArrayList<>(2);
        rows.add(new Factor(Input.TRUE_DENSITY, normal(density, densitySigma * density), why));
        if (capacity > 0) {
            rows.add(new Factor(Input.GAS_CAPACITY, cutNormal(capacity, sigma * capacity, 0, 2 * capacity), why));
        } else {
            rows.add(new Factor(Input.GAS_CAPACITY, normal(0, 0), why));
        }
        return rows;
    }

    /**
     * True densities alone: what a filled mould still asks of the powders, since its weight is known. The shared error
     * is one column, each powder's own three, in the order of {@link Input#POWDER_SCORES}.
     */
    static List<Factor> grains(Blend blend) {
        Prior score = normal(0, 1);
        return List.of(
                new Factor(Input.GRAIN_SCORE, score, TABLE),
                new Factor(
                        Input.POWDER_SCORES, score, TABLE, 3 * blend.powders().size()));
    }

    /**
     * {@return the amounts that the recipe gives as a range or with a spread; no row where all are exact}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static List<Factor> amounts(Blend blend) {
        if (!blend.recipe().spread()) {
            return List.of();
        }
        int lines = blend.recipe().parts().size();
        return List.of(new Factor(Input.RECIPE_SCORES, normal(0, 1), AMOUNTS, lines));
    }

    /**
     * {@return the rows of all densities of the powders: three shared errors, and three of each powder's own}
     *
     * @param blend mix of powders and liquid, per kg of dry powder
     */
    public static List<Factor> powders(Blend blend) {
        Prior score = normal(0, 1);
        return List.of(
                new Factor(Input.GRAIN_SCORE, score, TABLE),
                new Factor(Input.LOOSE_SCORE, score, TABLE),
                new Factor(Input.TAPPED_SCORE, score, TABLE),
                new Factor(
                        Input.POWDER_SCORES, score, TABLE, 3 * blend.powders().size()));
    }

    /**
     * {@return the rows of the press and of its parameters}
     *
     * @param pressSpread one sigma factor of the pressure; 1 where it was measured
     */
    public static List<Factor> pressing(double pressSpread) {
        Given.finite("press spread", pressSpread);
        PressingParameters p = PressingParameters.standard();
        List<Factor> rows = new ArrayList<>(List.of(
                new Factor(Input.PACKING_MODEL, normal(p.packingError(), 0.015), MODEL),
                new Factor(Input.PRESS_SCALE, lognormal(p.pressScale(), 3), PRESSING),
                new Factor(Input.BULKING, cutNormal(p.bulking(), 0.08, 0, 0.9), DAMP),
                new Factor(Input.BULKING_PRESSURE, lognormal(p.bulkingPressure(), 2), DAMP),
                new Factor(Input.WALL_FRICTION, cutNormal(p.wallFriction(), 0.12, 0, 1), WET)));
        if (pressSpread > 1) {
            rows.add(new Factor(Input.PRESS, lognormal(1, pressSpread), HAND));
        }
        double repeat = pressSpread < WeighedPiece.HAND ? WeighedPiece.GAUGE_AGAIN : WeighedPiece.HAND_AGAIN;
        rows.add(new Factor(Input.PRESS_REPEAT, lognormal(1, repeat), AGAIN));
        return rows;
    }

    /** {@return what decides how a piece feels out of the mould, beside its density} */
    public static List<Factor> feel() {
        PressingParameters p = PressingParameters.standard();
        DryingParameters d = DryingParameters.standard();
        return List.of(
                new Factor(Input.BRIDGE_EFFICIENCY, lognormal(p.bridgeEfficiency(), 1.8), BRIDGES),
                new Factor(Input.PENDULAR_LIMIT, cutNormal(p.pendularLimit(), 0.05, 0.05, 0.6), WET),
                new Factor(Input.FILM_RATE, lognormal(d.filmRate(), 4), REACTION),
                new Factor(Input.PROMPT_YIELD, lognormal(d.promptYield(), 2), REACTION));
    }

    /** The rows of what happens between press and bath; of a piece that is not dried only the prompt reaction. */
    static List<Factor> drying(Blend blend, DryingPlan plan) {
        DryingParameters d = DryingParameters.standard();
        Factor prompt = new Factor(Input.PROMPT_YIELD, lognormal(d.promptYield(), 2), REACTION);
        if (plan.phases().isEmpty()) {
            return List.of(prompt);
        }
        List<Factor> rows = new ArrayList<>(List.of(
                prompt,
                new Factor(Input.FILM_RATE, lognormal(d.filmRate(), 4), REACTION),
                new Factor(Input.FILM_ACTIVITY, cutNormal(d.filmActivity(), 0.08, 0.1, 0.94), FILM),
                new Factor(Input.PORE_DIFFUSIVITY, lognormal(d.diffusivityFactor(), 1.6), PORES),
                new Factor(Input.SKIN_TRANSFER, lognormal(d.transfer(), 1.5), SKIN),
                new Factor(Input.ROOM_HUMIDITY, normal(0, 0.05), ROOM),
                new Factor(Input.ROOM_TEMPERATURE, normal(0, 1), ROOM)));
        if (blend.hydrateWater() > 0) {
            rows.add(new Factor(Input.HYDRATE_SHARE, uniform(0, 1), HYDRATES));
        }
        if (blend.hydrateUptake() > 0) {
            rows.add(new Factor(Input.ACID_HYDRATION, lognormal(d.acidHydration(), 4), HYDRATES));
        }
        return rows;
    }

    /**
     * {@return the row of an input, without the values that would put the air of a phase outside the range of
     * {@link RoomAir}: air is not damper than saturated} The error of hygrometer and thermometer is one for all phases.
     *
     * @param row a row of any input; other inputs than the room's stay as they are
     * @param plan what happens between press and bath
     * @throws Refusal {@code out-of-range} where nothing of the prior is left
     */
    public static Factor possible(Factor row, DryingPlan plan) {
        boolean damp = row.input() == Input.ROOM_HUMIDITY;
        if (plan.phases().isEmpty() || !(damp || row.input() == Input.ROOM_TEMPERATURE)) {
            return row;
        }
        Allowed range = damp
                ? Allowed.between(0, 100, Unit.PERCENT)
                : Allowed.between(RoomAir.COLDEST_CELSIUS, RoomAir.HOTTEST_CELSIUS, Unit.CELSIUS);
        double[] entered = plan.phases().stream()
                .map(DryingPhase::air)
                .mapToDouble(damp ? RoomAir::humidity : RoomAir::temperature)
                .sorted()
                .toArray();
        double low = range.low() - entered[0];
        double high = range.high() - entered[entered.length - 1];
        try {
            return new Factor(row.input(), Priors.cut(row.prior(), low, high), row.source(), row.columns());
        } catch (IllegalArgumentException nothing) {
            throw new Refusal(
                    "out-of-range",
                    row.input().label(),
                    "an error of " + row.prior().median() + " in SI on top of " + entered[entered.length - 1],
                    "an error that leaves air of " + range.words(),
                    "Check the prior: it is of the difference from what was entered.");
        }
    }

    /** A source that nobody has measured. */
    private static Source assumed(String key, String why) {
        return new Source(key, why, Seen.ASSUMED);
    }
}
