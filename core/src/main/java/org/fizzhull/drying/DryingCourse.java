package org.fizzhull.drying;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.piece.Makeup;
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
public final class DryingCourse {
    /** Ethanol and isopropanol at 20 C, kg/m3: 789 and 785 [from memory]. */
    private static final double ALCOHOL_DENSITY = 787;

    /** The mix as pressed. */
    private final DryingInput input;
    /** Dry mix in the piece as weighed, kg. */
    private final double dryMass;
    /** State at each computed step. */
    private final Log log;
    /** Figures of the whole course. */
    private final Ends ends;
    /** Phases that it went through, in order. */
    private final List<DryingPhase> phases;

    DryingCourse(DryingInput input, double dryMass, Log log, Ends ends, List<DryingPhase> phases) {
        this.phases = phases;
        this.input = input;
        this.dryMass = dryMass;
        this.log = log;
        this.ends = ends;
    }

    /** {@return the mass of the dry mix in the piece as weighed, kg} */
    public double dryMass() {
        return dryMass;
    }

    /** {@return the dry mix per volume of piece, kg/m3} */
    public double rhoDry() {
        return input.rhoDry();
    }

    /** {@return the porosity that liquid leaves open in the fresh piece, 0 to 1} */
    public double airPorosity() {
        return input.airPorosity();
    }

    /** {@return the water that the acid of the piece can bind as its hydrate, kg} */
    public double acidWater() {
        return input.hydrates().takes() * dryMass;
    }

    /** {@return the mass as pressed, before the prompt reaction's gas has left, kg} */
    public double dampMass() {
        return dryMass * input.dampRatio();
    }

    /** {@return the end of the course, s} */
    public double end() {
        return log.time[log.size - 1];
    }

    /**
     * {@return the state at a time from 0 to {@link #end}, s; linear between the steps of the computation}
     *
     * @param seconds time from pressing, s
     * @throws IllegalArgumentException for a time outside that range
     */
    public DryState at(double seconds) {
        if (!(seconds >= 0 && seconds <= end())) {
            throw new IllegalArgumentException("the course runs from 0 to " + end() + " s, not to " + seconds);
        }
        int i = Arrays.binarySearch(log.time, 0, log.size, seconds);
        if (i >= 0) {
            return state(i, i, 0);
        }
        int above = -i - 1;
        double share = (seconds - log.time[above - 1]) / (log.time[above] - log.time[above - 1]);
        return state(above - 1, above, share);
    }

    /**
     * {@return the state in which the piece first weighs so much: what a weighing says of the water left} Empty where
     * the course starts lighter or never gets so light. Kilograms, any inset left out.
     *
     * @param mass mass of the piece without any inset, kg
     */
    public Optional<DryState> whenWeighing(double mass) {
        double before = state(0, 0, 0).mass();
        if (!(mass <= before)) {
            return Optional.empty();
        }
        for (int i = 1; i < log.size; i++) {
            double now = state(i, i, 0).mass();
            if (now <= mass) {
                return Optional.of(before > now ? state(i - 1, i, (before - mass) / (before - now)) : state(i, i, 0));
            }
            before = now;
        }
        return Optional.empty();
    }

    /** {@return the state at the end} */
    public DryState last() {
        return state(log.size - 1, log.size - 1, 0);
    }

    /**
     * {@return the piece as it is at a time, for the bath: its mass with any inset, the gas it can still give, and a
     * true density that leaves the pores which air has filled, and what of its mix acts on the fizz (oil, starch,
     * foaming powder)} What the reaction took of the solids stays counted as solid.
     *
     * @param shape the piece's shape, whose volume is the opening's
     * @param seconds time from pressing, s, from 0 to {@link #end}
     * @throws IllegalArgumentException for a shape of another volume
     */
    public Piece piece(Shape shape, double seconds) {
        double volume = dryMass / input.rhoDry();
        if (!(Math.abs(shape.volume() / volume - 1) < 0.01)) {
            throw new IllegalArgumentException("the shape holds " + shape.volume() + " m3, the course " + volume);
        }
        DryState state = at(seconds);
        double carbon = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS * state.extent() * dryMass;
        double alcohol = input.alcohol().share() * dryMass - state.alcohol();
        double water = dampMass() - state.mass() - carbon - alcohol;
        // what has left as water and alcohol leaves pores open
        double open = input.airPorosity() + (water / Drying.WATER_DENSITY + alcohol / ALCOHOL_DENSITY) / volume;
        double density = state.mass() / volume / (1 - open);
        Makeup makeup = new Makeup(density, state.gasCapacity(), input.additives(), state.fizzLeft());
        return new Piece(shape, state.mass() + shape.insetMass(), makeup);
    }

    /** {@return the number of computed steps, the start included} */
    public int steps() {
        return log.size;
    }

    /**
     * {@return the time of a computed step, s}
     *
     * @param step number of the step, from 0
     */
    public double time(int step) {
        return log.time[step];
    }

    /**
     * {@return the water that can leave in the air of the drying phase (the longest open one): start (after the prompt
     * reaction) less equilibrium, kg}
     */
    public double removable() {
        return ends.removable();
    }

    /**
     * {@return the water that a state holds beyond what the air of the drying phase leaves in the end, free or bound, kg}
     *
     * @param state a state of this course
     */
    public double excess(DryState state) {
        double settled = log.water[0] - ends.removable();
        double free = state.water() - state.bound();
        return Math.max(0, free - settled) + Math.max(0, state.bound() - ends.bound());
    }

