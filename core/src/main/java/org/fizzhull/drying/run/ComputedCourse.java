package org.fizzhull.drying.run;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;

/** A {@link DryingCourse} from the steps that a run has logged. Immutable. */
final class ComputedCourse implements DryingCourse {
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

    ComputedCourse(DryingInput input, double dryMass, Log log, Ends ends, List<DryingPhase> phases) {
        this.phases = phases;
        this.input = input;
        this.dryMass = dryMass;
        this.log = log;
        this.ends = ends;
    }

    @Override
    public double dryMass() {
        return dryMass;
    }

    @Override
    public double rhoDry() {
        return input.rhoDry();
    }

    @Override
    public double airPorosity() {
        return input.airPorosity();
    }

    @Override
    public double acidWater() {
        return input.hydrates().takes() * dryMass;
    }

    @Override
    public double dampMass() {
        return dryMass * input.dampRatio();
    }

    @Override
    public double end() {
        return log.time[log.size - 1];
    }

    @Override
    public DryingCourse.State at(double seconds) {
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

    @Override
    public Optional<DryingCourse.State> whenWeighing(double mass) {
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

    @Override
    public DryingCourse.State last() {
        return state(log.size - 1, log.size - 1, 0);
    }

    @Override
    public Piece piece(Shape shape, double seconds) {
        double volume = dryMass / input.rhoDry();
        if (!(Math.abs(shape.volume() / volume - 1) < 0.01)) {
            throw new IllegalArgumentException("the shape holds " + shape.volume() + " m3, the course " + volume);
        }
        DryingCourse.State state = at(seconds);
        double carbon = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS * state.extent() * dryMass;
        double alcohol = input.alcohol().share() * dryMass - state.alcohol();
        double water = dampMass() - state.mass() - carbon - alcohol;
        // what has left as water and alcohol leaves pores open
        double open = input.airPorosity() + (water / Drying.WATER_DENSITY + alcohol / ALCOHOL_DENSITY) / volume;
        double density = state.mass() / volume / (1 - open);
        Piece.Makeup makeup = new Piece.Makeup(density, state.gasCapacity(), input.additives(), state.fizzLeft());
        return new Piece(shape, state.mass() + shape.insetMass(), makeup);
    }

    @Override
    public int steps() {
        return log.size;
    }

    @Override
    public double time(int step) {
        return log.time[step];
    }

    @Override
    public double removable() {
        return ends.goal().removable();
    }

    @Override
    public double excess(DryingCourse.State state) {
        double free = state.water() - state.bound();
        return Math.max(0, free - ends.goal().equilibrium()) + Math.max(0, state.bound() - ends.bound());
    }

    @Override
    public double toGo(DryingCourse.State state) {
        DryingGoal goal = ends.goal();
        return Math.max(0, state.water() - state.bound() - goal.equilibrium() - goal.readyExcess());
    }

    @Override
    public OptionalDouble readyAfter() {
        return !Double.isNaN(ends.readyAt()) ? OptionalDouble.of(ends.readyAt()) : OptionalDouble.empty();
    }

    @Override
    public boolean neverDries() {
        return ends.damp();
    }

    @Override
    public double filmActivity() {
        return ends.film();
    }

    @Override
    public double stays() {
        return input.stays() * dryMass;
    }

    @Override
    public double promptExtent() {
        return ends.prompt();
    }

    @Override
    public OptionalDouble reactionNumber() {
        return Double.isInfinite(ends.number()) ? OptionalDouble.empty() : OptionalDouble.of(ends.number());
    }

    @Override
    public String reactionSentence() {
        if (ends.number() == 0) {
            return "No free water is left for the slow reaction.";
        }
        return ends.number() < 1 ? "It dries faster than it reacts." : "It reacts faster than it dries.";
    }

    @Override
    public DryingCourse.Swelling swelling() {
        return DryingCourse.Swelling.of(ends.growth());
    }

    @Override
    public boolean soaked() {
        return ends.soaked();
    }

    @Override
    public double balanceError() {
        return ends.balance();
    }

    @Override
    public List<Notice> notices() {
        return CourseNotices.of(input, ends, phases);
    }

    /** The state between steps i and j, at a share of the way. */
    private DryingCourse.State state(int i, int j, double share) {
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
        return new DryingCourse.State(
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
            DryingGoal goal,
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
