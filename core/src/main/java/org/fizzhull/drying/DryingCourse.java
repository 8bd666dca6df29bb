package org.fizzhull.drying;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;

/**
 * What became of a piece between press and bath: its state at any time, when it is ready, what was lost. SI.
 *
 * <p>Immutable. Error: that of the resolution with which it was computed; between steps linear.
 *
 * <p>The piece is that of the opening's volume as entered, without any inset; a draw scales it by its volume ratio. The
 * states are those of the mean piece: what the cells hold one by one is not kept.
 */
public interface DryingCourse {
    /** {@return the mass of the dry mix in the piece as weighed, kg} */
    double dryMass();

    /** {@return the dry mix per volume of piece, kg/m3} */
    double rhoDry();

    /** {@return the porosity that liquid leaves open in the fresh piece, 0 to 1} */
    double airPorosity();

    /** {@return the water that the acid of the piece can bind as its hydrate, kg} */
    double acidWater();

    /** {@return the mass as pressed, before the prompt reaction's gas has left, kg} */
    double dampMass();

    /** {@return the end of the course, s} */
    double end();

    /**
     * {@return the state at a time from 0 to {@link #end}, s; linear between the steps of the computation}
     *
     * @param seconds time from pressing, s
     * @throws IllegalArgumentException for a time outside that range
     */
    State at(double seconds);

    /**
     * {@return the state in which the piece first weighs so much: what a weighing says of the water left} Empty where
     * the course starts lighter or never gets so light. Kilograms, any inset left out.
     *
     * @param mass mass of the piece without any inset, kg
     */
    Optional<State> whenWeighing(double mass);

    /** {@return the state at the end} */
    State last();

    /**
     * {@return the piece as it is at a time, for the bath: its mass with any inset, the gas it can still give, and a
     * true density that leaves the pores which air has filled, and what of its mix acts on the fizz (oil, starch,
     * foaming powder)} What the reaction took of the solids stays counted as solid.
     *
     * @param shape the piece's shape, whose volume is the opening's
     * @param seconds time from pressing, s, from 0 to {@link #end}
     * @throws IllegalArgumentException for a shape of another volume
     */
    Piece piece(Shape shape, double seconds);

    /** {@return the number of computed steps, the start included} */
    int steps();

    /**
     * {@return the time of a computed step, s}
     *
     * @param step number of the step, from 0
     */
    double time(int step);

    /**
     * {@return the water that can leave in the air of the drying phase (the longest open one): start (after the prompt
     * reaction) less equilibrium, kg}
     */
    double removable();

    /**
     * {@return the water that a state holds beyond what the air of the drying phase leaves in the end, free or bound, kg; 0
     * for a piece that has taken up water from air damper than its powders and is in equilibrium with it}
     *
     * @param state a state of this course
     */
    double excess(State state);

    /**
     * {@return the water that must still leave until a piece in this state is ready, kg; 0 where it is} What the acid has
     * bound does not count, nor what the air of the drying phase leaves in the piece.
     *
     * @param state a state of this course
     */
    double toGo(State state);

    /**
     * {@return the time when 95 % of the removable water is gone, s; empty where that does not happen within the course
     * or the wait}
     */
    OptionalDouble readyAfter();

    /** {@return whether no open phase has air below the humidity at which the films stay liquid for ever} */
    boolean neverDries();

    /** {@return the relative humidity the room must stay below for the films to dry at all} */
    double filmActivity();

    /** {@return the liquid that stays by design (oils, butters, glycerin, emulsifiers), kg} */
    double stays();

    /** {@return the CO2 lost when liquid met powder, mol per kg of dry mix} */
    double promptExtent();

    /**
     * {@return the reaction number Da = k M_w (1 - h/3) tau_dry of the drying phase; tau_dry is the mean stay of the
     * free water by the receding front, without sorbents} 0 without free water; empty where it never dries, as the
     * reaction then goes on without end.
     */
    OptionalDouble reactionNumber();