    /**
     * {@return the time when 95 % of the removable water is gone, s; empty where that does not happen within the course
     * or the wait}
     */
    public OptionalDouble readyAfter() {
        return !Double.isNaN(ends.readyAt()) ? OptionalDouble.of(ends.readyAt()) : OptionalDouble.empty();
    }

    /** {@return whether no open phase has air below the humidity at which the films stay liquid for ever} */
    public boolean neverDries() {
        return ends.damp();
    }

    /** {@return the relative humidity the room must stay below for the films to dry at all} */
    public double filmActivity() {
        return ends.film();
    }

    /** {@return the liquid that stays by design (oils, butters, glycerin, emulsifiers), kg} */
    public double stays() {
        return input.stays() * dryMass;
    }

    /** {@return the CO2 lost when liquid met powder, mol per kg of dry mix} */
    public double promptExtent() {
        return ends.prompt();
    }

    /**
     * {@return the reaction number Da = k M_w (1 - h/3) tau_dry of the drying phase; tau_dry is the mean stay of the
     * free water by the receding front, without sorbents} 0 without free water; empty where it never dries, as the
     * reaction then goes on without end.
     */
    public OptionalDouble reactionNumber() {
        return Double.isInfinite(ends.number()) ? OptionalDouble.empty() : OptionalDouble.of(ends.number());
    }

    /** {@return the reaction number in words} */
    public String reactionSentence() {
        if (ends.number() == 0) {
            return "No free water is left for the slow reaction.";
        }
        return ends.number() < 1 ? "It dries faster than it reacts." : "It reacts faster than it dries.";
    }

    /** {@return the class of swelling at the end of the course} */
    public Swelling swelling() {
        return Swelling.of(ends.growth());
    }

    /** {@return whether a piece took up water, in the store or in damp air, until a third of its pores were full; the course ends there} */
    public boolean soaked() {
        return ends.soaked();
    }

    /** {@return the error of the water balance, relative to the water at the start} */
    public double balanceError() {
        return ends.balance();
    }

    /** {@return what the reader must know} */
    public List<Notice> notices() {
        return CourseNotices.of(input, ends, phases);
    }

    /** The state between steps i and j, at a share of the way. */
    private DryState state(int i, int j, double share) {
        // a piece that gives all of its water to dry air is left with a rounding error of either sign
        double water = Math.max(0, mix(log.water, i, j, share));
        double extent = mix(log.extent, i, j, share);
        double gone = mix(log.alcohol, i, j, share);
        double alcohol = input.alcohol().share() * (1 - gone) * dryMass;
        // water balance: what has left is what was there and what was made, less what is left
        double made = (extent - ends.prompt()) * log.waterPerMole * dryMass;
        double left = log.water[0] + made - water;
        double mass = dampMass()
                - left
                - (input.alcohol().share() * dryMass - alcohol)
                - PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS * extent * dryMass;
        // all of it gone off leaves a rounding error of either sign
        double gasLeft = Math.max(0, input.capacity() - extent);
        // a mix without fizz has none to lose
        double fizz = input.capacity() > 0 ? gasLeft / input.capacity() : 1;
        double obtainable = gasLeft * dryMass / mass;
        return new DryState(
                mix(log.time, i, j, share),
                mass,
                water,
                mix(log.bound, i, j, share),
                water / dryMass,
                alcohol,
                extent,
                fizz,
                obtainable,
                mix(log.room, i, j, share));
    }

    /** A column between steps i and j, linearly. */
    private static double mix(double[] column, int i, int j, double share) {
        return column[i] + share * (column[j] - column[i]);
    }

    /** Figures that belong to the whole course. */
    record Ends(
            double removable,
            double bound,
            double readyAt,
            boolean damp,
            double film,
            double humidity,
            double prompt,
            double number,
            double growth,
            boolean soaked,
            double balance) {}

    /**
     * Columns of the computed steps: time from pressing (s), water that can move (kg), carbon dioxide lost (mol per kg
     * of dry mix), share of the alcohol gone (0 to 1), relative humidity of the room.
     */
    static final class Log {
        /** Room for so many steps at first; a coarse course needs some 24. */
        private static final int START = 32;

        private int size;
        private double[] time = new double[START];
        private double[] water = new double[START];
        private double[] bound = new double[START];
        private double[] extent = new double[START];
        private double[] alcohol = new double[START];
        private double[] room = new double[START];

        /** Free water made per mol of CO2, kg/mol. */
        private final double waterPerMole;

        Log(double waterPerMole) {
            this.waterPerMole = waterPerMole;
        }

        boolean isEmpty() {
            return size == 0;
        }

        /** Adds a step. */
        void add(double seconds, double kilograms, double acid, double moles, double gone, double humidity) {
            if (size == time.length) {
                int longer = 2 * size;
                time = Arrays.copyOf(time, longer);
                water = Arrays.copyOf(water, longer);
                bound = Arrays.copyOf(bound, longer);
                extent = Arrays.copyOf(extent, longer);
                alcohol = Arrays.copyOf(alcohol, longer);
                room = Arrays.copyOf(room, longer);
            }
            time[size] = seconds;
            water[size] = kilograms;
            bound[size] = acid;
            extent[size] = moles;
            alcohol[size] = gone;
            room[size] = humidity;
            size++;
        }

        /** Carbon dioxide lost at the last step, mol per kg of dry mix. */
        double lastExtent() {
            return extent[size - 1];
        }
    }
}
