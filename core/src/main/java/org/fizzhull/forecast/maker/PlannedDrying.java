package org.fizzhull.forecast.maker;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.BlendDrying;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.forecast.draw.MakingDraw;
import org.fizzhull.forecast.making.DryingPlan;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.powder.EarlyReaction;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Additives;
import org.fizzhull.recipe.Blend;
import org.fizzhull.shape.Shape;

/**
 * Takes a damp pressed piece through its drying plan: the step from pressing to the bath of one draw.
 *
 * <ol>
 *   <li>The packing of the draw gives dry mass per volume and the pores that liquid leaves open.
 *   <li>Without a plan the piece goes into the bath damp: all liquid in it, the gas of the prompt reaction gone.
 *   <li>With one, the phases get the draw's errors of the room's air, and a coarse course ({@link Drying}) says what is
 *       left of water and fizz at the end; that is the piece.
 * </ol>
 *
 * <p>Cost: about a millisecond a draw, nearly all of it the course. The depth profiles of the shape stand in the
 * phases. Immutable; safe to share between threads. Equations: docs/physics/drying.md.
 */
public final class PlannedDrying {
    /** Pores closed by liquid are outside the drying model: this much is taken as open (a notice says so). */
    private static final double LEAST_AIR = 1e-3;

    /** Form of the pieces, as entered. */
    private final Shape shape;
    /** What happens between press and bath, by the central values; no phases for a piece that goes in damp. */
    private final DryingPlan plan;

    /**
     * Prepares the drying of pieces of one shape under one plan; the depth profiles are made now.
     *
     * @param shape form of the pieces
     * @param plan what happens between press and bath
     */
    public PlannedDrying(Shape shape, DryingPlan plan) {
        Given.all("shape, plan", shape, plan);
        this.shape = shape;
        this.plan = plan;
    }

    /** Makes the pieces of a packing; one maker serves one thread where its packing does. */
    Maker maker(Packing packing) {
        return (draw, volumeRatio) -> of(packing.of(draw, volumeRatio)).scaled(volumeRatio);
    }

    /** The piece that the powders become, in a mould of the entered size. */
    private Piece of(Packing.Packed packed) {
        if (plan.phases().isEmpty()) {
            double rhoDry = packed.solidFraction() * packed.trueDensity();
            return damp(packed.blend(), rhoDry, air(packed), packed.making().drying());
        }
        DryingCourse course = course(input(packed), plan.phases(), 0, packed.making());
        return course.piece(shape, course.end());
    }

    /**
     * {@return what drying asks of the powders}
     *
     * @param packed how densely the powders of the draw lie
     */
    public DryingInput input(Packing.Packed packed) {
        double rhoDry = packed.solidFraction() * packed.trueDensity();
        Blend blend = packed.blend();
        return BlendDrying.of(
                blend, rhoDry, porosity(packed), air(packed), blend.liquid().ratio());
    }

    /**
     * {@return the coarse course through phases whose air differs by the draw's errors; until ready it is waited for
     * {@code wait} s}
     *
     * @param input the mix as drying sees it
     * @param phases phases by the central values
     * @param wait time from pressing up to which a piece that is not ready is followed, s
     * @param draw one draw of what is uncertain before the bath
     */
    public DryingCourse course(DryingInput input, List<DryingPhase> phases, double wait, MakingDraw draw) {
        return Drying.runAndWait(input, moved(phases, draw), wait, draw.drying(), Resolution.COARSE);
    }

    /** A draw of rare grains can leave no pores at all; it keeps a few. */
    private static double porosity(Packing.Packed packed) {
        return Math.max(2 * LEAST_AIR, 1 - packed.solidFraction());
    }

    /** Porosity that liquid leaves open, 0.001 or more. */
    private double air(Packing.Packed packed) {
        double rhoDry = packed.solidFraction() * packed.trueDensity();
        Blend blend = packed.blend();
        double liquid = rhoDry * blend.liquid().ratio() / blend.liquid().density();
        return Math.max(LEAST_AIR, porosity(packed) - liquid);
    }

    /**
     * The piece as pressed: all liquid in it, the prompt reaction done.
     *
     * @param rhoDry dry mix per volume of piece, kg/m3
     * @param air porosity that liquid leaves open
     * @param drying uncertain parameters of drying; of these the prompt yield matters
     */
    private Piece damp(Blend blend, double rhoDry, double air, DryingParameters drying) {
        double gas = blend.moles().gas();
        EarlyReaction early = EarlyReaction.standard(blend);
        double prompt = Math.min(gas, drying.promptYield() / early.promptYield() * early.prompt(blend));
        double perDry = 1 + blend.liquid().ratio() - Blend.Moles.CO2 * prompt;
        double mass = rhoDry * perDry * shape.volume();
        double left = gas > 0 ? 1 - prompt / gas : 1;
        Piece.Makeup makeup =
                new Piece.Makeup(rhoDry * perDry / (1 - air), (gas - prompt) / perDry, Additives.of(blend), left);
        return new Piece(shape, mass + shape.insetMass(), makeup);
    }

    /** The phases with the room's air as a draw has it; {@link MakingPriors#possible} keeps draws to air that there is. */
    static List<DryingPhase> moved(List<DryingPhase> phases, MakingDraw draw) {
        List<DryingPhase> moved = new ArrayList<>(phases.size());
        for (DryingPhase phase : phases) {
            RoomAir air = phase.air();
            RoomAir drawn = new RoomAir(
                    air.temperature() + draw.temperatureError(), air.humidity() + draw.humidityError(), air.pressure());
            moved.add(phase.in(drawn));
        }
        return moved;
    }
}
