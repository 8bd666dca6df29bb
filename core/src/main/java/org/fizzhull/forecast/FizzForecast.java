package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.gas.Effervescence;
import org.fizzhull.fizz.gas.Yield;
import org.fizzhull.forecast.measured.MeasurementEffect;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.Role;
import org.fizzhull.recipe.change.LimitedShare;
import org.fizzhull.voyage.result.Voyage;

/**
 * How a piece fizzes and what its bath becomes: the answer of a {@link FizzPredictor}. SI: kg, m3/s, s.
 */
public sealed interface FizzForecast permits FizzForecastRecord {
    /** {@return what was asked, as it was judged} */
    Question question();

    /** {@return the mix} */
    Blend blend();

    /** {@return the draws of the fizz time} */
    Sampling sampling();

    /** {@return by the central values; of a made piece with the weight of the middle draw} */
    Piece piece();

    /** {@return chemistry of the bath once the piece is dissolved, and what else it gets} */
    FizzedBath bath();

    /** {@return by the central values, by the equation of motion} */
    Voyage voyage();

    /** {@return intervals over the draws} */
    Drawn drawn();

    /** {@return what measurements did; empty where there are none} */
    Optional<MeasurementEffect> narrowing();

    /** {@return notices that a reader must see, in the order in which they are shown} */
    List<Notice> notices();

    /**
     * What the reagents of a piece make of its bath, fizz lost before the bath left out.
     *
     * @param yield what they can still give at most, the middle of what was lost taken
     * @param closedPh pH of the bath with everything dissolved before gas leaves
     * @param openPh pH of the bath after hours in a room's air
     * @param bathful what else the bath gets
     */
    record FizzedBath(Yield yield, double closedPh, double openPh, BathLoad bathful) {}

    /**
     * What the draws say.
     *
     * @param fizzTime s
     * @param fizzLost share of the fizz of the powders that is gone before the bath
     * @param peak largest rate of gas at the surface, m3/s dry at the bath's temperature and 1 atm
     * @param band rate of gas against time, m3/s
     */
    record Drawn(Interval fizzTime, Interval fizzLost, Interval peak, List<Point> band) {
        /**
         * Copies the list.
         *
         * @param fizzTime s
         * @param fizzLost share of the fizz of the powders that is gone before the bath
         * @param peak largest rate of gas at the surface, m3/s dry at the bath's temperature and 1 atm
         * @param band rate of gas against time, m3/s
         */
        public Drawn {
            band = List.copyOf(band);
        }
    }

    /**
     * {@return whether it fizzes at all, by the central values; where it does not, the fizz time is that of dissolving}
     */
    default Effervescence effervescence() {
        return Effervescence.of(blend().moles(), piece().makeup().gasCapacity());
    }

    /** {@return what the reagents can still give at most} */
    default Yield gasYield() {
        return bath().yield();
    }

    /** {@return the time until it is gone, s} */
    default Interval fizzTime() {
        return drawn().fizzTime();
    }

    /** {@return the rate of gas against time, m3/s} */
    default List<Point> band() {
        return drawn().band();
    }

    /**
     * {@return the gas per entering water, a check ({@link org.fizzhull.fizz.Gas#perEnteringWater}), by the central
     * values just under the surface of a fizzing bath}
     */
    default double gasPerEnteringWater() {
        return EnteringWater.gas(question().bath(), piece());
    }

    /**
     * A time of the band.
     *
     * @param time s
     * @param rate of gas at the surface, m3/s
     */
    record Point(double time, Interval rate) {}

    /**
     * What one piece brings into one bath, kg, as weighed into the mix, for the reader who keeps to limits of his own
     * (skin, drain, label). Beside each stands the limit that the user entered; the library knows and computes none, since
     * what is safe on skin is for local rules and a qualified assessor to say. Part of {@link FizzForecast.FizzedBath}.
     *
     * @param oil oils and butters, kg
     * @param surfactant foaming powders and liquids, kg
     * @param emulsifier emulsifiers, kg
     * @param fragrance fragrance and essential oils, kg
     * @param salt salts that dissolve without gas, kg
     * @param colour dyes, micas and pigments, kg
     * @param limits the user's own, in the order of the recipe
     */
    record BathLoad(
            double oil,
            double surfactant,
            double emulsifier,
            double fragrance,
            double salt,
            double colour,
            List<OwnLimit> limits) {

        /**
         * Copies the list.
         *
         * @param oil oils and butters
         * @param surfactant foaming powders and liquids
         * @param emulsifier emulsifiers
         * @param fragrance fragrance and essential oils
         * @param salt salts that dissolve without gas
         * @param colour dyes, micas and pigments
         * @param limits the user's own, in the order of the recipe
         */
        public BathLoad {
            limits = List.copyOf(limits);
        }

        /**
         * An ingredient for which the user gave a limit.
         *
         * @param ingredient its name in the recipe
         * @param mass in one piece, kg
         * @param share of the dried piece, 0 to 1 ({@link LimitedShare})
         * @param limit largest share the user allows, 0 to 1
         * @param kept whether the piece keeps to it
         */
        public record OwnLimit(String ingredient, double mass, double share, double limit, boolean kept) {}

        /**
         * What a piece brings.
         *
         * @param blend powders and liquid by the recipe's middle amounts
         * @param dryMass dry powder in the piece, kg
         */
        static BathLoad of(Blend blend, double dryMass) {
            double scale = dryMass / blend.dryMass();
            List<OwnLimit> limits = new ArrayList<>();
            for (LimitedShare limited : LimitedShare.of(blend.recipe())) {
                Recipe.Part part = limited.part();
                limits.add(new OwnLimit(
                        part.ingredient().name(),
                        scale * part.mass(),
                        limited.share(),
                        limited.limit(),
                        limited.kept()));
            }
            return new BathLoad(
                    dryMass * (blend.share(Role.OIL) + blend.share(Role.BUTTER)),
                    dryMass * (blend.share(Role.SURFACTANT) + blend.share(Role.LIQUID_SURFACTANT)),
                    dryMass * blend.share(Role.EMULSIFIER),
                    dryMass * blend.share(Role.FRAGRANCE),
                    dryMass * blend.share(Role.SALT),
                    dryMass * blend.share(Role.COLOUR),
                    limits);
        }
    }
}