    /** {@return the reaction number in words} */
    String reactionSentence();

    /** {@return the class of swelling at the end of the course} */
    Swelling swelling();

    /** {@return whether a piece took up water, in the store or in damp air, until a third of its pores were full; the course ends there} */
    boolean soaked();

    /** {@return the error of the water balance, relative to the water at the start} */
    double balanceError();

    /** {@return what the reader must know} */
    List<Notice> notices();

    /**
     * A piece at one moment between press and bath.
     *
     * @param time since pressing, s
     * @param mass of the whole piece, kg
     * @param water all water that can come or go: free, sorbed, made by the reaction, what hydrated salts can give back
     *     and what the acid has bound, kg
     * @param bound the part of it that the acid has bound as its hydrate, kg
     * @param waterOfDry the same per kg of dry mix
     * @param alcohol left, kg
     * @param extent CO2 lost so far, mol per kg of dry mix
     * @param fizzLeft share of the CO2 still obtainable, 0 to 1
     * @param gasCapacity CO2 still obtainable, mol per kg of the piece as it is now
     * @param roomHumidity relative humidity of the room
     * @see DryingCourse#at
     */
    record State(
            double time,
            double mass,
            double water,
            double bound,
            double waterOfDry,
            double alcohol,
            double extent,
            double fizzLeft,
            double gasCapacity,
            double roomHumidity) {}

    /**
     * Whether gas made before the bath swells the piece: {@code dV/V = phi_ret xi V_m rho_dry}, phi_ret from 0.003 where
     * the pores hold less than a tenth of liquid to 0.05 above eight tenths (docs/physics/drying.md, 7, assumed, low
     * confidence). A class, not a number.
     *
     * <p>V growth in volume over volume, phi_ret share of the gas that stays and pushes, xi CO2 made before the bath
     * (mol/kg dry), V_m volume of a mole of gas at 1 atm (m3/mol), rho_dry dry mix per volume (kg/m3). How far a paste
     * holds its gas is not known for any such mix: hence classes.
     */
    enum Swelling {
        /** Below 3 % of volume, which is below 1 % across: not seen. */
        NONE("none", 0),
        /** 3 to 10 % of volume. */
        SLIGHT("slight", 0.03),
        /** Above 10 % of volume. */
        PUFFS("puffs", 0.10);

        /** Word shown to people, stable. */
        private final String word;
        /** Least relative growth in volume of the class. */
        private final double leastGrowth;

        Swelling(String word, double leastGrowth) {
            this.word = word;
            this.leastGrowth = leastGrowth;
        }

        /** {@return the least relative growth in volume of this class} */
        public double leastGrowth() {
            return leastGrowth;
        }

        /** {@return the word shown to people} */
        public String word() {
            return word;
        }

        /**
         * Relative growth in volume, dV/V.
         *
         * @param extent CO2 made, mol/kg dry
         * @param rhoDry dry mix per volume of piece, kg/m3
         * @param saturation share of the pores that liquid fills at the start, 0 to 1
         * @param kelvin temperature, K
         * @param factor on the retained share
         */
        public static double growth(double extent, double rhoDry, double saturation, double kelvin, double factor) {
            double place = Math.max(0, Math.min(1, (saturation - 0.1) / 0.7));
            double retained = factor * (0.003 + 0.047 * place);
            return retained * extent * rhoDry * PhysicalConstants.GAS_CONSTANT * kelvin / PhysicalConstants.ATMOSPHERE;
        }

        /**
         * {@return the class of a growth in volume}
         *
         * @param growth dV/V
         * @throws IllegalArgumentException for NaN
         */
        public static Swelling of(double growth) {
            if (Double.isNaN(growth)) {
                throw new IllegalArgumentException("a growth in volume of NaN");
            }
            if (growth < SLIGHT.leastGrowth) {
                return NONE;
            }
            return growth < PUFFS.leastGrowth ? SLIGHT : PUFFS;
        }
    }
}
