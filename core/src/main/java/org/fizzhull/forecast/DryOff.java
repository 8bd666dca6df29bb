package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.drying.BlendDrying;
import org.fizzhull.drying.Drying;
import org.fizzhull.drying.DryingInput;
import org.fizzhull.drying.DryingParameters;
import org.fizzhull.drying.DryingPhase;
import org.fizzhull.drying.Resolution;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.pressing.EarlyReaction;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Moles;
import org.fizzhull.shape.Shape;

/** Takes a damp pressed piece through its drying plan: the step from pressing to the bath of one draw. */
final class DryOff {
    /** Pores closed by liquid are outside the drying model: this much is taken as open (a notice says so). */
    private static final double LEAST_AIR = 1e-3;

    private static final double DRIEST = 0.01;
    private static final double DAMPEST = 0.99;

    private final Blend blend;
    private final Shape shape;
    private final DryingPlan plan;

    DryOff(Blend blend, Shape shape, DryingPlan plan) {
        this.blend = blend;
        this.shape = shape;
        this.plan = plan;
    }

    /** The piece that a solid fraction of grains of a true density (kg/m3) becomes. */
    Piece of(double solidFraction, double trueDensity, MakingDraw draw) {
        double rhoDry = solidFraction * trueDensity;
        double porosity = 1 - solidFraction;
        double ratio = blend.liquid().ratio();
        double air =
                Math.max(LEAST_AIR, porosity - rhoDry * ratio / blend.liquid().density());
        if (plan.phases().isEmpty()) {
            return damp(rhoDry, air, draw.drying());
        }
        DryingInput input = BlendDrying.of(blend, rhoDry, porosity, air, ratio);
        var course = Drying.run(input, phases(draw), draw.drying(), Resolution.COARSE);
        return course.piece(shape, course.end());
    }

    /** As pressed: all liquid in it, the prompt reaction done. */
    private Piece damp(double rhoDry, double air, DryingParameters drying) {
        double gas = blend.moles().gas();
        EarlyReaction early = EarlyReaction.standard(blend);
        double prompt = Math.min(gas, drying.promptYield() / early.promptYield() * early.prompt(blend));
        double perDry = 1 + blend.liquid().ratio() - Moles.CO2 * prompt;
        double mass = rhoDry * perDry * shape.volume();
        Makeup makeup = new Makeup(rhoDry * perDry / (1 - air), (gas - prompt) / perDry);
        return new Piece(shape, mass + shape.insetMass(), makeup);
    }

    private List<DryingPhase> phases(MakingDraw draw) {
        List<DryingPhase> moved = new ArrayList<>(plan.phases().size());
        for (DryingPhase phase : plan.phases()) {
            RoomAir air = phase.air();
            double humidity = Math.max(DRIEST, Math.min(DAMPEST, air.humidity() + draw.humidityError()));
            RoomAir drawn = new RoomAir(air.temperature() + draw.temperatureError(), humidity, air.pressure());
            moved.add(new DryingPhase(
                    phase.opening(),
                    drawn,
                    phase.room(),
                    phase.wrap(),
                    phase.gap(),
                    phase.fan(),
                    phase.duration(),
                    phase.storage()));
        }
        return moved;
    }
}
